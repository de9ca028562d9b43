package stillturning.reliability.runup;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import stillturning.story.AdverseEffect;

/**
 * Moves that would reveal failures and are not offered as a check.
 *
 * @param moves position by lever
 * @param why what speaks against them
 * @param events numbers of the failures that they would reveal
 */
public record RefusedCheck(Map<String, String> moves, Reason why, List<Integer> events) {

    /** What speaks against moves. */
    public sealed interface Reason {
        /** What is said of each kind. */
        <T> T fold(
                Function<OutOfReach, T> far,
                Function<NoOrder, T> noOrder,
                Function<Lingers, T> lingers);
    }

    /** Levers that the pilot cannot move there, or of which nobody says that he can. */
    public record OutOfReach(List<String> levers) implements Reason {
        @Override
        public <T> T fold(
                Function<OutOfReach, T> far,
                Function<NoOrder, T> noOrder,
                Function<Lingers, T> lingers) {
            return far.apply(this);
        }

        public OutOfReach {
            levers = List.copyOf(levers);
        }
    }

    /** Whatever the order, harm is done on the way; this is what the written one does. */
    public record NoOrder(AdverseEffect harm) implements Reason {
        @Override
        public <T> T fold(
                Function<OutOfReach, T> far,
                Function<NoOrder, T> noOrder,
                Function<Lingers, T> lingers) {
            return noOrder.apply(this);
        }
    }

    /**
     * With the levers back, all is not as before for longer than anybody waits.
     *
     * @param cues those that then show
     * @param seconds how long was waited (s)
     */
    public record Lingers(Set<String> cues, double seconds) implements Reason {
        @Override
        public <T> T fold(
                Function<OutOfReach, T> far,
                Function<NoOrder, T> noOrder,
                Function<Lingers, T> lingers) {
            return lingers.apply(this);
        }

        public Lingers {
            cues = Set.copyOf(cues);
        }
    }

    public RefusedCheck {
        moves = Collections.unmodifiableMap(new LinkedHashMap<>(moves));
        events = List.copyOf(events);
    }

    RefusedCheck hiding(List<Integer> revealed) {
        return new RefusedCheck(moves, why, revealed);
    }
}
