package stillturning.drawing;

import java.util.List;

/** Pens that tell series apart in print as well as on a screen. */
final class SeriesPens {
    private static final List<Pen> PENS =
            List.of(
                    Pen.line(1.6, "#000000"),
                    Pen.line(1.6, "#12508f").dashed(List.of(7.0, 3.0)),
                    Pen.line(1.6, "#a3200d").dashed(List.of(2.0, 2.0)),
                    Pen.line(1.6, "#2f6322").dashed(List.of(9.0, 2.0, 2.0, 2.0)),
                    Pen.line(1.6, "#6b3d8f").dashed(List.of(4.0, 2.0)),
                    Pen.line(1.6, "#767676"));

    private SeriesPens() {}

    static Pen of(int series) {
        return PENS.get(series % PENS.size());
    }
}
