package stillturning.desktop.view.picture;

import java.util.function.Consumer;
import javafx.animation.AnimationTimer;

/** Moves a view to another place in a moment that the eye can follow. */
final class Glide extends AnimationTimer {
    private static final double NANOSECONDS = 160e6;

    private final Consumer<Viewport> put;
    private Viewport from = new Viewport(1, 0, 0);
    private Viewport to = from;
    private long start;

    Glide(Consumer<Viewport> put) {
        this.put = put;
    }

    void to(Viewport present, Viewport next) {
        from = present;
        to = next;
        start = 0;
        start();
    }

    @Override
    public void handle(long now) {
        start = start == 0 ? now : start;
        double share = Math.min(1, (now - start) / NANOSECONDS);
        put.accept(share < 1 ? from.towards(to, share * (2 - share)) : to);
        if (share == 1) {
            stop();
        }
    }
}
