package stillturning.drawing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Lays out a plot: title, legend, panels side by side, state rows, legend of states. */
final class PlotPainter {
    static final double WIDTH = 960;
    static final double TEXT = 11;
    static final Mark.Type PLAIN = new Mark.Type(TEXT, false, "#000000");
    static final Mark.Type BOLD = new Mark.Type(TEXT, true, "#000000");
    private static final double MARGIN = 12;
    private static final double PANEL_HEIGHT = 230;
    private static final double PANEL_GAP = 22;
    private static final double LEGEND_LINE = 18;

    private final Plot plot;
    private final List<Window> windows;
    private final ValueScale scale;
    private final List<Mark> marks = new ArrayList<>();
    private final double left;
    private final double right;

    PlotPainter(Plot plot) {
        this.plot = plot;
        windows = Window.of(plot);
        scale = ValueScale.of(plot);
        left = MARGIN + Math.max(46, 10 + widest(plot.states().stream().map(StateRow::name)));
        right =
                WIDTH
                        - MARGIN
                        - Math.min(
                                180, 8 + widest(plot.thresholds().stream().map(Threshold::label)));
    }

    private static double widest(Stream<String> texts) {
        return Math.min(170, texts.mapToDouble(text -> width(text, PLAIN)).max().orElse(0));
    }

    static double width(String text, Mark.Type type) {
        return TextWidths.of(text, type.size(), type.bold());
    }

    Picture picture() {
        double y = paintTitle();
        y = paintLegend(y);
        double top = y + 14 + EventStrip.HEIGHT;
        double below = top + PANEL_HEIGHT;
        paintPanels(top, below);
        paintThresholdLabels(top);
        double bottom = paintStates(below + PanelPainter.AXIS_HEIGHT);
        bottom = paintStateLegend(bottom);
        return new Picture(
                plot.id(), plot.title(), description(), WIDTH, Math.ceil(bottom + MARGIN), marks);
    }

    private String description() {
        return "%s over time, %d series, %d events"
                .formatted(plot.quantity(), plot.series().size(), plot.events().size());
    }

    private double paintTitle() {
        Mark.Type type = new Mark.Type(DiagramPainter.TITLE_SIZE, true, "#000000");
        String title = Wording.fitted(plot.title(), type.size(), true, WIDTH - 2 * MARGIN);
        if (!plot.title().isBlank()) {
            marks.add(new Mark.Text(title, MARGIN, MARGIN + 13, Mark.Anchor.START, type));
        }
        return MARGIN + (plot.title().isBlank() ? 0 : 24);
    }

    private double paintLegend(double top) {
        String quantity = Wording.fitted(plot.quantity(), TEXT, true, 260);
        marks.add(new Mark.Text(quantity, MARGIN, top + 11, Mark.Anchor.START, BOLD));
        double start = MARGIN + width(quantity, BOLD) + 24;
        double x = start;
        double y = top;
        for (int i = 0; i < plot.series().size(); i++) {
            String name = Wording.fitted(plot.series().get(i).name(), TEXT, false, 300);
            double needed = 34 + width(name, PLAIN) + 22;
            if (x + needed > WIDTH - MARGIN && x > start) {
                x = start;
                y += LEGEND_LINE;
            }
            marks.add(new Outline(new At(x, y + 7)).segment(0, 0, 28, 0).with(SeriesPens.of(i)));
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

    private void paintPanels(double top, double bottom) {
        double statesEnd = bottom + PanelPainter.AXIS_HEIGHT + plot.states().size() * StateBars.ROW;
        for (int i = 0; i < windows.size(); i++) {
            PanelPainter painter =
                    new PanelPainter(plot, windows.get(i), scale, panel(i, top, bottom));
            if (i > 0) {
                marks.addAll(painter.enlarged(windows.get(i - 1)));
            }
            marks.addAll(painter.marks(i == 0, windows.size() > 1));
            marks.addAll(
                    new EventStrip(plot.events(), windows.get(i), panel(i, top, bottom))
                            .marks(statesEnd));
        }
    }

    /** Labels right of the last panel, moved apart where lines lie close together. */
    private void paintThresholdLabels(double top) {
        List<Threshold> sorted =
                plot.thresholds().stream()
                        .sorted((a, b) -> Double.compare(b.value(), a.value()))
                        .toList();
        double[] natural =
                sorted.stream()
                        .mapToDouble(t -> top + PANEL_HEIGHT * (1 - scale.share(t.value())))
                        .toArray();
        double next = Double.NEGATIVE_INFINITY;
        double room = WIDTH - MARGIN - right - 7;
        for (int i = 0; i < natural.length; i++) {
            double y = Math.max(natural[i], next);
            String label = Wording.fitted(sorted.get(i).label(), TEXT, false, room);
            marks.add(
                    new Outline(new At(right, 0))
                            .segment(0, natural[i], 5, y)
                            .with(Pen.line(0.8, "#767676")));
            marks.add(new Mark.Text(label, right + 8, y + 4, Mark.Anchor.START, PLAIN));
            next = y + 13;
        }
    }

    private double paintStates(double top) {
        double y = top;
        for (StateRow row : plot.states()) {
            String name = Wording.fitted(row.name(), TEXT, false, left - MARGIN - 8);
            marks.add(new Mark.Text(name, left - 8, y + 12, Mark.Anchor.END, PLAIN));
            for (int i = 0; i < windows.size(); i++) {
                marks.addAll(StateBars.of(row, windows.get(i), panel(i, y, y + StateBars.ROW - 4)));
            }
            y += StateBars.ROW;
        }
        return y;
    }

    private record Explained(String label, StateRow.Fill fill) {}

    private double paintStateLegend(double top) {
        Set<Explained> states = new LinkedHashSet<>();
        plot.states().stream()
                .flatMap(row -> row.spans().stream())
                .forEach(span -> states.add(new Explained(span.label(), span.fill())));
        double x = left;
        double y = top + 6;
        for (Explained state : states) {
            String label = Wording.fitted(state.label(), TEXT, false, 240);
            double needed = 24 + width(label, PLAIN) + 22;
            if (x + needed > WIDTH - MARGIN && x > left) {
                x = left;
                y += LEGEND_LINE;
            }
            marks.addAll(StateBars.bar(new Box(x, y, 18, 12), state.fill()));
            marks.add(new Mark.Text(label, x + 24, y + 10, Mark.Anchor.START, PLAIN));
            x += needed;
        }
        return states.isEmpty() ? top : y + LEGEND_LINE;
    }
}
