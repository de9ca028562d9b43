package stillturning.assess;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import stillturning.story.StoryEvent;

/**
 * Moves that do harm on the way which another order of them does not do.
 *
 * @param what the drill or the procedure
 * @param written position by lever, in the order in which the candidate has them
 * @param after what had failed; empty for nothing
 * @param others how many more failures after which the same happens
 * @param harm the first harm
 * @param better an order that does less harm, the first that is found
 */
public record HarmfulMoves(
        String what,
        Map<String, String> written,
        Optional<String> after,
        int others,
        StoryEvent harm,
        Map<String, String> better) {
    public HarmfulMoves {
        written = Collections.unmodifiableMap(new LinkedHashMap<>(written));
        better = Collections.unmodifiableMap(new LinkedHashMap<>(better));
    }
}
