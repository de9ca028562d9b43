package stillturning.desktop.view.picture;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.transform.Scale;
import org.jspecify.annotations.Nullable;
import stillturning.report.drawing.plot.PlotSheet;
import stillturning.report.drawing.plot.PlotSheet.Panel;
import stillturning.report.drawing.plot.TimePlot;

/** A plot over time, as wide as its room, with a line at the present time that can be moved. */
public final class PlotView extends Region {
    private static final double HEAD = 5;
    private static final double KEY_STEPS = 100;

    /**
     * A plot is drawn for the width at hand in steps, and never for less (units of the drawing).
     */
    private static final double BREADTH_STEP = 20;

    private static final double NARROWEST = 560;

    private final RegionColours ground = new RegionColours(this);
    private final PictureNodes nodes = new PictureNodes(ground::colour);
    private final Group cursors = new Group();
    private final Group plane = new Group(nodes.root(), cursors);
    private final Scale scale = new Scale();
    private final LetterScale letters = new LetterScale();
    private final ReadOnlyDoubleWrapper breadth = new ReadOnlyDoubleWrapper(TimePlot.BROAD);
    private final DoubleProperty seconds = new SimpleDoubleProperty(this, "seconds", 0);
    private @Nullable PlotSheet sheet;

    /** A view without a plot. */
    public PlotView() {
        getStyleClass().add("plot-view");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.SLIDER);
        plane.setManaged(false);
        plane.getTransforms().add(scale);
        cursors.setMouseTransparent(true);
        getChildren().addAll(plane, letters.node());
        ground.onChange(() -> nodes.recolour(ground::colour));
        seconds.addListener((of, old, now) -> paintCursors());
        widthProperty().addListener((of, old, now) -> measure());
        letters.onChange(this::measure);
        addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
        addEventHandler(MouseEvent.MOUSE_DRAGGED, this::goTo);
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    }

    @Override
    public String getUserAgentStylesheet() {
        return requireNonNull(PlotView.class.getResource("/stillturning/desktop/view/picture.css"))
                .toExternalForm();
    }

    /** Shows a plot; the time stays. */
    public void show(PlotSheet plot) {
        sheet = plot;
        nodes.show(plot.picture());
        setAccessibleText(plot.picture().title() + ", " + plot.picture().description());
        paintCursors();
        requestLayout();
    }

    /** Width for which a plot should be drawn, so that its letters are as large as others. */
    public ReadOnlyDoubleProperty breadth() {
        return breadth.getReadOnlyProperty();
    }

    private void measure() {
        double units = getWidth() / letters.times();
        breadth.set(Math.max(NARROWEST, BREADTH_STEP * Math.floor(units / BREADTH_STEP)));
    }

    /** The present time (s), set by what plays the story and by the user's hand. */
    public DoubleProperty secondsProperty() {
        return seconds;
    }

    private List<Panel> panels() {
        return sheet == null ? List.of() : sheet.panels();
    }

    private void press(MouseEvent event) {
        requestFocus();
        goTo(event);
    }

    /** The time below the mouse, or at the nearest edge of the nearest panel. */
    private void goTo(MouseEvent event) {
        double x = event.getX() / scale.getX();
        panels().stream()
                .min((a, b) -> Double.compare(away(a, x), away(b, x)))
                .ifPresent(panel -> seconds.set(panel.secondsAt(x)));
        event.consume();
    }

    private static double away(Panel panel, double x) {
        return Math.max(0, Math.max(panel.box().x() - x, x - panel.box().right()));
    }

    private void key(KeyEvent event) {
        List<Panel> panels = panels();
        if (panels.isEmpty()) {
            return;
        }
        Panel finest =
                panels.stream().filter(p -> p.shows(seconds.get())).findFirst().orElse(whole());
        double step = (finest.toSeconds() - finest.fromSeconds()) / KEY_STEPS;
        switch (event.getCode()) {
            case LEFT -> seconds.set(Math.max(whole().fromSeconds(), seconds.get() - step));
            case RIGHT -> seconds.set(Math.min(whole().toSeconds(), seconds.get() + step));
            case HOME -> seconds.set(Math.max(0, whole().fromSeconds()));
            case END -> seconds.set(whole().toSeconds());
            default -> {
                return;
            }
        }
        event.consume();
    }

    private Panel whole() {
        return panels().get(panels().size() - 1);
    }

    private void paintCursors() {
        List<Node> lines = new ArrayList<>();
        for (Panel panel : panels()) {
            if (panel.shows(seconds.get())) {
                double x = panel.x(seconds.get());
                double top = panel.box().y();
                Line line = new Line(x, top, x, panel.box().bottom());
                line.getStyleClass().add("plot-cursor");
                Polygon head =
                        new Polygon(x - HEAD, top - HEAD, x + HEAD, top - HEAD, x, top + HEAD);
                head.getStyleClass().add("plot-cursor-head");
                lines.add(line);
                lines.add(head);
            }
        }
        cursors.getChildren().setAll(lines);
    }

    @Override
    protected double computePrefHeight(double width) {
        return sheet == null
                ? 0
                : sheet.picture().height()
                        * (width > 0 ? width / sheet.picture().width() : scale.getX());
    }

    @Override
    protected double computePrefWidth(double height) {
        return sheet == null ? 0 : sheet.picture().width();
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected void layoutChildren() {
        if (sheet != null && getWidth() > 0) {
            double fit = getWidth() / sheet.picture().width();
            scale.setX(fit);
            scale.setY(fit);
        }
    }
}
