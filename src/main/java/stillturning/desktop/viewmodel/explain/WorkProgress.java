package stillturning.desktop.viewmodel.explain;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import stillturning.desktop.viewmodel.BackgroundWork.WorkHandle;

/** How far work in several steps is, each of which does many things. */
final class WorkProgress {

    private final WorkHandle progress;
    private double planned;
    private double past;

    WorkProgress(WorkHandle progress) {
        this.progress = progress;
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
        progress.report(share(before), words);
        return thing -> {
            int so = done.incrementAndGet();
            progress.report(share(before + so * seconds), words + ": " + so + " of " + things);
        };
    }

    private double share(double seconds) {
        return planned > 0 ? seconds / planned : -1;
    }
}
