package stillturning.report.drawing;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A drawn picture, in units of one CSS pixel.
 *
 * @param id prefix of all names inside the SVG
 * @param description what the picture shows, in words
 */
public record Picture(
        String id,
        String title,
        String description,
        double width,
        double height,
        List<Mark> marks) {
    public Picture {
        marks = List.copyOf(marks);
        checkId(id);
    }

    /** Size of the smallest letters (units); nothing where nothing is written. */
    public OptionalDouble smallestLetters() {
        return marks.stream().flatMapToDouble(Mark::letterSizes).min();
    }

    /**
     * Self-contained SVG text that can stand alone or inside HTML; the same picture, the same text.
     */
    public String toSvg() {
        return new SvgWriter(this).text();
    }

    /** The same for paper, one unit so long (mm). */
    public String toSvg(double millimetres) {
        return new SvgWriter(this, millimetres).text();
    }

    /**
     * The bytes of a PNG on white paper.
     *
     * @param sharpness pixels for each unit of the drawing, across and down
     */
    public byte[] toPng(int sharpness) {
        return new PngWriter(this).bytes(sharpness);
    }

    public static void checkId(String id) {
        if (!id.matches("[A-Za-z][A-Za-z0-9-]*")) {
            throw new IllegalArgumentException(
                    "picture id '" + id + "' is not letters, digits and hyphens, a letter first");
        }
    }
}
