package stillturning.structure;

import java.util.Arrays;

/** Steps through every way in which all levers can stand, the one in flight first. */
final class LeverCombinations {

    private final int[] counts;
    private final int[] at;

    /**
     * @param counts how many useful positions each lever has
     */
    LeverCombinations(int[] counts) {
        this.counts = counts.clone();
        this.at = new int[counts.length];
    }

    /** Whether there is only one way. */
    boolean areOne() {
        return Arrays.stream(counts).allMatch(count -> count == 1);
    }

    /** Which of its useful positions each lever stands in. */
    int[] at() {
        return at.clone();
    }

    /** A bit for each lever at the position where it stands. */
    long[] masks() {
        return Arrays.stream(at).mapToLong(stand -> 1L << stand).toArray();
    }

    /** Goes on to the next way; false if all have been. */
    boolean advance() {
        for (int i = 0; i < at.length; i++) {
            at[i]++;
            if (at[i] < counts[i]) {
                return true;
            }
            at[i] = 0;
        }
        return false;
    }
}
