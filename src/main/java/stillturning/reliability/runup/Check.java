package stillturning.reliability.runup;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.story.PilotView;

/**
 * Levers moved on the ground with the engine running, something looked at, levers moved back.
 *
 * @param moves position by lever
 * @param back position by lever in flight
 * @param before what there is to see before, nothing wrong
 * @param expected what there is to see while they stand so, nothing wrong
 * @param reveals what is seen otherwise, by failure
 */
public record Check(
        Map<String, String> moves,
        Map<String, String> back,
        PilotView before,
        PilotView expected,
        List<Revealed> reveals) {

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
        moves = Collections.unmodifiableMap(new LinkedHashMap<>(moves));
        back = Collections.unmodifiableMap(new LinkedHashMap<>(back));
        reveals = List.copyOf(reveals);
    }
}
