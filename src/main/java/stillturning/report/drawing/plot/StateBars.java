package stillturning.report.drawing.plot;

import java.util.ArrayList;
import java.util.List;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Colours;
import stillturning.report.drawing.Mark;
import stillturning.report.drawing.Outline;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.Stroke;

/** The bars of one state row in one panel. */
final class StateBars {
    static final double ROW = 20;
    private static final double HATCH = 5;
    private static final double NARROWEST = 1.5;
    private static final Stroke RIM = Stroke.line(0.8, Colours.STROKE.light);
    private static final Stroke STROKES = Stroke.line(0.8, Colours.STROKE.light);

    private StateBars() {}

    static List<Mark> of(StateRow row, TimeWindow window, Box panel) {
        List<Mark> marks = new ArrayList<>();
        for (StateRow.RowSpan span : row.spans()) {
            if (span.toSeconds() >= window.from() && span.fromSeconds() <= window.to()) {
                double from = Math.max(0, window.share(span.fromSeconds())) * panel.width();
                double to = Math.min(1, window.share(span.toSeconds())) * panel.width();
                double width = Math.max(NARROWEST, to - from);
                double x = Math.min(panel.x() + from, panel.right() - width);
                Box box = new Box(x, panel.y(), width, panel.height());
                List<Mark> inside = new ArrayList<>(bar(box, span.fill()));
                inside.addAll(label(span, box));
                marks.addAll(inside);
            }
        }
        return marks;
    }

    static List<Mark> bar(Box box, StateRow.Fill fill) {
        Outline rim = new Outline(new Point(box.x(), box.y()));
        rim.rectangle(0, 0, box.width(), box.height());
        return switch (fill) {
            case EMPTY -> List.of(rim.with(RIM.filled(Stroke.PAPER)));
            case LIGHT -> List.of(rim.with(RIM.filled(Colours.LIGHT_FILL.light)));
            case SOLID -> List.of(rim.with(RIM.filled(Colours.SOLID_FILL.light)));
            case HATCHED -> List.of(rim.with(RIM.filled(Stroke.PAPER)), hatching(box));
        };
    }

    /** Slanted strokes, each cut to the bar. */
    private static Mark hatching(Box box) {
        Outline strokes = new Outline(new Point(box.x(), box.bottom()));
        for (double foot = HATCH - box.height(); foot < box.width(); foot += HATCH) {
            double from = Math.max(0, foot);
            double to = Math.min(box.width(), foot + box.height());
            strokes.segment(from, foot - from, to, foot - to);
        }
        return strokes.with(STROKES);
    }

    private static List<Mark> label(StateRow.RowSpan span, Box box) {
        Mark.Type type =
                span.fill() == StateRow.Fill.SOLID
                        ? new Mark.Type(PlotPainter.TEXT, false, Stroke.PAPER)
                        : PlotPainter.PLAIN;
        double width = PlotPainter.width(span.label(), type);
        if (span.label().isBlank() || width + 8 > box.width()) {
            return List.of();
        }
        double middle = box.x() + box.width() / 2;
        Mark text = new Mark.Text(span.label(), middle, box.y() + 12, Mark.Anchor.MIDDLE, type);
        if (span.fill() != StateRow.Fill.HATCHED) {
            return List.of(text);
        }
        Mark ground =
                new Outline(new Point(middle - width / 2 - 3, box.y() + 1))
                        .rectangle(0, 0, width + 6, box.height() - 2)
                        .with(Stroke.solid(Stroke.PAPER));
        return List.of(ground, text);
    }
}
