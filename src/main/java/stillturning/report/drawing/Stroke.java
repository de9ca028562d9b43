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
public record Stroke(double width, String stroke, String fill, List<Double> dashes) {
    /** The fill of a path that shows what lies below. */
    public static final String NO_FILL = "none";

    public static final String PAPER = Colours.PAPER.light;

    public Stroke {
        dashes = List.copyOf(dashes);
    }

    public static Stroke line(double width, String colour) {
        return new Stroke(width, colour, NO_FILL, List.of());
    }

    public static Stroke solid(String colour) {
        return new Stroke(0, colour, colour, List.of());
    }

    public Stroke dashed(List<Double> pattern) {
        return new Stroke(width, stroke, fill, pattern);
    }

    public Stroke filled(String colour) {
        return new Stroke(width, stroke, colour, dashes);
    }
}
