package stillturning.yaml;

import java.nio.file.Path;
import stillturning.fuzz.Promises;

/** Any text as a document, whoever it is for. */
public final class TextFuzz {

    private static final Path FILE = Path.of("fuzzed", "any.yaml");

    private TextFuzz() {}

    public static void fuzzerTestOneInput(byte[] input) {
        YamlDocument document = YamlDocument.of(FILE, Promises.text(input));
        Promises.areSound(document.problems().stream().sorted().toList(), document.text());
        document.root().ifPresent(root -> isInside(root, document.text()));
        document.asFarAsRead().ifPresent(root -> isInside(root, document.text()));
    }

    private static void isInside(Tree tree, String text) {
        Span span = tree.span();
        Promises.hold(
                span.start() >= 0 && span.start() <= span.end() && span.end() <= text.length(),
                span + " in " + text.length() + " characters");
        if (tree instanceof Tree.MappingNode mapping) {
            for (Tree.MappingEntry entry : mapping.entries()) {
                isInside(entry.key(), text);
                isInside(entry.value(), text);
            }
        } else if (tree instanceof Tree.ListNode list) {
            list.items().forEach(item -> isInside(item, text));
        }
    }
}
