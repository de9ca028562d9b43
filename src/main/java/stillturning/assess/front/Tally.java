package stillturning.assess.front;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a search did.
 *
 * @param tried things tried
 * @param met those that are as asked for
 * @param missed the others, by what they miss first
 * @param outdone things that were not tried because they cannot be on the front
 * @param twice steps that led to what was there already
 * @param refused steps that could not be taken
 * @param left steps known but not taken
 */
public record Tally(
        int tried,
        int met,
        Map<String, Integer> missed,
        int outdone,
        int twice,
        int refused,
        int left) {
    public Tally {
        missed = Collections.unmodifiableMap(new LinkedHashMap<>(missed));
    }
}
