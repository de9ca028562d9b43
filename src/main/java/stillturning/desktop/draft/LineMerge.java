package stillturning.desktop.draft;

import com.github.difflib.DiffUtils;
import com.github.difflib.patch.AbstractDelta;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Joins two people's changes of one text, line by line. */
final class LineMerge {

    private static final Pattern LINE_ENDS = Pattern.compile("(?<=\n)|(?<=\r)(?!\n)");

    /** Lines of the base from one index to another, and what stands there instead. */
    private record Piece(int from, int to, List<String> lines) {

        /** Whether nothing of the base stands between the two. */
        boolean touches(Piece other) {
            return from <= other.to && other.from <= to;
        }
    }

    private LineMerge() {}

    /** The text with the changes of both, unless two of them touch. */
    static Optional<String> of(String base, String mine, String theirs) {
        List<String> lines = lines(base);
        List<Piece> pieces = pieces(lines, lines(mine));
        for (Piece theirPiece : pieces(lines, lines(theirs))) {
            if (pieces.contains(theirPiece)) {
                continue;
            }
            if (pieces.stream().anyMatch(theirPiece::touches)) {
                return Optional.empty();
            }
            pieces.add(theirPiece);
        }
        pieces.sort(Comparator.comparingInt(Piece::from));
        return Optional.of(joined(lines, pieces));
    }

    private static List<String> lines(String text) {
        return text.isEmpty() ? List.of() : List.of(LINE_ENDS.split(text));
    }

    private static List<Piece> pieces(List<String> base, List<String> other) {
        List<Piece> pieces = new ArrayList<>();
        for (AbstractDelta<String> delta : DiffUtils.diff(base, other).getDeltas()) {
            int from = delta.getSource().getPosition();
            pieces.add(
                    new Piece(
                            from,
                            from + delta.getSource().size(),
                            List.copyOf(delta.getTarget().getLines())));
        }
        return pieces;
    }

    private static String joined(List<String> base, List<Piece> pieces) {
        StringBuilder text = new StringBuilder();
        int at = 0;
        for (Piece piece : pieces) {
            base.subList(at, piece.from).forEach(text::append);
            piece.lines.forEach(text::append);
            at = piece.to;
        }
        base.subList(at, base.size()).forEach(text::append);
        return text.toString();
    }
}
