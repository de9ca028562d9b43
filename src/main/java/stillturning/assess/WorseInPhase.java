package stillturning.assess;

import stillturning.assess.verdict.Outcome;
import stillturning.story.Moment;

/**
 * A failure that does worse at another moment of the flight than in the phase in which the study
 * tries it.
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
