package stillturning.desktop.viewmodel.explain;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import stillturning.desktop.viewmodel.Errands.Reins;

/** How far work in several steps is, each of which does many things. */
final class Course {

    private final Reins reins;
    private double planned;
    private double past;

    Course(Reins reins) {
        this.reins = reins;
    }

    /**
     * Announces a step.
     *
     * @param seconds about how long one of its things takes (s); a guess, for the bar alone
     */
    void plan(int things, double seconds) {
        planned += things * seconds;
    }

    /** Begins a step that was announced; to be told of each thing that is done, from any thread. */
    Consumer<String> begin(String words, int things, double seconds) {
        double before = past;
        past += things * seconds;
        AtomicInteger done = new AtomicInteger();
        reins.far(share(before), words);
        return thing -> {
            int so = done.incrementAndGet();
            reins.far(share(before + so * seconds), words + ": " + so + " of " + things);
        };
    }

    private double share(double seconds) {
        return planned > 0 ? seconds / planned : -1;
    }
}
