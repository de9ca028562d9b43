package stillturning.assess.verdict;

import java.util.List;
import java.util.Optional;
import stillturning.story.NormalFlight;

/**
 * What comes of one switch left in a wrong position before the flight, nothing else being wrong.
 *
 * @param lever the switch
 * @param normally where it should stand
 * @param position where it stands
 * @param atRest the aircraft with the engine about to run
 * @param cues what the pilot can see before the flight and would not with the switch right
 * @param verdict what comes of it in flight; empty if the engine does not even run on the ground
 */
public record LeftSwitch(
        String lever,
        String normally,
        String position,
        NormalFlight atRest,
        List<String> cues,
        Optional<Verdict> verdict) {

    public LeftSwitch {
        cues = List.copyOf(cues);
    }

    /** Whether it shows before the flight: the engine does not run, or something lights up. */
    public boolean shows() {
        return !atRest.engineRuns() || !cues.isEmpty();
    }
}
