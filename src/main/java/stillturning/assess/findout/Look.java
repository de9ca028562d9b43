package stillturning.assess.findout;

import java.util.List;

/**
 * What is seen with the number at one place of its range.
 *
 * @param worths by candidate, more is better
 * @param verdicts everything else that is watched, in words that differ exactly where it does
 */
public record Look(List<Double> worths, List<String> verdicts) {

    /** Worths that differ by less are level. */
    private static final double LEVEL = 1e-9;

    public Look {
        worths = List.copyOf(worths);
        verdicts = List.copyOf(verdicts);
    }

    /** Who is best; one who is level with the best keeps the place. */
    int best(int before) {
        int best = before;
        for (int i = 0; i < worths.size(); i++) {
            if (worths.get(i) > worths.get(best) + LEVEL) {
                best = i;
            }
        }
        return best;
    }
}
