package stillturning.story;

import java.util.List;

/**
 * A story with what it was told from.
 *
 * @param frames the candidate as it was before and after each event and after each step of the way
 *     between, in order of time; of two at one instant, the later lies after the event
 */
public record WatchedStory(Story story, List<Snapshot> frames) {

    public WatchedStory {
        frames = List.copyOf(frames);
        if (frames.isEmpty()) {
            throw new IllegalArgumentException("a story without frames was not watched");
        }
    }

    /** What stood at a time (s): the last frame that is not later; the first before all. */
    public Snapshot at(double seconds) {
        return frames.get(indexAt(seconds));
    }

    /** Index of the frame that stood at a time (s). */
    public int indexAt(double seconds) {
        int low = 0;
        int high = frames.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (frames.get(middle).seconds() <= seconds) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }
}
