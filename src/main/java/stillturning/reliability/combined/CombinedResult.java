package stillturning.reliability.combined;

import java.util.List;
import stillturning.model.Candidate;
import stillturning.reliability.cutset.CutSets;

/**
 * What events do together in a candidate.
 *
 * @param events by the numbers that the sets use
 * @param untold why nobody could say, one for each of the sets' untold
 * @param stories how many stories were told for it
 */
public record CombinedResult(
        Candidate candidate, List<Event> events, CutSets sets, List<String> untold, int stories) {
    public CombinedResult {
        events = List.copyOf(events);
        untold = List.copyOf(untold);
    }
}
