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
 * Many numbers put to their ends at once, to find what any of them can turn.
 *
 * <p>Trials go in pairs with every number at its other end. A step that one number alone turns at
 * one of its ends turns in the trials in which it is there, unless another number undoes that; so a
 * step is left out for an end of a number only if it turned in none of these.
 */
public final class GroupScreen {

    /** Pairs of trials: a step that one other number can undo is missed once in 2 to this. */
    public static final int PAIRS = 4;

    /** Trials: in the second of a pair every number is at its other end. */
    public static final int TRIALS = 2 * PAIRS;

    private static final long SEED = 8_161L;

    private final List<BitSet> high;

    /** A screen of some numbers; half of the trials put each to its high end. */
    public GroupScreen(int numbers) {
        SplittableRandom random = new SplittableRandom(SEED);
        high = new ArrayList<>();
        for (int n = 0; n < numbers; n++) {
            BitSet pairs = new BitSet(PAIRS);
            for (int pair = 0; pair < PAIRS; pair++) {
                pairs.set(pair, random.nextBoolean());
            }
            high.add(pairs);
        }
    }

    /** Whether a number is at its high end in a trial. */
    public boolean isHigh(int number, int trial) {
        return high.get(number).get(trial / 2) != (trial % 2 == 1);
    }

    /**
     * Steps that a number alone may turn at one of its ends.
     *
     * @param turned what turned in each trial that could be made, in words that name a step and not
     *     how it turned
     */
    public Set<String> suspected(int number, boolean atHigh, Map<Integer, Set<String>> turned) {
        Set<String> steps = new HashSet<>();
        for (Entry<Integer, Set<String>> trial : turned.entrySet()) {
            if (isHigh(number, trial.getKey()) == atHigh) {
                steps.addAll(trial.getValue());
            }
        }
        return steps;
    }
}
