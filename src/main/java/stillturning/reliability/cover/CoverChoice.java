package stillturning.reliability.cover;

import java.util.List;

/**
 * Sets that cover every item that can be covered.
 *
 * @param chosen numbers of the sets, ascending
 * @param cost of all of them together
 * @param lowerBound no choice costs less; equal to the cost where that is proven
 * @param proof what is known of this choice
 * @param uncovered items that no set covers, ascending
 */
public record CoverChoice(
        List<Integer> chosen, long cost, long lowerBound, Proof proof, List<Integer> uncovered) {

    /** What is known of a choice. */
    public enum Proof {
        /**
         * None is cheaper, and among the equally cheap it is the first by the numbers of its sets.
         */
        CHEAPEST_AND_FIRST,
        /** None is cheaper; the budget ended before the first among equals was found. */
        CHEAPEST,
        /** The budget ended: a cheaper one may exist. */
        NONE
    }

    public CoverChoice {
        chosen = List.copyOf(chosen);
        uncovered = List.copyOf(uncovered);
    }
}
