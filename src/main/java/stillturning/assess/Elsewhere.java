package stillturning.assess;

import java.util.List;

/**
 * What single failures do at other moments of the flight than where the study tries them.
 *
 * @param worse what does worse there, by candidate, worst first
 * @param untold moments at which a candidate has no steady state to begin with, with the reason
 */
public record Elsewhere(List<WorseInPhase> worse, List<String> untold) {
    public Elsewhere {
        worse = List.copyOf(worse);
        untold = List.copyOf(untold);
    }
}
