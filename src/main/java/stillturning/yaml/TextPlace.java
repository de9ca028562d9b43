package stillturning.yaml;

/** The place of one char of a scalar's text, however the scalar is written. */
public final class TextPlace {

    private TextPlace() {}

    /** Exact for plain and quoted text on one line; the start of the scalar otherwise. */
    public static Place inside(Tree.LeafNode leaf, String source, int offset) {
        Span span = leaf.span();
        String written = source.substring(span.start(), span.end());
        if (leaf.style() == Tree.Style.BLOCK
                || written.indexOf('\n') >= 0
                || written.indexOf('\r') >= 0) {
            return span.place();
        }
        int at =
                switch (leaf.style()) {
                    case SINGLE_QUOTED -> singleQuoted(written, offset);
                    case DOUBLE_QUOTED -> doubleQuoted(written, offset);
                    case PLAIN, BLOCK -> offset;
                };
        int inside = Math.max(0, Math.min(at, written.length()));
        return new Place(span.line(), span.column() + written.codePointCount(0, inside));
    }

    private static int singleQuoted(String written, int offset) {
        int at = 1;
        for (int i = 0; i < offset && at < written.length(); i++) {
            at += written.startsWith("''", at) ? 2 : 1;
        }
        return at;
    }

    private static int doubleQuoted(String written, int offset) {
        int at = 1;
        int decoded = 0;
        while (decoded < offset && at < written.length()) {
            if (written.charAt(at) != '\\' || at + 1 >= written.length()) {
                at++;
                decoded++;
                continue;
            }
            char escape = written.charAt(at + 1);
            int digits = escape == 'x' ? 2 : escape == 'u' ? 4 : escape == 'U' ? 8 : 0;
            decoded += escape == 'U' && !written.startsWith("0000", at + 2) ? 2 : 1;
            at += 2 + digits;
        }
        return at;
    }
}
