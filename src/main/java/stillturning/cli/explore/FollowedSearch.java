package stillturning.cli.explore;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import stillturning.assess.front.SearchWatch;
import stillturning.assess.front.Tally;
import stillturning.assess.front.TrialResult;
import stillturning.cli.terminal.Progress;

/** Tells how far a search is, keeps what it finds, and ends it when its time is up. */
final class FollowedSearch implements SearchWatch {

    private final Progress progress;
    private final Optional<KeptTrials> kept;
    private final Optional<Duration> time;
    private final long begunNanos = System.nanoTime();

    FollowedSearch(Progress progress, Optional<KeptTrials> kept, Optional<Duration> time) {
        this.progress = progress;
        this.kept = kept;
        this.time = time;
    }

    @Override
    public Optional<TrialResult> known(String way) {
        return kept.flatMap(file -> file.known(way));
    }

    @Override
    public void done(String way, TrialResult trial) {
        kept.ifPresent(file -> file.done(way, trial));
    }

    @Override
    public void seen(Tally tally, List<List<Double>> front) {
        progress.tell(
                (tally.tried() + tally.outdone())
                        + " layouts looked at, "
                        + tally.met()
                        + " meet everything, "
                        + front.size()
                        + " on the front");
    }

    @Override
    public boolean enough() {
        return time.filter(most -> System.nanoTime() - begunNanos > most.toNanos()).isPresent();
    }
}
