package stillturning.story;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillturning.model.Candidate.Hit;

/**
 * What there is to see and to measure while things are held in one condition on the ground.
 *
 * @param events what happened meanwhile, counted from its beginning
 * @param view what there is to see at its end, and what the engine did meanwhile
 * @param state what works and what the sources give at its end
 * @param flow what flows at its end
 */
public record Spell(
        HeldCondition condition,
        List<StoryEvent> events,
        PilotView view,
        NormalFlight state,
        SteadyState flow) {

    /**
     * How things are held.
     *
     * @param words what a hand has just done, as the story says it
     * @param apart parts that are taken off or parted
     * @param levers those that stand otherwise than in flight
     * @param off loads that are off at their own switches
     * @param seconds how long (s)
     */
    public record HeldCondition(
            String words,
            List<Hit> apart,
            Map<String, String> levers,
            Set<String> off,
            double seconds) {
        public HeldCondition {
            apart = List.copyOf(apart);
            levers = Collections.unmodifiableMap(new LinkedHashMap<>(levers));
            off = Set.copyOf(off);
            if (!(seconds > 0)) {
                throw new IllegalArgumentException(
                        words + ": a condition held for " + seconds + " s is not held");
            }
        }
    }

    public Spell {
        events = List.copyOf(events);
    }

    /** What has been harmed meanwhile; of an engine that falters or stops nothing is. */
    public List<StoryEvent> damage() {
        return events.stream()
                .filter(e -> AdverseEffect.is(e.kind()) && !isOfTheEngine(e.kind()))
                .toList();
    }

    private static boolean isOfTheEngine(StoryEvent.Kind kind) {
        return kind == StoryEvent.Kind.ENGINE_INTERRUPTED || kind == StoryEvent.Kind.ENGINE_STOPS;
    }
}
