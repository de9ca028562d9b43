package stillturning.desktop.view.picture;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Cursor;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.layout.SymbolPosition;

/** What a mouse that is moved with its button down does to a view: join, choose or move. */
final class Dragging {

    /** What is being dragged. */
    private enum Drag {
        NOTHING,
        PAPER,
        BAND,
        WIRE
    }

    private final PictureView view;
    private Drag kind = Drag.NOTHING;
    private boolean space;
    private Point pressed = new Point(0, 0);
    private Point last = pressed;
    private Optional<SymbolPort> from = Optional.empty();

    Dragging(PictureView view) {
        this.view = view;
    }

    void listen() {
        view.addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
        view.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
        view.addEventHandler(MouseEvent.MOUSE_RELEASED, this::release);
        view.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        view.addEventHandler(
                KeyEvent.KEY_RELEASED,
                e -> {
                    if (e.getCode() == KeyCode.SPACE) {
                        space = false;
                    }
                });
    }

    private void key(KeyEvent event) {
        if (event.getCode() == KeyCode.SPACE) {
            space = true;
            event.consume();
        } else if (event.getCode() == KeyCode.ESCAPE && kind != Drag.NOTHING) {
            end();
            event.consume();
        }
    }

    private void press(MouseEvent event) {
        if (!view.isFocused() && view.focusedKey().isEmpty()) {
            view.requestFocus();
        }
        pressed = new Point(event.getX(), event.getY());
        last = pressed;
        from = Optional.empty();
        kind = kindOf(event);
        event.consume();
    }

    private Drag kindOf(MouseEvent event) {
        if (event.getButton() == MouseButton.MIDDLE || space) {
            return Drag.PAPER;
        }
        if (event.getButton() != MouseButton.PRIMARY) {
            return Drag.NOTHING;
        }
        if (event.isShiftDown()) {
            return Drag.BAND;
        }
        if (view.joining().isPresent()) {
            from = view.targets().portAt(onPicture(pressed));
        }
        return from.isPresent() ? Drag.WIRE : Drag.PAPER;
    }

    private Point onPicture(Point at) {
        return view.viewport().onPicture(at.x(), at.y());
    }

    private void drag(MouseEvent event) {
        Point now = new Point(event.getX(), event.getY());
        switch (kind) {
            case PAPER -> {
                view.setCursor(Cursor.CLOSED_HAND);
                view.move(view.viewport().movedBy(now.x() - last.x(), now.y() - last.y()));
            }
            case BAND -> view.highlights().band(band(now));
            case WIRE -> pull(onPicture(now));
            case NOTHING -> {}
        }
        last = now;
        event.consume();
    }

    private Box band(Point now) {
        Point a = onPicture(pressed);
        Point b = onPicture(now);
        return new Box(a.x(), a.y(), 0, 0).joined(new Box(b.x(), b.y(), 0, 0));
    }

    private Optional<SymbolPort> end(Point at) {
        return view.targets().portAt(at).filter(port -> !from.equals(Optional.of(port)));
    }

    private void pull(Point now) {
        Targets targets = view.targets();
        List<SymbolPosition.LineLanding> ends =
                end(now).flatMap(targets::landing).stream().toList();
        Point to = ends.isEmpty() ? now : ends.get(0).at();
        from.flatMap(targets::landing)
                .ifPresent(start -> view.highlights().join(start, to, targets, ends));
    }

    private void release(MouseEvent event) {
        Point now = new Point(event.getX(), event.getY());
        Drag ended = kind;
        Optional<SymbolPort> start = from;
        Optional<SymbolPort> to = end(onPicture(now));
        end();
        if (ended == Drag.BAND && !event.isStillSincePress()) {
            Set<String> keys = new LinkedHashSet<>(view.chosen());
            keys.addAll(view.targets().within(band(now)));
            view.pick(keys);
        } else if (ended == Drag.WIRE && start.isPresent() && to.isPresent()) {
            view.joining().ifPresent(join -> join.accept(start.get(), to.get()));
        }
        event.consume();
    }

    private void end() {
        kind = Drag.NOTHING;
        from = Optional.empty();
        view.setCursor(Cursor.DEFAULT);
        view.highlights().dragEnded();
    }
}
