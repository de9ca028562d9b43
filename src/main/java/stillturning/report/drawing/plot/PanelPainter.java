package stillturning.report.drawing.plot;

import java.util.ArrayList;
import java.util.List;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Colours;
import stillturning.report.drawing.Mark;
import stillturning.report.drawing.Outline;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.Polyline;
import stillturning.report.drawing.Stroke;

/** One panel: frame, axes, thresholds and series within one window of time. */
final class PanelPainter {
    static final double AXIS_HEIGHT = 34;
    private static final Stroke GRID = Stroke.line(0.5, Colours.GRID.light);
    private static final Stroke FRAME = Stroke.line(1, Colours.STROKE.light);
    private static final Stroke LIMIT =
            Stroke.line(0.9, Colours.MUTED.light).dashed(List.of(3.0, 2.0));
    private static final Stroke SHADE = Stroke.solid(Colours.SHADE.light);

    private final Graph graph;
    private final int firstSeries;
    private final TimeWindow window;
    private final ValueAxis scale;
    private final Box box;
    private final List<Mark> marks = new ArrayList<>();

    /**
     * @param firstSeries number of the graph's first series among all of the plot
     */
    PanelPainter(Graph graph, int firstSeries, TimeWindow window, Box box) {
        this.graph = graph;
        this.firstSeries = firstSeries;
        this.window = window;
        this.scale = ValueAxis.of(graph);
        this.box = box;
    }

    /** Shades over what other panels show enlarged. */
    List<Mark> enlarged(List<TimeWindow> others) {
        return others.stream().filter(window::holds).map(this::shade).toList();
    }

    private Mark shade(TimeWindow shorter) {
        double from = Math.max(0, window.share(shorter.from())) * box.width();
        double width = Math.max(2, window.share(shorter.to()) * box.width() - from);
        double start = Math.min(from, box.width() - width);
        return new Outline(new Point(box.x(), box.y()))
                .rectangle(start, 0, width, box.height())
                .with(SHADE);
    }

    /**
     * The panel.
     *
     * @param first whether it stands at the left, where values are written
     * @param time words below the axis of time; empty where no times are written
     */
    List<Mark> marks(boolean first, String time) {
        paintValueAxis(first);
        paintTimeAxis(time);
        for (Threshold threshold : graph.thresholds()) {
            double y = y(threshold.value());
            marks.add(outline().segment(box.x(), y, box.right(), y).with(LIMIT));
        }
        for (int i = 0; i < graph.series().size(); i++) {
            paintSeries(i);
        }
        marks.add(outline().rectangle(box.x(), box.y(), box.width(), box.height()).with(FRAME));
        return marks;
    }

    private static Outline outline() {
        return new Outline(new Point(0, 0));
    }

    private double x(double seconds) {
        return box.x() + window.share(seconds) * box.width();
    }

    private double y(double value) {
        return box.bottom() - scale.share(value) * box.height();
    }

    private void paintValueAxis(boolean labelled) {
        for (double value : scale.ticks().values()) {
            double y = y(value);
            marks.add(outline().segment(box.x(), y, box.right(), y).with(GRID));
            if (labelled) {
                text(Ticks.text(value), box.x() - 6, y + 4, Mark.Anchor.END);
            }
        }
    }

    private void paintTimeAxis(String words) {
        TimeUnit unit = window.unit();
        int most = (int) Math.max(2, box.width() / 32);
        double from = window.origin();
        Ticks ticks =
                Ticks.within(
                        (window.from() - from) / unit.seconds,
                        (window.to() - from) / unit.seconds,
                        most);
        for (double tick : ticks.values()) {
            double x = x(from + tick * unit.seconds);
            marks.add(outline().segment(x, box.y(), x, box.bottom()).with(GRID));
            if (!words.isEmpty()) {
                marks.add(outline().segment(x, box.bottom(), x, box.bottom() + 4).with(FRAME));
                text(Ticks.text(tick), x, box.bottom() + 15, Mark.Anchor.MIDDLE);
            }
        }
        if (!words.isEmpty()) {
            text(words, box.x() + box.width() / 2, box.bottom() + 28, Mark.Anchor.MIDDLE);
        }
    }

    private void text(String words, double x, double y, Mark.Anchor anchor) {
        marks.add(new Mark.Text(words, x, y, anchor, PlotPainter.PLAIN));
    }

    private void paintSeries(int index) {
        List<Point> points = new ArrayList<>();
        for (Series.Sample sample : clipped(graph.series().get(index).samples())) {
            points.add(new Point(x(sample.seconds()), y(sample.value())));
        }
        if (points.size() < 2) {
            return;
        }
        Outline line = outline();
        boolean first = true;
        for (Point point : Polyline.simplified(points, 0.25)) {
            line = first ? line.move(point.x(), point.y()) : line.line(point.x(), point.y());
            first = false;
        }
        marks.add(
                new Mark.PartMarks(
                        "series "
                                + (firstSeries + index)
                                + " from "
                                + Ticks.text(window.from())
                                + " until "
                                + Ticks.text(window.to()),
                        graph.series().get(index).name(),
                        List.of(line.with(SeriesPens.of(firstSeries + index)))));
    }

    /** The samples within the window, and where the line crosses its edges. */
    private List<Series.Sample> clipped(List<Series.Sample> samples) {
        List<Series.Sample> inside = new ArrayList<>();
        for (int i = 0; i < samples.size(); i++) {
            Series.Sample sample = samples.get(i);
            if (i > 0) {
                crossing(samples.get(i - 1), sample, window.from(), inside);
                crossing(samples.get(i - 1), sample, window.to(), inside);
            }
            if (window.holds(sample.seconds())) {
                inside.add(sample);
            }
        }
        return inside;
    }

    private static void crossing(
            Series.Sample a, Series.Sample b, double edge, List<Series.Sample> inside) {
        if (a.seconds() < edge && edge < b.seconds()) {
            inside.add(between(a, b, edge));
        }
    }

    private static Series.Sample between(Series.Sample a, Series.Sample b, double seconds) {
        double share = (seconds - a.seconds()) / (b.seconds() - a.seconds());
        return new Series.Sample(seconds, a.value() + share * (b.value() - a.value()));
    }
}
