package stillturning.report.drawing.plot;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Colours;
import stillturning.report.drawing.Mark;
import stillturning.report.drawing.Outline;
import stillturning.report.drawing.Picture;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.Stroke;
import stillturning.report.drawing.TextFitting;
import stillturning.report.drawing.TextWidths;

/**
 * Lays out a plot: title, legend, numbers of the events, graphs one above the other and each in
 * panels side by side, state rows, legend of states.
 */
final class PlotPainter {
    static final double TEXT = 11;
    static final Mark.Type PLAIN = new Mark.Type(TEXT, false, Colours.STROKE.light);
    static final Mark.Type BOLD = new Mark.Type(TEXT, true, Colours.STROKE.light);
    private static final double MARGIN = 12;
    private static final double FIRST_HEIGHT = 210;
    private static final double NEXT_HEIGHT = 84;
    private static final double GRAPH_GAP = 22;
    private static final double PANEL_GAP = 22;
    private static final double LEGEND_LINE = 18;

    private final Plot plot;
    private final double width;
    private final List<TimeWindow> windows;
    private final List<Mark> marks = new ArrayList<>();
    private final double left;
    private final double right;

    PlotPainter(Plot plot, double width) {
        this.plot = plot;
        this.width = width;
        windows = TimeWindows.of(plot);
        double heads = widest(plot.graphs().stream().map(Graph::quantity), BOLD);
        double names = widest(plot.states().stream().map(StateRow::name), PLAIN);
        left = MARGIN + Math.max(46, Math.max(18 + heads, 10 + names));
        Stream<String> labels =
                plot.graphs().stream().flatMap(g -> g.thresholds().stream()).map(Threshold::label);
        right = width - MARGIN - Math.min(180, 8 + widest(labels, PLAIN));
    }

    private static double widest(Stream<String> texts, Mark.Type type) {
        return Math.min(170, texts.mapToDouble(text -> width(text, type)).max().orElse(0));
    }

    static double width(String text, Mark.Type type) {
        return TextWidths.of(text, type.size(), type.bold());
    }

    PlotSheet sheet() {
        double y = paintTitle();
        int series = 0;
        for (Graph graph : plot.graphs()) {
            y = paintLegend(graph, series, y);
            series += graph.series().size();
        }
        double top = y + 14 + EventStrip.HEIGHT;
        double below = paintGraphs(top);
        double states = paintStates(below + PanelPainter.AXIS_HEIGHT);
        double bottom = paintStateLegend(states);
        Picture picture =
                new Picture(
                        plot.id(),
                        plot.title(),
                        description(),
                        width,
                        Math.ceil(bottom + MARGIN),
                        marks);
        return new PlotSheet(picture, panels(top, plot.states().isEmpty() ? below : states));
    }

    private List<PlotSheet.Panel> panels(double top, double bottom) {
        List<PlotSheet.Panel> panels = new ArrayList<>();
        for (int i = 0; i < windows.size(); i++) {
            TimeWindow window = windows.get(i);
            panels.add(new PlotSheet.Panel(panel(i, top, bottom), window.from(), window.to()));
        }
        return panels;
    }

    private String description() {
        return "%s over time, %d series, %d events"
                .formatted(
                        plot.graphs().stream()
                                .map(Graph::quantity)
                                .collect(Collectors.joining(", ")),
                        plot.graphs().stream().mapToInt(g -> g.series().size()).sum(),
                        plot.events().size());
    }

    private double paintTitle() {
        Mark.Type type = new Mark.Type(Mark.Type.TITLE_SIZE, true, Colours.STROKE.light);
        String title = TextFitting.fitted(plot.title(), type.size(), true, width - 2 * MARGIN);
        if (!plot.title().isBlank()) {
            marks.add(new Mark.Text(title, MARGIN, MARGIN + 13, Mark.Anchor.START, type));
        }
        return MARGIN + (plot.title().isBlank() ? 0 : 24);
    }

    private double paintLegend(Graph graph, int firstSeries, double top) {
        String quantity = TextFitting.fitted(graph.quantity(), TEXT, true, 260);
        marks.add(new Mark.Text(quantity, MARGIN, top + 11, Mark.Anchor.START, BOLD));
        double start = Math.max(left, MARGIN + width(quantity, BOLD) + 18);
        double x = start;
        double y = top;
        for (int i = 0; i < graph.series().size(); i++) {
            String name = TextFitting.fitted(graph.series().get(i).name(), TEXT, false, 300);
            double needed = 34 + width(name, PLAIN) + 22;
            if (x + needed > width - MARGIN && x > start) {
                x = start;
                y += LEGEND_LINE;
            }
            marks.add(
                    new Outline(new Point(x, y + 7))
                            .segment(0, 0, 28, 0)
                            .with(SeriesPens.of(firstSeries + i)));
            marks.add(new Mark.Text(name, x + 34, y + 11, Mark.Anchor.START, PLAIN));
            x += needed;
        }
        return y + LEGEND_LINE;
    }

    private double panelWidth() {
        return (right - left - PANEL_GAP * (windows.size() - 1)) / windows.size();
    }

    private Box panel(int index, double top, double bottom) {
        double x = left + index * (panelWidth() + PANEL_GAP);
        return new Box(x, top, panelWidth(), bottom - top);
    }

    /** Every graph, and over them the events; where the last graph ends. */
    private double paintGraphs(double top) {
        double y = top;
        double bottom = top;
        int series = 0;
        for (int i = 0; i < plot.graphs().size(); i++) {
            Graph graph = plot.graphs().get(i);
            bottom = y + (i == 0 ? FIRST_HEIGHT : NEXT_HEIGHT);
            paintGraph(graph, series, y, bottom, i == plot.graphs().size() - 1);
            series += graph.series().size();
            y = bottom + GRAPH_GAP;
        }
        double statesEnd = bottom + PanelPainter.AXIS_HEIGHT + plot.states().size() * StateBars.ROW;
        for (int i = 0; i < windows.size(); i++) {
            marks.addAll(
                    new EventStrip(plot.events(), windows.get(i), panel(i, top, bottom))
                            .marks(statesEnd));
        }
        return bottom;
    }

    private void paintGraph(Graph graph, int series, double top, double bottom, boolean lowest) {
        String head = TextFitting.fitted(graph.quantity(), TEXT, true, left - MARGIN - 8);
        marks.add(new Mark.Text(head, MARGIN, top - 7, Mark.Anchor.START, BOLD));
        for (int i = 0; i < windows.size(); i++) {
            PanelPainter painter =
                    new PanelPainter(graph, series, windows.get(i), panel(i, top, bottom));
            marks.addAll(painter.enlarged(windows.subList(0, i)));
            marks.addAll(painter.marks(i == 0, lowest ? times(windows.get(i)) : ""));
        }
        paintThresholdLabels(graph, top, bottom);
    }

    private String times(TimeWindow window) {
        TimeUnit unit = window.unit();
        if (windows.size() == 1) {
            return "time (" + unit.sign + ")";
        }
        String length =
                Ticks.text((window.to() - window.origin()) / unit.seconds) + " " + unit.sign;
        if (window.to() == plot.untilSeconds() && window.origin() == 0) {
            return "whole story, " + length;
        }
        return window.origin() == 0
                ? "first " + length
                : unit.sign + " after " + TimeUnit.clock(window.from());
    }

    /** Labels right of the last panel, moved apart where lines lie close together. */
    private void paintThresholdLabels(Graph graph, double top, double bottom) {
        ValueAxis scale = ValueAxis.of(graph);
        List<Threshold> sorted =
                graph.thresholds().stream()
                        .sorted((a, b) -> Double.compare(b.value(), a.value()))
                        .toList();
        double[] natural =
                sorted.stream()
                        .mapToDouble(t -> bottom - (bottom - top) * scale.share(t.value()))
                        .toArray();
        double next = Double.NEGATIVE_INFINITY;
        double room = width - MARGIN - right - 7;
        for (int i = 0; i < natural.length; i++) {
            double y = Math.max(natural[i], next);
            String label = TextFitting.fitted(sorted.get(i).label(), TEXT, false, room);
            marks.add(
                    new Outline(new Point(right, 0))
                            .segment(0, natural[i], 5, y)
                            .with(Stroke.line(0.8, Colours.MUTED.light)));
            marks.add(new Mark.Text(label, right + 8, y + 4, Mark.Anchor.START, PLAIN));
            next = y + 13;
        }
    }

    private double paintStates(double top) {
        double y = top;
        for (StateRow row : plot.states()) {
            String name = TextFitting.fitted(row.name(), TEXT, false, left - MARGIN - 8);
            marks.add(new Mark.Text(name, left - 8, y + 12, Mark.Anchor.END, PLAIN));
            for (int i = 0; i < windows.size(); i++) {
                marks.addAll(StateBars.of(row, windows.get(i), panel(i, y, y + StateBars.ROW - 4)));
            }
            y += StateBars.ROW;
        }
        return y;
    }

    private double paintStateLegend(double top) {
        Map<StateRow.Fill, Set<String>> words = new LinkedHashMap<>();
        plot.states().stream()
                .flatMap(row -> row.spans().stream())
                .forEach(
                        span ->
                                words.computeIfAbsent(span.fill(), f -> new LinkedHashSet<>())
                                        .add(span.label()));
        double x = left;
        double y = top + 6;
        for (Map.Entry<StateRow.Fill, Set<String>> entry : words.entrySet()) {
            String label =
                    TextFitting.fitted(String.join(", ", entry.getValue()), TEXT, false, 240);
            double needed = 24 + width(label, PLAIN) + 22;
            if (x + needed > width - MARGIN && x > left) {
                x = left;
                y += LEGEND_LINE;
            }
            marks.addAll(StateBars.bar(new Box(x, y, 18, 12), entry.getKey()));
            marks.add(new Mark.Text(label, x + 24, y + 10, Mark.Anchor.START, PLAIN));
            x += needed;
        }
        return words.isEmpty() ? top : y + LEGEND_LINE;
    }
}
