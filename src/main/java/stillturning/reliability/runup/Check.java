package stillturning.reliability.runup;

import java.util.List;
import java.util.Map;
import stillturning.story.PilotView;

/**
 * Levers moved on the ground with the engine running, something looked at, levers moved back.
 *
 * @param levers what is moved, and how it is set back
 * @param before what there is to see before, nothing wrong
 * @param expected what there is to see while they stand so, nothing wrong
 * @param reveals what is seen otherwise, by failure
 */
public record Check(
        CheckMoves levers, PilotView before, PilotView expected, List<Revealed> reveals) {

    /**
     * A failure that shows.
     *
     * @param event its number
     * @param seen what is different, in step 1 while the levers stand so, in step 2 once they are
     *     back
     */
    public record Revealed(int event, List<SeenDifference> seen) {
        public Revealed {
            seen = List.copyOf(seen);
        }
    }

    public Check {
        reveals = List.copyOf(reveals);
    }

    /** Position by lever, in the order in which they are moved. */
    public Map<String, String> moves() {
        return levers.moves();
    }

    /** Position by lever in flight, in the order in which they are set back. */
    public Map<String, String> back() {
        return levers.back();
    }
}
