package stillturning.yaml.edit;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.yaml.YamlValue;

/** Writes values as YAML, plainly where that reads back as the same text. */
final class Rendering {

    private static final int STEP = 2;
    private static final Set<String> NULLS = Set.of("~", "null", "Null", "NULL");
    private static final String SIGNS = "\u00b0\u00b5\u00b2\u03a9\u2126\u00d7\u2013\u2026";
    private static final String FLOW_MARKS = ",[]{}:";

    private final String newline;

    Rendering(String newline) {
        this.newline = newline;
    }

    /** Whether a value has lines of its own in block style. */
    static boolean isBlock(YamlValue value) {
        return (value instanceof YamlValue.Items items && !items.items().isEmpty())
                || (value instanceof YamlValue.Fields fields && !fields.fields().isEmpty());
    }

    /** The value on one line. */
    String flow(YamlValue value) {
        if (value instanceof YamlValue.Items list) {
            return list.items().stream()
                    .map(this::flow)
                    .collect(Collectors.joining(", ", "[", "]"));
        }
        if (value instanceof YamlValue.Fields fields) {
            return fields.fields().stream()
                    .map(f -> key(f.key()) + ": " + flow(f.value()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        return scalar(((YamlValue.Text) value).text(), true);
    }

    /** A value that fits behind a key or dash on the same line, in block context. */
    String inline(YamlValue value) {
        return value instanceof YamlValue.Text text ? scalar(text.text(), false) : flow(value);
    }

    /** The value on lines of its own, each indented, the first one too; no newline at the end. */
    String block(YamlValue value, int indent) {
        List<String> lines =
                value instanceof YamlValue.Items list
                        ? list.items().stream().map(i -> item(i, indent)).toList()
                        : ((YamlValue.Fields) value)
                                .fields().stream().map(f -> field(f, indent)).toList();
        return String.join(newline, lines);
    }

    /** One item of a block list, with its indentation. */
    String item(YamlValue value, int indent) {
        String behindDash =
                isBlock(value)
                        ? block(value, indent + STEP).substring(indent + STEP)
                        : inline(value);
        return " ".repeat(indent) + "- " + behindDash;
    }

    /** One field of a block mapping, with its indentation. */
    String field(YamlValue.Field field, int indent) {
        String start = " ".repeat(indent) + key(field.key()) + ":";
        return isBlock(field.value())
                ? start + newline + block(field.value(), indent + STEP)
                : start + " " + inline(field.value());
    }

    String key(String key) {
        return scalar(key, true);
    }

    private static String scalar(String text, boolean inFlow) {
        return isPlain(text, inFlow) ? text : quoted(text);
    }

    private static boolean isPlain(String text, boolean inFlow) {
        if (text.isEmpty() || NULLS.contains(text) || !startsPlainly(text)) {
            return false;
        }
        boolean marks =
                text.contains(": ")
                        || text.contains(" #")
                        || text.endsWith(":")
                        || text.endsWith(" ");
        boolean flowMarks = inFlow && text.chars().anyMatch(c -> FLOW_MARKS.indexOf(c) >= 0);
        return !marks && !flowMarks && text.codePoints().allMatch(Rendering::isPlain);
    }

    private static boolean startsPlainly(String text) {
        int first = text.codePointAt(0);
        if ("-.+".indexOf(first) >= 0) {
            return text.length() > 1 && Character.isLetterOrDigit(text.codePointAt(1));
        }
        return Character.isLetterOrDigit(first) || "_/(".indexOf(first) >= 0;
    }

    private static boolean isPlain(int c) {
        return (c >= ' ' && c < 0x7f) || Character.isLetterOrDigit(c) || SIGNS.indexOf(c) >= 0;
    }

    private static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        text.codePoints().forEach(c -> out.append(escaped(c)));
        return out.append('"').toString();
    }

    private static String escaped(int c) {
        if (c == '"' || c == '\\') {
            return "\\" + (char) c;
        }
        if (c == '\n') {
            return "\\n";
        }
        boolean blank = Character.isSpaceChar(c) || Character.isISOControl(c) || c == 0xfeff;
        if (c == ' ' || (Character.isDefined(c) && !blank)) {
            return Character.toString(c);
        }
        return c < 0x10000
                ? String.format(Locale.ROOT, "\\u%04x", c)
                : String.format(Locale.ROOT, "\\U%08x", c);
    }
}
