package stillturning.yaml;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What stands in a document: texts, lists and mappings, each with its place. */
public sealed interface Tree {

    Span span();

    /** Index after the last char of the content, comments and following blank lines left out. */
    int contentEnd();

    YamlValue value();

    enum Style {
        PLAIN,
        SINGLE_QUOTED,
        DOUBLE_QUOTED,
        BLOCK
    }

    record Leaf(Span span, String text, Style style) implements Tree {

        private static final Set<String> NULLS = Set.of("", "~", "null", "Null", "NULL");

        /** Whether nothing is written, in the words of YAML 1.2. */
        public boolean isNull() {
            return style == Style.PLAIN && NULLS.contains(text);
        }

        @Override
        public int contentEnd() {
            return span.end();
        }

        @Override
        public YamlValue value() {
            return new YamlValue.Text(isNull() ? "" : text);
        }
    }

    record Items(Span span, boolean flow, List<Tree> items) implements Tree {

        @Override
        public int contentEnd() {
            return flow || items.isEmpty() ? span.end() : items.get(items.size() - 1).contentEnd();
        }

        @Override
        public YamlValue value() {
            return new YamlValue.Items(items.stream().map(Tree::value).toList());
        }
    }

    record Fields(Span span, boolean flow, List<Entry> entries) implements Tree {

        public Optional<Entry> find(String key) {
            return entries.stream().filter(e -> e.key.text.equals(key)).findFirst();
        }

        @Override
        public int contentEnd() {
            return flow || entries.isEmpty()
                    ? span.end()
                    : entries.get(entries.size() - 1).value.contentEnd();
        }

        @Override
        public YamlValue value() {
            return new YamlValue.Fields(
                    entries.stream()
                            .map(e -> new YamlValue.Field(e.key.text, e.value.value()))
                            .toList());
        }
    }

    record Entry(Leaf key, Tree value) {}
}
