package stillturning.report.drawing;

import java.util.List;

/**
 * How a path is stroked and filled.
 *
 * @param width stroke width (drawing units), 0 for no stroke
 * @param stroke colour as a hexadecimal red-green-blue triple
 * @param fill colour likewise, or {@link #NO_FILL}
 * @param dashes dash and gap lengths (drawing units); empty for an unbroken stroke
 */
public record Pen(double width, String stroke, String fill, List<Double> dashes) {
    /** The fill of a path that shows what lies below. */
    public static final String NO_FILL = "none";

    static final String PAPER = Ink.PAPER.light;

    public Pen {
        dashes = List.copyOf(dashes);
    }

    static Pen line(double width, String colour) {
        return new Pen(width, colour, NO_FILL, List.of());
    }

    static Pen solid(String colour) {
        return new Pen(0, colour, colour, List.of());
    }

    Pen dashed(List<Double> pattern) {
        return new Pen(width, stroke, fill, pattern);
    }

    Pen filled(String colour) {
        return new Pen(width, stroke, colour, dashes);
    }
}
