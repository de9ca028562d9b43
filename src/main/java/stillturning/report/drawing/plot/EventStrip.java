package stillturning.report.drawing.plot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Colours;
import stillturning.report.drawing.Mark;
import stillturning.report.drawing.Outline;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.Stroke;

/** Numbers of events above a panel, with thin lines down to their times. */
final class EventStrip {
    static final double HEIGHT = 24;
    private static final double PILL = 15;
    private static final double TOGETHER = 5;
    private static final double APART = 3;
    private static final Stroke DOWN =
            Stroke.line(0.7, Colours.MUTED.light).dashed(List.of(1.0, 2.0));
    private static final Stroke RIM = Stroke.line(0.9, Colours.STROKE.light).filled(Stroke.PAPER);

    private final List<EventMark> events;
    private final TimeWindow window;
    private final Box panel;

    /** Events that share a place, and the pill with their numbers. */
    private record Pill(double x, String words, double width) {}

    EventStrip(List<EventMark> events, TimeWindow window, Box panel) {
        this.events =
                events.stream()
                        .filter(event -> window.holds(event.seconds()))
                        .sorted(
                                Comparator.comparingDouble(EventMark::seconds)
                                        .thenComparingInt(EventMark::number))
                        .toList();
        this.window = window;
        this.panel = panel;
    }

    /**
     * Pills and lines, which leave out the axis below the panel.
     *
     * @param bottom where the lines end below the axis
     */
    List<Mark> marks(double bottom) {
        List<Pill> pills = pills(TOGETHER);
        // where there is no room for all numbers side by side, neighbours share a pill
        for (double together = TOGETHER * 2; roomFor(pills) > panel.width(); together *= 2) {
            pills = pills(together);
        }
        double[] lefts = lefts(pills);
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < pills.size(); i++) {
            paint(marks, pills.get(i), lefts[i], bottom);
        }
        return marks;
    }

    private static double roomFor(List<Pill> pills) {
        return pills.size() < 2 ? 0 : pills.stream().mapToDouble(p -> p.width() + APART).sum();
    }

    private List<Pill> pills(double together) {
        List<Pill> pills = new ArrayList<>();
        for (int from = 0, to = 1; from < events.size(); from = to++) {
            while (to < events.size() && x(to) - x(from) <= together) {
                to++;
            }
            String words = words(events.subList(from, to));
            double width = Math.max(PILL, PlotPainter.width(words, PlotPainter.PLAIN) + 8);
            pills.add(new Pill(x(from), words, width));
        }
        return pills;
    }

    private double x(int event) {
        return panel.x() + window.share(events.get(event).seconds()) * panel.width();
    }

    private static String words(List<EventMark> together) {
        int first = together.get(0).number();
        int last = together.get(together.size() - 1).number();
        return first == last ? Integer.toString(first) : first + "–" + last;
    }

    /** Left edges: as near to the true places as the neighbours and the panel's ends allow. */
    private double[] lefts(List<Pill> pills) {
        double[] lefts = new double[pills.size()];
        double next = panel.x() - PILL / 2;
        for (int i = 0; i < lefts.length; i++) {
            lefts[i] = Math.max(pills.get(i).x() - pills.get(i).width() / 2, next);
            next = lefts[i] + pills.get(i).width() + APART;
        }
        double last = panel.right() + PILL / 2;
        for (int i = lefts.length - 1; i >= 0; i--) {
            lefts[i] = Math.min(lefts[i], last - pills.get(i).width());
            last = lefts[i] - APART;
        }
        return lefts;
    }

    private void paint(List<Mark> marks, Pill pill, double left, double bottom) {
        double top = panel.y() - HEIGHT;
        double middle = left + pill.width() / 2;
        marks.add(
                new Outline(new Point(0, 0))
                        .segment(middle, top + PILL, pill.x(), panel.y())
                        .line(pill.x(), panel.bottom())
                        .segment(
                                pill.x(),
                                panel.bottom() + PanelPainter.AXIS_HEIGHT,
                                pill.x(),
                                bottom)
                        .with(DOWN));
        marks.add(new Outline(new Point(left, top)).rectangle(0, 0, pill.width(), PILL).with(RIM));
        marks.add(
                new Mark.Text(
                        pill.words(), middle, top + 11.5, Mark.Anchor.MIDDLE, PlotPainter.PLAIN));
    }
}
