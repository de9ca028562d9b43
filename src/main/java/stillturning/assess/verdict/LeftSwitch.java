package stillturning.assess.verdict;

import java.util.List;
import java.util.Optional;

/**
 * What comes of one switch left in a wrong position before the flight, nothing else being wrong.
 *
 * @param lever the switch
 * @param normally where it should stand
 * @param position where it stands
 * @param runsAtRest whether the engine runs on the ground
 * @param cues what the pilot can see before the flight and would not with the switch right
 * @param verdict what comes of it in flight; empty if the engine does not even run on the ground
 * @param untold why nobody can say how the aircraft then stands, if so: it counts as a lost engine
 *     of which nothing shows
 */
public record LeftSwitch(
        String lever,
        String normally,
        String position,
        boolean runsAtRest,
        List<String> cues,
        Optional<Verdict> verdict,
        Optional<String> untold) {

    public LeftSwitch {
        cues = List.copyOf(cues);
    }

    /** Whether it shows before the flight: the engine does not run, or something lights up. */
    public boolean shows() {
        return untold.isEmpty() && (!runsAtRest || !cues.isEmpty());
    }

    /** What it comes to in flight; nothing to say where the engine does not run on the ground. */
    public Optional<Outcome> outcome() {
        return untold.isPresent()
                ? Optional.of(Outcome.ENGINE_LOST)
                : verdict.map(Verdict::outcome);
    }
}
