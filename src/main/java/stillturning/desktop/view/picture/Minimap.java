package stillturning.desktop.view.picture;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.SVGPath;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.layout.Route;
import stillturning.report.drawing.layout.Sheet;
import stillturning.report.drawing.layout.SymbolPosition;

/** The whole sheet in a corner, with a frame around what the window shows. */
final class Minimap extends Region {
    /** What it covers, whatever its shape (square pixels). */
    private static final double AREA = 17_000;

    /** How much worse it is to cover the symbol that the eye begins at. */
    private static final double BEGINNING = 100;

    private static final double EDGE = 10;

    /** The most of a window that it may cover. */
    private static final double MOST = 1.0 / 6;

    private final SVGPath wires = new SVGPath();
    private final SVGPath symbols = new SVGPath();
    private final Rectangle seen = new Rectangle();
    private double share = 1;
    private boolean atRight = true;
    private boolean atBottom = true;

    /**
     * @param goTo takes the place of the sheet that is to be in the window's middle
     */
    Minimap(Consumer<Point> goTo) {
        getStyleClass().add("picture-minimap");
        wires.getStyleClass().add("picture-minimap-wires");
        symbols.getStyleClass().add("picture-minimap-symbols");
        seen.getStyleClass().add("picture-minimap-seen");
        seen.setManaged(false);
        getChildren().addAll(wires, symbols, seen);
        setFocusTraversable(false);
        addEventHandler(MouseEvent.MOUSE_PRESSED, event -> go(event, goTo));
        addEventHandler(MouseEvent.MOUSE_DRAGGED, event -> go(event, goTo));
        addEventHandler(MouseEvent.MOUSE_CLICKED, MouseEvent::consume);
    }

    private void go(MouseEvent event, Consumer<Point> goTo) {
        goTo.accept(new Point(event.getX() / share, event.getY() / share));
        event.consume();
    }

    void show(Sheet sheet, double width, double height) {
        share = Math.sqrt(AREA / (width * height));
        StringBuilder lines = new StringBuilder();
        for (Route course : sheet.courses()) {
            char letter = 'M';
            for (Point at : course.points()) {
                lines.append(letter).append(at.x() * share).append(' ').append(at.y() * share);
                letter = 'L';
            }
        }
        wires.setContent(lines.toString());
        StringBuilder boxes = new StringBuilder();
        for (SymbolPosition spot : sheet.spots().values()) {
            Box box = spot.box();
            boxes.append('M').append(box.x() * share).append(' ').append(box.y() * share);
            boxes.append('h').append(box.width() * share).append('v').append(box.height() * share);
            boxes.append('h').append(-box.width() * share).append('Z');
        }
        symbols.setContent(boxes.toString());
        setPrefSize(width * share, height * share);
        setClip(new Rectangle(width * share, height * share));
    }

    void frame(Box window) {
        seen.setX(window.x() * share);
        seen.setY(window.y() * share);
        seen.setWidth(window.width() * share);
        seen.setHeight(window.height() * share);
    }

    /**
     * Chooses the corner of a window where it covers the least of the symbols.
     *
     * @param first where the symbol to begin with is in the window (pixels)
     * @param symbols where all of them are
     */
    void avoid(Box first, List<Box> symbols, double width, double height) {
        double least = Double.POSITIVE_INFINITY;
        for (boolean bottom : List.of(true, false)) {
            for (boolean right : List.of(true, false)) {
                Box here = placeIn(width, height, right, bottom);
                double covered =
                        BEGINNING * shared(first, here)
                                + symbols.stream().mapToDouble(box -> shared(box, here)).sum();
                if (covered < least) {
                    least = covered;
                    atRight = right;
                    atBottom = bottom;
                }
            }
        }
    }

    private static double shared(Box one, Box other) {
        double across = Math.min(one.right(), other.right()) - Math.max(one.x(), other.x());
        double down = Math.min(one.bottom(), other.bottom()) - Math.max(one.y(), other.y());
        return Math.max(0, across) * Math.max(0, down);
    }

    /** Whether it leaves most of a window to the picture (pixels). */
    boolean leavesRoom(double width, double height) {
        return prefWidth(-1) * prefHeight(-1) <= MOST * width * height;
    }

    /** Goes to its corner of a window (pixels). */
    void placeIn(double width, double height) {
        Box here = placeIn(width, height, atRight, atBottom);
        resizeRelocate(here.x(), here.y(), here.width(), here.height());
    }

    private Box placeIn(double width, double height, boolean right, boolean bottom) {
        double mapWidth = prefWidth(-1);
        double mapHeight = prefHeight(-1);
        return new Box(
                right ? width - mapWidth - EDGE : EDGE,
                bottom ? height - mapHeight - EDGE : EDGE,
                mapWidth,
                mapHeight);
    }
}
