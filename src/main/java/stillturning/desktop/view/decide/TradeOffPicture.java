package stillturning.desktop.view.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import stillturning.desktop.view.Labels;
import stillturning.desktop.viewmodel.decide.LabelPlaces;
import stillturning.desktop.viewmodel.decide.LabelPlaces.PlacedName;
import stillturning.desktop.viewmodel.decide.LabelPlaces.Segment;
import stillturning.desktop.viewmodel.decide.TradeOff;
import stillturning.desktop.viewmodel.decide.TradeOff.Plotted;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Point;

/** Candidates by two criteria; diamonds on a step line are those that no other beats in both. */
final class TradeOffPicture extends Pane {

    /** Half the size of a mark, and the gap beside the frame (em). */
    private static final double MARK = 0.55;

    /** Names broader than this share of the frame go on in the next line. */
    private static final double NAME_SHARE = 0.34;

    private static final double GAP = 0.5;

    /** Between a name and the frame (px). */
    private static final double CLEAR = 4;

    private Optional<TradeOff> shown = Optional.empty();
    private final Region frame = new Region();
    private final Label across = Labels.of("", "trade-axis");
    private final Label upwards = Labels.of("", "trade-axis");
    private final Polyline steps = new Polyline();
    private final List<Label> ticksAcross = new ArrayList<>();
    private final List<Label> ticksUpwards = new ArrayList<>();
    private final List<Line> grid = new ArrayList<>();
    private final List<Line> leaders = new ArrayList<>();
    private final List<Region> marks = new ArrayList<>();
    private final List<Label> names = new ArrayList<>();
    private final Consumer<String> choosing;

    /**
     * @param choosing told the candidate that was chosen
     */
    TradeOffPicture(Consumer<String> choosing) {
        this.choosing = choosing;
        getStyleClass().add("trade-off");
        frame.getStyleClass().add("trade-frame");

        steps.getStyleClass().add("trade-steps");
        setMinSize(0, 0);
    }

    void show(Optional<TradeOff> now) {
        shown = now;
        List.of(ticksAcross, ticksUpwards, grid, leaders, marks, names).forEach(List::clear);
        now.ifPresent(this::make);
        getChildren().setAll(frame);
        if (now.isPresent()) {
            List.of(grid, List.of(steps), leaders, ticksAcross, ticksUpwards)
                    .forEach(getChildren()::addAll);
            List.of(List.of(across, upwards), names, marks).forEach(getChildren()::addAll);
        }
        requestLayout();
    }

    private void make(TradeOff t) {
        across.setText(t.across().words() + ", " + t.across().better() + " \u2192");
        upwards.setText("\u2191 " + t.upwards().words() + ", " + t.upwards().better());
        t.across().ticks().forEach(tick -> ticksAcross.add(Labels.of(tick.words(), "trade-tick")));
        t.upwards()
                .ticks()
                .forEach(tick -> ticksUpwards.add(Labels.of(tick.words(), "trade-tick")));
        for (int i = 0; i < ticksAcross.size() + ticksUpwards.size(); i++) {
            grid.add(line("trade-grid"));
        }
        for (Plotted point : t.points()) {
            leaders.add(line("trade-leader"));
            marks.add(mark(point));
            names.add(name(point));
        }
    }

    private static Line line(String style) {
        Line line = new Line();
        line.getStyleClass().add(style);
        return line;
    }

    private Region mark(Plotted point) {
        Region mark = new Region();
        mark.getStyleClass()
                .addAll("trade-mark", point.efficient() ? "trade-best" : "trade-beaten");
        if (point.found()) {
            mark.getStyleClass().add("trade-found");
        }
        mark.setFocusTraversable(true);
        mark.setAccessibleRole(AccessibleRole.BUTTON);
        String words =
                point.title()
                        + ": "
                        + point.values()
                        + (point.efficient() ? "; no other beats it in both" : "; beaten in both")
                        + (point.missed() == 0
                                ? ""
                                : "; misses " + point.missed() + " of the requirements");
        mark.setAccessibleText(words);
        Tooltip.install(mark, new Tooltip(words));
        mark.setOnMouseClicked(event -> choose(mark, point));
        mark.setOnKeyPressed(
                event -> {
                    if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE) {
                        choose(mark, point);
                    }
                });
        return mark;
    }

    private void choose(Region mark, Plotted point) {
        mark.requestFocus();
        choosing.accept(point.id());
    }

    private static Label name(Plotted point) {
        String sign = point.missed() == 0 ? "" : " \u2716";
        Label name = Labels.of(point.title() + sign, "trade-name");
        name.setVisible(point.isDrawn());
        name.setWrapText(true);
        name.setMouseTransparent(true);
        return name;
    }

    @Override
    protected void layoutChildren() {
        shown.ifPresent(this::lay);
    }

    private void lay(TradeOff t) {
        double em = across.getFont().getSize();
        double left = ticksUpwards.stream().mapToDouble(l -> l.prefWidth(-1)).max().orElse(0);
        double head = upwards.prefHeight(-1) + GAP * em;
        double foot = 2 * (across.prefHeight(-1) + GAP * em);
        Box in =
                new Box(
                        snapPositionX(left + 2 * GAP * em),
                        snapPositionY(head),
                        snapPositionX(Math.max(1, getWidth() - left - 3 * GAP * em)),
                        snapPositionY(Math.max(1, getHeight() - head - foot)));
        frame.resizeRelocate(in.x(), in.y(), in.width(), in.height());
        place(upwards, in.x(), 0);
        double acrossX = in.x() + in.width() - across.prefWidth(-1);
        place(across, acrossX, getHeight() - across.prefHeight(-1));
        axes(t, in, em);
        steps.getPoints().clear();
        for (Point corner : t.line()) {
            steps.getPoints().addAll(x(in, corner.x()), y(in, corner.y()));
        }
        points(t, in, em);
    }

    private void axes(TradeOff t, Box in, double em) {
        for (int i = 0; i < ticksAcross.size(); i++) {
            Label label = ticksAcross.get(i);
            double x = snapPositionX(x(in, t.across().ticks().get(i).share()));
            double wide = label.prefWidth(-1);
            double from = Math.max(0, Math.min(x - wide / 2, getWidth() - wide));
            place(label, from, in.y() + in.height() + GAP / 2 * em);
            set(grid.get(i), x, in.y(), x, in.y() + in.height());
        }
        for (int i = 0; i < ticksUpwards.size(); i++) {
            Label label = ticksUpwards.get(i);
            double y = snapPositionY(y(in, t.upwards().ticks().get(i).share()));
            double wide = label.prefWidth(-1);
            place(label, in.x() - wide - GAP * em, y - label.prefHeight(-1) / 2);
            set(grid.get(ticksAcross.size() + i), in.x(), y, in.x() + in.width(), y);
        }
    }

    private void points(TradeOff t, Box in, double em) {
        double radius = MARK * em;
        List<PlacedName> wanted = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            Plotted point = t.points().get(i);
            double x = x(in, point.x());
            double y = y(in, point.y());
            marks.get(i).resizeRelocate(x - radius, y - radius, 2 * radius, 2 * radius);
            Label name = names.get(i);
            double wide = narrowest(name, Math.min(name.prefWidth(-1), NAME_SHARE * in.width()));
            wanted.add(
                    name.isVisible()
                            ? new PlacedName(x, y, wide, name.prefHeight(wide))
                            : new PlacedName(x, y, 0, 0));
        }
        List<Box> boxes = LabelPlaces.of(inner(in), radius, wanted, segments());
        for (int i = 0; i < boxes.size(); i++) {
            Box box = boxes.get(i);
            names.get(i)
                    .resizeRelocate(
                            snapPositionX(box.x()),
                            snapPositionY(box.y()),
                            Math.ceil(box.width()),
                            Math.ceil(box.height()));
            lead(leaders.get(i), wanted.get(i), box, radius);
        }
    }

    /** As broad as its longest line: what is broken needs less than it was given. */
    private static double narrowest(Label name, double most) {
        double high = name.prefHeight(most);
        double less = 0;
        double enough = most;
        while (enough - less > 1) {
            double middle = (less + enough) / 2;
            if (name.prefHeight(middle) > high) {
                less = middle;
            } else {
                enough = middle;
            }
        }
        return Math.ceil(enough);
    }

    /** Where names stand clear of the frame. */
    private static Box inner(Box in) {
        return new Box(
                in.x() + CLEAR, in.y() + CLEAR, in.width() - 2 * CLEAR, in.height() - 2 * CLEAR);
    }

    private List<Segment> segments() {
        List<Double> at = steps.getPoints();
        List<Segment> segments = new ArrayList<>();
        for (int i = 0; i + 3 < at.size(); i += 2) {
            segments.add(new Segment(at.get(i), at.get(i + 1), at.get(i + 2), at.get(i + 3)));
        }
        return segments;
    }

    /** A fine line from the mark to a name that is not beside it. */
    private static void lead(Line leader, PlacedName name, Box box, double radius) {
        double x = Math.max(box.x(), Math.min(name.x(), box.x() + box.width()));
        double y = Math.max(box.y(), Math.min(name.y(), box.y() + box.height()));
        leader.setVisible(
                name.width() > 0
                        && Math.hypot(x - name.x(), y - name.y()) > radius + name.height() / 2);
        set(leader, name.x(), name.y(), x, y);
    }

    private static void set(Line line, double x1, double y1, double x2, double y2) {
        line.setStartX(x1);
        line.setStartY(y1);
        line.setEndX(x2);
        line.setEndY(y2);
    }

    private void place(Label label, double x, double y) {
        label.resizeRelocate(
                snapPositionX(x), snapPositionY(y), label.prefWidth(-1), label.prefHeight(-1));
    }

    private static double x(Box in, double share) {
        return in.x() + share * in.width();
    }

    private static double y(Box in, double share) {
        return in.y() + (1 - share) * in.height();
    }
}
