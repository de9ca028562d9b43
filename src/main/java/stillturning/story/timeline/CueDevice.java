package stillturning.story.timeline;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import stillturning.model.Cue;
import stillturning.story.StoryEvent;
import stillturning.story.device.Device;
import stillturning.story.device.Situation;

/** Something that a pilot may notice: stays dark, is about to show, shows, goes out again. */
final class CueDevice implements Device {

    private enum State {
        DARK,
        ABOUT_TO,
        SHOWS
    }

    private final Cue cue;
    private final Sensing sensing;
    private final BooleanSupplier seen;
    private final boolean lit;
    private final Situation now;
    private State state = State.DARK;
    private double deadline = NO_DEADLINE;
    private int ledBy = -1;

    /**
     * What a cue watches.
     *
     * @param margin at or above 0 while there is nothing to show
     * @param delaySeconds how long there must be something to show (s)
     * @param words what the pilot notices
     * @param subject part that it is about
     */
    record Sensing(
            DoubleSupplier margin, double delaySeconds, Supplier<String> words, String subject) {}

    /**
     * @param seen whether whatever shows it works
     * @param lit false for a dead lamp: what goes by the same sensor without it still works
     */
    CueDevice(Cue cue, Sensing sensing, BooleanSupplier seen, boolean lit, Situation now) {
        this.cue = cue;
        this.sensing = sensing;
        this.seen = seen;
        this.lit = lit;
        this.now = now;
    }

    String name() {
        return cue.name();
    }

    /** Whether a pilot sees it. */
    boolean shows() {
        return lit && reports();
    }

    /** Whether what it watches is so, for whatever acts on it without a lamp. */
    boolean reports() {
        return state == State.SHOWS;
    }

    /** Whether a pilot can see at all what it shows. */
    boolean isLit() {
        return lit;
    }

    /** Whether what it shows is still so. */
    boolean persists() {
        return sensing.margin.getAsDouble() < 0;
    }

    @Override
    public double margin() {
        if (!seen.getAsBoolean()) {
            return NOTHING_TO_WATCH;
        }
        double margin = sensing.margin.getAsDouble();
        return switch (state) {
            case DARK -> margin;
            case ABOUT_TO, SHOWS -> -margin;
        };
    }

    @Override
    public void cross() {
        if (state == State.DARK) {
            ledBy = now.journal.latestOf(List.of(sensing.subject));
            state = State.ABOUT_TO;
            deadline = now.seconds + sensing.delaySeconds;
        } else {
            state = State.DARK;
            deadline = NO_DEADLINE;
        }
    }

    @Override
    public double deadline() {
        return deadline;
    }

    @Override
    public void expire() {
        deadline = NO_DEADLINE;
        if (!seen.getAsBoolean()) {
            state = State.DARK;
            return;
        }
        state = State.SHOWS;
        if (!lit) {
            return;
        }
        now.log(StoryEvent.Kind.CUE, cue.name(), sensing.words.get(), ledBy);
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof CueDevice then) {
            state = then.state;
        }
    }

    @Override
    public boolean isSlow() {
        return true;
    }
}
