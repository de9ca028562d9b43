package stillturning.assess;

import java.util.List;
import stillturning.assess.verdict.Outcome;
import stillturning.story.Moment;

/**
 * What single failures do at other moments of the flight than where the study tries them.
 *
 * @param worse what does worse there, by candidate, worst first
 * @param untold moments at which a candidate has no steady state to begin with, with the reason
 */
public record Elsewhere(List<WorseInPhase> worse, List<String> untold) {

    /**
     * A failure that does worse at another moment of the flight than in the phase in which the
     * study tries it.
     *
     * @param candidate id of the candidate
     * @param failure name of the failure
     * @param usual what it comes to where the study tries it
     * @param moment the worst moment, the earliest of several
     * @param there what it comes to then, the rest of the flight being flown
     * @param seconds how long the engine runs on then (s); infinite if to the end of the flight
     */
    public record WorseInPhase(
            String candidate,
            String failure,
            Outcome usual,
            Moment moment,
            Outcome there,
            double seconds) {}

    public Elsewhere {
        worse = List.copyOf(worse);
        untold = List.copyOf(untold);
    }
}
