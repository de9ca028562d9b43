package stillturning.desktop.view.picture;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.DragEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.input.ZoomEvent;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Point;

/** What the wheel, a touch pad, a click and a drop do to a view. */
final class Pointing {
    private static final double WHEEL = 1.0025;

    private final PictureView view;

    Pointing(PictureView view) {
        this.view = view;
    }

    void listen() {
        view.addEventHandler(ScrollEvent.SCROLL, this::scroll);
        view.addEventHandler(ZoomEvent.ZOOM, this::pinch);
        view.addEventHandler(MouseEvent.MOUSE_MOVED, e -> view.point(key(e)));
        view.addEventHandler(MouseEvent.MOUSE_EXITED, e -> view.point(Optional.empty()));
        view.addEventHandler(MouseEvent.MOUSE_CLICKED, this::click);
        view.addEventHandler(ContextMenuEvent.CONTEXT_MENU_REQUESTED, this::menu);
        view.addEventHandler(DragEvent.DRAG_OVER, this::over);
        view.addEventHandler(DragEvent.DRAG_DROPPED, this::dropped);
    }

    private Optional<String> key(MouseEvent event) {
        return view.keyAt(event.getX(), event.getY());
    }

    /** A wheel enlarges; two fingers on a pad, which come without steps, move. */
    private void scroll(ScrollEvent event) {
        if (event.isDirect() || event.isInertia() || event.getTouchCount() > 0) {
            view.move(view.viewport().movedBy(event.getDeltaX(), event.getDeltaY()));
        } else if (event.isShiftDown()) {
            view.move(view.viewport().movedBy(event.getDeltaX() + event.getDeltaY(), 0));
        } else {
            view.zoom(Math.pow(WHEEL, event.getDeltaY()), event.getX(), event.getY());
        }
        event.consume();
    }

    private void pinch(ZoomEvent event) {
        view.zoom(event.getZoomFactor(), event.getX(), event.getY());
        event.consume();
    }

    private void click(MouseEvent event) {
        if (event.getButton() != MouseButton.PRIMARY || !event.isStillSincePress()) {
            return;
        }
        Optional<String> key = key(event);
        if (key.isPresent() && event.getClickCount() == 2) {
            view.open(key.get());
        } else if (event.getClickCount() == 1) {
            Set<String> keys = new LinkedHashSet<>();
            if (event.isShortcutDown()) {
                keys.addAll(view.chosen());
            }
            key.ifPresent(k -> toggle(keys, k));
            view.focus(key);
            view.pick(keys);
        }
        event.consume();
    }

    private static void toggle(Set<String> keys, String key) {
        if (!keys.remove(key)) {
            keys.add(key);
        }
    }

    private void menu(ContextMenuEvent event) {
        Optional<String> focused = view.focusedKey();
        if (event.isKeyboardTrigger() && focused.isPresent()) {
            Box box = view.targets().box(focused.get()).orElse(new Box(0, 0, 0, 0));
            Point at = view.viewport().onWindow(new Point(box.right(), box.bottom()));
            var screen = view.localToScreen(at.x(), at.y());
            view.menu(focused, screen.getX(), screen.getY());
        } else {
            Optional<String> key = view.keyAt(event.getX(), event.getY());
            key.filter(k -> !view.chosen().contains(k)).ifPresent(k -> view.pick(List.of(k)));
            view.menu(key, event.getScreenX(), event.getScreenY());
        }
        event.consume();
    }

    private void over(DragEvent event) {
        if (view.dropping().isPresent() && event.getDragboard().hasString()) {
            event.acceptTransferModes(TransferMode.COPY);
            view.point(view.keyAt(event.getX(), event.getY()));
            event.consume();
        }
    }

    private void dropped(DragEvent event) {
        if (view.dropping().isPresent() && event.getDragboard().hasString()) {
            view.dropping()
                    .get()
                    .take(
                            event.getDragboard().getString(),
                            view.viewport().onPicture(event.getX(), event.getY()),
                            view.keyAt(event.getX(), event.getY()));
            event.setDropCompleted(true);
            event.consume();
        }
    }
}
