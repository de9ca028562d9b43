package stillturning.assess.front;

import java.util.List;

/**
 * What a search found.
 *
 * @param front what nothing found outdoes, in the order of their values
 * @param starts where one stood, in their order
 * @param tally what was done
 * @param whole whether all that can be reached within the limit of steps was looked at
 * @param <C> what was looked at
 */
public record Found<C>(List<Member<C>> front, List<Member<C>> starts, Tally tally, boolean whole) {

    /**
     * One thing.
     *
     * @param start number of the start that it was made from, from 0
     * @param steps in words, from there to it
     * @param <C> what was looked at
     */
    public record Member<C>(C thing, int start, List<String> steps, TrialResult trial) {
        public Member {
            steps = List.copyOf(steps);
        }
    }

    public Found {
        front = List.copyOf(front);
        starts = List.copyOf(starts);
    }
}
