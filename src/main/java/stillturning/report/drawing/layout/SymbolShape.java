package stillturning.report.drawing.layout;

import java.util.List;
import java.util.Map;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Mark;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.TextWidths;

/**
 * The room that a symbol takes and what stands where in it, from its upper left corner.
 *
 * @param axis middle of the line through the glyph
 * @param ports where lines end; empty for a bar, whose ports the layout places
 * @param badge middle of the badge that tells the look
 */
record SymbolShape(
        double width,
        double height,
        Point axis,
        Map<String, Point> ports,
        List<Caption> captions,
        Point badge) {

    static final double TEXT = 10;
    static final double TEXT_LINE = 12;

    /** Distance of the rows in which loads hang on a bus. */
    static final double ROW = 29;

    /** Room kept for the badge before the first text, whatever the look is. */
    static final double BADGE_ROOM = 11;

    /** One line of text; {@code y} is its base line. */
    record Caption(String words, double x, double y, Mark.Anchor anchor, boolean bold) {
        Box box() {
            double width = TextWidths.of(words, TEXT, bold);
            double left =
                    switch (anchor) {
                        case START -> x;
                        case MIDDLE -> x - width / 2;
                        case END -> x - width;
                    };
            return new Box(left, y - 9.3, width, 11.6);
        }
    }

    static double widthOf(String words, boolean bold) {
        return TextWidths.of(words, TEXT, bold);
    }

    static double widestOf(List<String> lines, boolean bold) {
        return lines.stream().mapToDouble(line -> widthOf(line, bold)).max().orElse(0);
    }
}
