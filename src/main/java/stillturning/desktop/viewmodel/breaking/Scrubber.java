package stillturning.desktop.viewmodel.breaking;

import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;

/** The present time within a story: dragged, stepped from event to event, or played. */
public final class Scrubber {

    /** How long the shortest stretch between events is looked at while playing (s). */
    private static final double SHORTEST_STRETCH_SECONDS = 0.35;

    private Optional<TimeAxis> axis = Optional.empty();
    private final DoubleProperty position = new SimpleDoubleProperty(0);
    private final ReadOnlyDoubleWrapper seconds = new ReadOnlyDoubleWrapper(0);
    private final BooleanProperty playing = new SimpleBooleanProperty(false);

    private boolean moving;

    Scrubber() {
        position.addListener((of, before, now) -> follow(now.doubleValue()));
    }

    /** From 0 at the failure to 1 at the end of the story. */
    public DoubleProperty position() {
        return position;
    }

    /** The present time, counted from the failure (s). */
    public ReadOnlyDoubleProperty seconds() {
        return seconds.getReadOnlyProperty();
    }

    /** Whether time runs by itself. */
    public BooleanProperty playing() {
        return playing;
    }

    /** The axis of the story; empty if there is none. */
    public Optional<TimeAxis> axis() {
        return axis;
    }

    /** Takes another story's axis; the time stays where it is, as far as the story has it. */
    void take(Optional<TimeAxis> other, boolean fromStart) {
        axis = other;
        playing.set(false);
        double keep = fromStart ? 0 : seconds.get();
        to(axis.isPresent() ? Math.min(keep, axis.get().endSeconds()) : 0);
    }

    private void follow(double now) {
        if (!moving) {
            seconds.set(axis.map(a -> a.secondsAt(now)).orElse(0.0));
        }
    }

    /** Goes to a time (s), exactly. */
    public void to(double at) {
        moving = true;
        position.set(axis.map(a -> a.position(at)).orElse(0.0));
        moving = false;
        seconds.set(at);
    }

    /** Goes to the next event. */
    public void next() {
        axis.ifPresent(a -> to(a.next(seconds.get())));
    }

    /** Goes back to the event before. */
    public void previous() {
        axis.ifPresent(a -> to(a.previous(seconds.get())));
    }

    /** Plays or stops; from the start again if the end is reached. */
    public void toggle() {
        if (axis.isEmpty()) {
            return;
        }
        if (!playing.get() && position.get() >= 1) {
            to(0);
        }
        playing.set(!playing.get());
    }

    /**
     * Lets time run on, if it does: evenly along the axis, so that a stretch of milliseconds takes
     * about as long to watch as one of minutes. Stops at the end.
     *
     * @param watched how long the user has watched since (s)
     */
    public void run(double watched) {
        if (!playing.get() || axis.isEmpty()) {
            return;
        }
        double share = watched / axis.get().watchSeconds(SHORTEST_STRETCH_SECONDS);
        position.set(Math.min(1, position.get() + share));
        if (position.get() >= 1) {
            playing.set(false);
        }
    }
}
