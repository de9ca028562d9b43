package stillturning.report.drawing;

import java.util.List;

/** Pens that tell series apart in print as well as on a screen. */
final class SeriesPens {
    private static final List<Pen> PENS =
            List.of(
                    Pen.line(1.6, Ink.STROKE.light),
                    Pen.line(1.6, Ink.BLUE.light).dashed(List.of(7.0, 3.0)),
                    Pen.line(1.6, Ink.RED.light).dashed(List.of(2.0, 2.0)),
                    Pen.line(1.6, Ink.GREEN.light).dashed(List.of(9.0, 2.0, 2.0, 2.0)),
                    Pen.line(1.6, Ink.VIOLET.light).dashed(List.of(4.0, 2.0)),
                    Pen.line(1.6, Ink.MUTED.light));

    private SeriesPens() {}

    static Pen of(int series) {
        return PENS.get(series % PENS.size());
    }
}
