package stillturning.story;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What becomes of an attempt to start the engine on the ground.
 *
 * @param conditions in words
 * @param runs whether the engine runs at the end
 * @param seconds from the key to running, or to giving up (s)
 * @param starterAmps highest current of the starter (A)
 * @param lowestVolts lowest voltage of the starter and of each load of the engine's logic (V)
 * @param resets those of them that stop on the way
 * @param happenings events in order of time
 */
public record StartAttempt(
        String conditions,
        boolean runs,
        double seconds,
        double starterAmps,
        Map<String, Double> lowestVolts,
        List<String> resets,
        List<StoryEvent> happenings) {

    /** Why it cannot be told on, if so; it then counts as failed. */
    public Optional<String> untold() {
        return happenings.stream()
                .filter(h -> h.kind() == StoryEvent.Kind.UNTOLD)
                .map(StoryEvent::words)
                .findFirst();
    }

    public StartAttempt {
        lowestVolts = Collections.unmodifiableMap(new LinkedHashMap<>(lowestVolts));
        resets = List.copyOf(resets);
        happenings = List.copyOf(happenings);
    }
}
