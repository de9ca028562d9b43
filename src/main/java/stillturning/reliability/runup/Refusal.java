package stillturning.reliability.runup;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.story.Harm;

/**
 * Moves that would reveal failures and are not offered as a check.
 *
 * @param moves position by lever
 * @param why what speaks against them
 * @param events numbers of the failures that they would reveal
 */
public record Refusal(Map<String, String> moves, Reason why, List<Integer> events) {

    /** What speaks against moves. */
    public sealed interface Reason {}

    /** Levers that the pilot cannot move there, or of which nobody says that he can. */
    public record OutOfReach(List<String> levers) implements Reason {
        public OutOfReach {
            levers = List.copyOf(levers);
        }
    }

    /** Whatever the order, harm is done on the way; this is what the written one does. */
    public record NoOrder(Harm harm) implements Reason {}

    public Refusal {
        moves = Collections.unmodifiableMap(new LinkedHashMap<>(moves));
        events = List.copyOf(events);
    }

    Refusal hiding(List<Integer> revealed) {
        return new Refusal(moves, why, revealed);
    }
}
