package stillturning.cli.suggest;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import stillturning.assess.front.SearchWatch;
import stillturning.assess.front.Tally;

/** Tells how far a search is, and ends it when the time is over. */
final class Clock implements SearchWatch {

    private final Consumer<Tally> telling;
    private final long endNanos;
    private final boolean ends;

    /**
     * @param minutes after which it ends, if it does
     */
    Clock(Optional<Integer> minutes, Consumer<Tally> telling) {
        this.telling = telling;
        this.ends = minutes.isPresent();
        this.endNanos = System.nanoTime() + Duration.ofMinutes(minutes.orElse(0)).toNanos();
    }

    @Override
    public void seen(Tally tally, List<List<Double>> front) {
        telling.accept(tally);
    }

    @Override
    public boolean enough() {
        return ends && System.nanoTime() - endNanos > 0;
    }
}
