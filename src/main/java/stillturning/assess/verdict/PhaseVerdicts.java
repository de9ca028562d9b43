package stillturning.assess.verdict;

import java.util.List;
import stillturning.model.Candidate;
import stillturning.model.failure.Failure;

/**
 * One failure of one candidate at every moment of the flight.
 *
 * @param moments in the order of the flight
 */
public record PhaseVerdicts(Candidate candidate, Failure failure, List<PhaseVerdict> moments) {
    public PhaseVerdicts {
        moments = List.copyOf(moments);
    }
}
