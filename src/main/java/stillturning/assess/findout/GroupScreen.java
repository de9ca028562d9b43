package stillturning.assess.findout;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Map.Entry;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * Many numbers put to their ends at once, to find which of them can turn what.
 *
 * <p>A step that one number alone brings about turns in every trial in which the number is at that
 * end, whatever the others do. So what did not turn in one of them need not be looked at.
 */
public final class GroupScreen {

    /** Trials; chance lets one in 16 of what half of the trials turn pass. */
    public static final int TRIALS = 8;

    private static final long SEED = 8_161L;

    private final List<BitSet> high;

    /** A screen of some numbers; half of the trials put each to its high end. */
    public GroupScreen(int numbers) {
        SplittableRandom random = new SplittableRandom(SEED);
        high = new ArrayList<>();
        for (int n = 0; n < numbers; n++) {
            high.add(half(random));
        }
    }

    private static BitSet half(SplittableRandom random) {
        BitSet trials = new BitSet(TRIALS);
        while (trials.cardinality() < TRIALS / 2) {
            trials.set(random.nextInt(TRIALS));
        }
        return trials;
    }

    /** Whether a number is at its high end in a trial. */
    public boolean isHigh(int number, int trial) {
        return high.get(number).get(trial);
    }

    /**
     * Steps that a number alone may turn at one of its ends.
     *
     * @param turned what turned in each trial that could be made, in words that name a step and not
     *     how it turned
     */
    public Set<String> suspected(int number, boolean atHigh, Map<Integer, Set<String>> turned) {
        Set<String> steps = new HashSet<>();
        boolean begun = false;
        for (Entry<Integer, Set<String>> trial : turned.entrySet()) {
            if (isHigh(number, trial.getKey()) == atHigh) {
                if (begun) {
                    steps.retainAll(trial.getValue());
                } else {
                    steps.addAll(trial.getValue());
                    begun = true;
                }
            }
        }
        return steps;
    }
}
