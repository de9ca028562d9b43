package stillturning.yaml.shape;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Builds and prints JSON, in the order in which it was built. */
final class SchemaJson {

    private SchemaJson() {}

    static Map<String, Object> object(Object... keysAndValues) {
        Map<String, Object> object = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            object.put((String) keysAndValues[i], keysAndValues[i + 1]);
        }
        return object;
    }

    static String print(Object json) {
        StringBuilder out = new StringBuilder();
        print(json, "", out);
        return out.append('\n').toString();
    }

    private static void print(Object json, String indent, StringBuilder out) {
        if (json instanceof Map<?, ?> object) {
            bracket(object.entrySet(), "{", "}", indent, out);
        } else if (json instanceof Iterable<?> list) {
            bracket(list, "[", "]", indent, out);
        } else if (json instanceof Map.Entry<?, ?> entry) {
            quote(String.valueOf(entry.getKey()), out);
            out.append(": ");
            print(entry.getValue(), indent, out);
        } else if (json instanceof String text) {
            quote(text, out);
        } else {
            out.append(json instanceof BigDecimal number ? number.toPlainString() : json);
        }
    }

    private static void bracket(
            Iterable<?> members, String open, String close, String indent, StringBuilder out) {
        String inner = indent + "  ";
        String before = "\n";
        out.append(open);
        for (Object member : members) {
            out.append(before).append(inner);
            print(member, inner, out);
            before = ",\n";
        }
        out.append(before.equals("\n") ? "" : "\n" + indent).append(close);
    }

    private static void quote(String text, StringBuilder out) {
        out.append('"');
        text.codePoints().forEach(c -> out.append(escaped(c)));
        out.append('"');
    }

    private static String escaped(int codePoint) {
        if (codePoint == '"' || codePoint == '\\') {
            return "\\" + Character.toString(codePoint);
        }
        return codePoint < 0x20
                ? String.format(Locale.ROOT, "\\u%04x", codePoint)
                : Character.toString(codePoint);
    }
}
