package stillturning.report.drawing.plot;

import java.util.List;
import stillturning.report.drawing.Colours;
import stillturning.report.drawing.Stroke;

/** Pens that tell series apart in print as well as on a screen. */
final class SeriesPens {
    private static final List<Stroke> PENS =
            List.of(
                    Stroke.line(1.6, Colours.STROKE.light),
                    Stroke.line(1.6, Colours.BLUE.light).dashed(List.of(7.0, 3.0)),
                    Stroke.line(1.6, Colours.RED.light).dashed(List.of(2.0, 2.0)),
                    Stroke.line(1.6, Colours.GREEN.light).dashed(List.of(9.0, 2.0, 2.0, 2.0)),
                    Stroke.line(1.6, Colours.VIOLET.light).dashed(List.of(4.0, 2.0)),
                    Stroke.line(1.6, Colours.MUTED.light));

    private SeriesPens() {}

    static Stroke of(int series) {
        return PENS.get(series % PENS.size());
    }
}
