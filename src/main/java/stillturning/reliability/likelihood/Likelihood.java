package stillturning.reliability.likelihood;

import java.util.List;
import stillturning.model.Chances;
import stillturning.model.Study;
import stillturning.reliability.chance.Chance;
import stillturning.reliability.chance.CutUnion;
import stillturning.reliability.chance.Exposure;
import stillturning.reliability.combined.CombinedResult;
import stillturning.reliability.runup.Card;

/** Computes how likely it is that the engine ends. */
public final class Likelihood {

    private static final int SAMPLES = 2_000;

    /** Any other would do; one for all, so that candidates are compared by the same draws. */
    private static final long SEED = 1;

    private Likelihood() {}

    /**
     * How likely one candidate's events are to end the engine in a flight, and what that hangs on.
     * The same for the same input, on any number of threads.
     *
     * @param joint what events do together in the candidate
     * @param card what its run-up reveals
     * @param chances how often things fail
     * @throws IllegalArgumentException if the rate of an event is not known, or a common cause
     *     happens more often than the units whose share it has
     */
    public static LikelihoodResult of(
            Study study, CombinedResult joint, Card card, Chances chances) {
        Counting counting = Counting.of(study, joint);
        List<List<Integer>> sets = counting.sets();
        Occurrences occurrences = new Occurrences(joint, card, chances, counting.events());
        CutUnion union = CutUnion.of(joint.events().size(), sets);
        Exposure checked = occurrences.checked();
        Shares shares = new Shares(union, joint.events(), checked);
        return new LikelihoodResult(
                sets,
                counting.engineOwn(),
                estimated(union, checked),
                estimated(union, occurrences.unchecked()),
                shares.ofParts(),
                shares.ofCauses(),
                shares.ofSets(),
                new Inspecting(checked, chances.exposure()).of(card),
                new Supposed(joint, occurrences).of(study, chances, counting));
    }

    private static ChanceEstimate estimated(CutUnion union, Exposure exposure) {
        return new ChanceEstimate(
                Chance.of(union, exposure), Chance.ranges(union, exposure, SAMPLES, SEED));
    }
}
