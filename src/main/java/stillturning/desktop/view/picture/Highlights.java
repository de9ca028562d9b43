package stillturning.desktop.view.picture;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javafx.scene.Group;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.layout.SymbolPosition;

/**
 * Frames around what differs, is chosen, pointed at or focused, and what shows while something is
 * dragged. A style class tells each kind by its strokes as well as by its colour.
 */
final class Highlights {
    private static final double ROOM = 3;
    private static final double PORT = 4;

    private final Group marked = new Group();
    private final Group chosen = new Group();
    private final Group pointed = new Group();
    private final Group focused = new Group();
    private final Group dragged = new Group();
    private final Group root = new Group(marked, chosen, pointed, focused, dragged);

    Highlights() {
        root.setAutoSizeChildren(false);
        root.setMouseTransparent(true);
    }

    Group root() {
        return root;
    }

    void mark(Map<Difference, List<String>> keys, Targets targets) {
        marked.getChildren().clear();
        keys.forEach(
                (difference, of) ->
                        of.forEach(
                                key ->
                                        marked.getChildren()
                                                .addAll(frame(key, targets, difference.style()))));
    }

    void choose(Collection<String> keys, Targets targets) {
        chosen.getChildren()
                .setAll(
                        keys.stream()
                                .flatMap(
                                        k ->
                                                Stream.concat(
                                                        tint(k, targets).stream(),
                                                        frame(k, targets, "chosen").stream()))
                                .toList());
    }

    /** Lets what is chosen show through. */
    private static Optional<Shape> tint(String key, Targets targets) {
        if (targets.course(key).isPresent()) {
            return Optional.empty();
        }
        return targets.box(key)
                .map(
                        box -> {
                            Rectangle tint = around(box);
                            tint.getStyleClass().add("picture-tint");
                            return tint;
                        });
    }

    void focus(List<String> keys, Targets targets) {
        focused.getChildren()
                .setAll(keys.stream().flatMap(k -> frame(k, targets, "focused").stream()).toList());
    }

    /**
     * Marks what is pointed at.
     *
     * @param ports whether its ports can be dragged from
     */
    void point(List<String> keys, Targets targets, boolean ports) {
        List<Shape> shapes =
                new ArrayList<>(
                        keys.stream().flatMap(k -> frame(k, targets, "pointed").stream()).toList());
        if (ports) {
            targets.spots().stream()
                    .filter(spot -> keys.contains(spot.symbol()))
                    .flatMap(spot -> spot.ports().stream())
                    .forEach(port -> shapes.add(port(port, "port")));
        }
        pointed.getChildren().setAll(shapes);
    }

    /** A line from a port to the pointer, with every port that it may end on. */
    void join(
            SymbolPosition.LineLanding from,
            Point to,
            Targets targets,
            List<SymbolPosition.LineLanding> ends) {
        Line line = new Line(from.at().x(), from.at().y(), to.x(), to.y());
        line.getStyleClass().add("picture-joining");
        List<Shape> shapes = new ArrayList<>(List.of(line, port(from, "port-held")));
        targets.spots().stream()
                .flatMap(spot -> spot.ports().stream())
                .filter(port -> !port.equals(from))
                .forEach(
                        port -> shapes.add(port(port, ends.contains(port) ? "port-held" : "port")));
        dragged.getChildren().setAll(shapes);
    }

    void band(Box box) {
        Rectangle band = new Rectangle(box.x(), box.y(), box.width(), box.height());
        band.getStyleClass().add("picture-band");
        dragged.getChildren().setAll(band);
    }

    void dragEnded() {
        dragged.getChildren().clear();
    }

    private static Shape port(SymbolPosition.LineLanding port, String style) {
        Circle circle = new Circle(port.at().x(), port.at().y(), PORT);
        circle.getStyleClass().add("picture-" + style);
        return circle;
    }

    private static List<Shape> frame(String key, Targets targets, String style) {
        Shape shape =
                targets.course(key)
                        .<Shape>map(course -> along(course.points()))
                        .or(() -> targets.box(key).map(Highlights::around))
                        .orElse(null);
        if (shape == null) {
            return List.of();
        }
        shape.getStyleClass().add("picture-" + style);
        shape.getStyleClass()
                .add(shape instanceof Polyline ? "picture-on-line" : "picture-on-symbol");
        return List.of(shape);
    }

    private static Polyline along(List<Point> points) {
        return new Polyline(
                points.stream().flatMapToDouble(at -> DoubleStream.of(at.x(), at.y())).toArray());
    }

    private static Rectangle around(Box box) {
        Rectangle frame =
                new Rectangle(
                        box.x() - ROOM,
                        box.y() - ROOM,
                        box.width() + 2 * ROOM,
                        box.height() + 2 * ROOM);
        frame.setArcWidth(2 * ROOM);
        frame.setArcHeight(2 * ROOM);
        return frame;
    }
}
