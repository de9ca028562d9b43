package stillturning.assess.verdict;

import java.util.List;
import stillturning.model.Candidate;
import stillturning.model.failure.Failure;

/**
 * One failure of one candidate at every moment of the flight.
 *
 * @param moments in the order of the flight
 * @param untold moments at which the candidate has no steady state to begin with, with the reason
 */
public record PhaseVerdicts(
        Candidate candidate, Failure failure, List<PhaseVerdict> moments, List<String> untold) {
    public PhaseVerdicts {
        untold = List.copyOf(untold);
        moments = List.copyOf(moments);
    }
}
