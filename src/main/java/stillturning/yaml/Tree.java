package stillturning.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What stands in a document: texts, lists and mappings, each with its place. */
public sealed interface Tree {

    Span span();

    /** Index after the last char of the content, comments and following blank lines left out. */
    int contentEnd();

    YamlValue value();

    /** The value in which one node, this one or one inside it, has another value. */
    YamlValue valueWith(Tree at, YamlValue becomes);

    /** What it is, with article: "a list". */
    String form();

    /** All on one line, its items with a separator between them. */
    String line(String separator);

    /** The texts in it, in order. */
    Stream<LeafNode> leaves();

    /** Whether it is written in brackets. */
    boolean flow();

    /** Whether nothing is in it. */
    boolean isEmpty();

    /** Whether nothing is written. */
    default boolean isNull() {
        return false;
    }

    /** Place of a char inside it, as exactly as that can be told. */
    default Place place(String document, int offset) {
        return span().place();
    }

    @SuppressWarnings("ReferenceEquality") // equal nodes may stand in several places
    private static boolean isSame(Tree one, Tree other) {
        return one == other;
    }

    enum Style {
        PLAIN,
        SINGLE_QUOTED,
        DOUBLE_QUOTED,
        BLOCK
    }

    record LeafNode(Span span, String text, Style style) implements Tree {

        private static final Set<String> NULLS = Set.of("", "~", "null", "Null", "NULL");

        /** Whether nothing is written, in the words of YAML 1.2. */
        @Override
        public boolean isNull() {
            return style == Style.PLAIN && NULLS.contains(text);
        }

        @Override
        public boolean isEmpty() {
            return isNull();
        }

        @Override
        public int contentEnd() {
            return span.end();
        }

        @Override
        public YamlValue value() {
            return new YamlValue.Text(isNull() ? "" : text);
        }

        @Override
        public YamlValue valueWith(Tree at, YamlValue becomes) {
            return Tree.isSame(this, at) ? becomes : value();
        }

        @Override
        public String form() {
            return "a single text";
        }

        @Override
        public String line(String separator) {
            return text;
        }

        @Override
        public Stream<LeafNode> leaves() {
            return Stream.of(this);
        }

        @Override
        public boolean flow() {
            return false;
        }

        @Override
        public Place place(String document, int offset) {
            return TextPlace.inside(this, document, offset);
        }
    }

    /** A list or a mapping. */
    sealed interface BranchNode extends Tree {

        /** What stands in it, in order. */
        List<Tree> children();

        /** The key of the child at a position; empty in a list. */
        Optional<LeafNode> key(int position);

        /** The value with one child less. */
        YamlValue without(int position);

        @Override
        default Stream<LeafNode> leaves() {
            return children().stream().flatMap(Tree::leaves);
        }

        @Override
        default boolean isEmpty() {
            return children().isEmpty();
        }

        @Override
        default int contentEnd() {
            List<Tree> all = children();
            return flow() || all.isEmpty() ? span().end() : all.get(all.size() - 1).contentEnd();
        }
    }

    record ListNode(Span span, boolean flow, List<Tree> items) implements BranchNode {

        @Override
        public List<Tree> children() {
            return items;
        }

        @Override
        public Optional<LeafNode> key(int position) {
            return Optional.empty();
        }

        @Override
        public YamlValue.Items value() {
            return new YamlValue.Items(items.stream().map(Tree::value).toList());
        }

        @Override
        public YamlValue valueWith(Tree at, YamlValue becomes) {
            return Tree.isSame(this, at)
                    ? becomes
                    : new YamlValue.Items(
                            items.stream().map(i -> i.valueWith(at, becomes)).toList());
        }

        @Override
        public YamlValue without(int position) {
            List<YamlValue> rest = new ArrayList<>(value().items());
            rest.remove(position);
            return new YamlValue.Items(rest);
        }

        @Override
        public String form() {
            return "a list";
        }

        @Override
        public String line(String separator) {
            return items.stream()
                    .map(item -> item.line(","))
                    .collect(Collectors.joining(separator + " "));
        }
    }

    record MappingNode(Span span, boolean flow, List<MappingEntry> entries) implements BranchNode {

        public Optional<MappingEntry> find(String key) {
            return entries.stream().filter(e -> e.key.text.equals(key)).findFirst();
        }

        @Override
        public List<Tree> children() {
            return entries.stream().map(MappingEntry::value).toList();
        }

        @Override
        public Optional<LeafNode> key(int position) {
            return Optional.of(entries.get(position).key);
        }

        @Override
        public YamlValue.Fields value() {
            return new YamlValue.Fields(
                    entries.stream()
                            .map(e -> new YamlValue.Field(e.key.text, e.value.value()))
                            .toList());
        }

        @Override
        public YamlValue valueWith(Tree at, YamlValue becomes) {
            return Tree.isSame(this, at)
                    ? becomes
                    : new YamlValue.Fields(
                            entries.stream()
                                    .map(
                                            e ->
                                                    new YamlValue.Field(
                                                            e.key.text,
                                                            e.value.valueWith(at, becomes)))
                                    .toList());
        }

        @Override
        public YamlValue without(int position) {
            List<YamlValue.Field> rest = new ArrayList<>(value().fields());
            rest.remove(position);
            return new YamlValue.Fields(rest);
        }

        @Override
        public String form() {
            return "a mapping";
        }

        @Override
        public String line(String separator) {
            return entries.stream()
                    .map(e -> e.key.text + " " + e.value.line(","))
                    .collect(Collectors.joining(", "));
        }
    }

    record MappingEntry(LeafNode key, Tree value) {}
}
