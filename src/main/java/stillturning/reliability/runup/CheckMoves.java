package stillturning.reliability.runup;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Levers moved one after the other and set back one after the other, in orders that do no harm.
 *
 * @param moves position by lever, in the order in which they are moved
 * @param back position by lever in flight, in the order in which they are set back
 * @param settleSeconds how long it takes from then until all is to be seen as before (s)
 */
public record CheckMoves(
        Map<String, String> moves, Map<String, String> back, double settleSeconds) {
    public CheckMoves {
        moves = Collections.unmodifiableMap(new LinkedHashMap<>(moves));
        back = Collections.unmodifiableMap(new LinkedHashMap<>(back));
    }

    List<Map<String, String>> steps() {
        return List.of(moves, back);
    }
}
