package stillturning.assess.verdict;

import java.util.List;
import java.util.Optional;
import stillturning.model.failure.FailureCatalogue.Misplaced;

/**
 * What comes of one omission before the flight that leaves one switch, or those of one line of a
 * checklist, in a wrong position, nothing else being wrong.
 *
 * @param switches what stands where
 * @param runsAtRest whether the engine runs on the ground, and starts there if it does with all
 *     switches right
 * @param cues what the pilot can see before the flight and would not with the switch right
 * @param verdict what comes of it in flight; empty if the engine does not even run on the ground
 * @param untold why nobody can say how the aircraft then stands, if so: it counts as a lost engine
 *     of which nothing shows
 */
public record LeftSwitch(
        Misplaced switches,
        boolean runsAtRest,
        List<String> cues,
        Optional<Verdict> verdict,
        Optional<String> untold) {

    public LeftSwitch {
        cues = List.copyOf(cues);
    }

    /** The switch, or those of the line. */
    public String lever() {
        return switches.lever();
    }

    /** Where it should stand. */
    public String normally() {
        return switches.normally();
    }

    /** Where it stands. */
    public String position() {
        return switches.position();
    }

    /** What stands where, in words. */
    public String words() {
        return switches.words();
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
