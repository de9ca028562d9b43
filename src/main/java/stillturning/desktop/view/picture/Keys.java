package stillturning.desktop.view.picture;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import stillturning.report.drawing.diagram.Side;

/** What keys do to a view. */
final class Keys {
    private static final double STEP = 60;
    private static final Map<KeyCode, Side> ARROWS =
            Map.of(
                    KeyCode.LEFT, Side.WEST,
                    KeyCode.RIGHT, Side.EAST,
                    KeyCode.UP, Side.NORTH,
                    KeyCode.DOWN, Side.SOUTH);

    private final PictureView view;

    private final KeyJoin join;

    Keys(PictureView view) {
        this.view = view;
        this.join = new KeyJoin(view);
    }

    void listen() {
        view.addEventHandler(KeyEvent.KEY_PRESSED, this::press);
    }

    private void press(KeyEvent event) {
        Side side = ARROWS.get(event.getCode());
        boolean done = true;
        if (event.isShortcutDown()) {
            done = side == null ? zoom(event.getCode()) : along(side);
        } else if (side != null) {
            arrow(side, event.isShiftDown());
        } else {
            done = other(event.getCode());
        }
        if (done) {
            event.consume();
        }
    }

    private boolean zoom(KeyCode code) {
        switch (code) {
            case PLUS, ADD, EQUALS -> view.zoomIn();
            case MINUS, SUBTRACT -> view.zoomOut();
            case DIGIT0, NUMPAD0 -> view.fit();
            case DIGIT1, NUMPAD1 -> view.actualSize();
            default -> {
                return false;
            }
        }
        return true;
    }

    /** Along a wire to the symbol at its other end. */
    private boolean along(Side side) {
        Optional<String> here = view.focusedKey();
        here.flatMap(key -> view.targets().along(key, side)).ifPresent(this::go);
        return here.isPresent();
    }

    /** To the next symbol if one is focused; else the paper moves. */
    private void arrow(Side side, boolean paper) {
        Optional<String> here = view.focusedKey();
        if (here.isPresent() && !paper) {
            view.targets().neighbour(here.get(), side).ifPresent(this::go);
            return;
        }
        double dx = side == Side.WEST ? STEP : side == Side.EAST ? -STEP : 0;
        double dy = side == Side.NORTH ? STEP : side == Side.SOUTH ? -STEP : 0;
        view.move(view.viewport().movedBy(dx, dy));
    }

    private void go(String key) {
        view.focus(Optional.of(key));
        view.pick(List.of(key));
    }

    private boolean other(KeyCode code) {
        switch (code) {
            case J -> view.focusedKey().ifPresent(join::pick);
            case ENTER -> {
                if (!join.finish()) {
                    view.focusedKey()
                            .ifPresentOrElse(
                                    view::open, () -> view.targets().first().ifPresent(this::go));
                }
            }
            case ESCAPE -> {
                if (join.isUnderWay()) {
                    join.leave();
                    return true;
                }
                if (view.focusedKey().isEmpty() && view.chosen().isEmpty()) {
                    return false;
                }
                view.focus(Optional.empty());
                view.pick(List.of());
            }
            case HOME -> view.fit();
            default -> {
                return false;
            }
        }
        return true;
    }
}
