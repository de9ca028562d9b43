package stillturning.yaml;

import java.util.List;

/**
 * A number with a decimal comma, which braces take apart: {@code {draws: 1,5 A}} is a 1, and a key
 * {@code 5 A} of nothing. It is put together again, so that whatever reads the number can say what
 * is wrong with it.
 */
final class DecimalComma {

    private static final int LONGEST = 80;

    private DecimalComma() {}

    /** Puts a key behind the last value if it is the rest of that number; false if it is none. */
    static boolean join(
            String text, List<Tree.MappingEntry> entries, Tree.LeafNode key, Tree value) {
        int comma = key.span().start() - 1;
        if (entries.isEmpty() || comma < 1 || text.charAt(comma) != ',' || !isRest(key, value)) {
            return false;
        }
        Tree.MappingEntry last = entries.get(entries.size() - 1);
        if (!(last.value() instanceof Tree.LeafNode number)
                || number.style() != Tree.Style.PLAIN
                || number.text().isEmpty()
                || number.text().length() > LONGEST
                || number.span().end() != comma
                || !isDigit(text.charAt(comma - 1))) {
            return false;
        }
        Span start = number.span();
        Span whole = new Span(start.start(), key.span().end(), start.line(), start.column());
        entries.set(
                entries.size() - 1,
                new Tree.MappingEntry(
                        last.key(),
                        new Tree.LeafNode(
                                whole, number.text() + "," + key.text(), Tree.Style.PLAIN)));
        return true;
    }

    private static boolean isRest(Tree.LeafNode key, Tree value) {
        return key.style() == Tree.Style.PLAIN
                && !key.text().isEmpty()
                && isDigit(key.text().charAt(0))
                && value instanceof Tree.LeafNode nothing
                && nothing.text().isEmpty();
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
