package stillturning.sizing.result;

import java.util.OptionalDouble;
import stillturning.model.Installation.Nature;

/**
 * The contacts of a switch or contactor against their rating.
 *
 * @param name part, or part and contact where it has several
 * @param byHand whether a hand moves them
 * @param carried largest current with nothing wrong, the starting of the engine apart
 * @param nature what they switch; several loads together count as inductive
 * @param neededAmps rating that they need (A)
 * @param ratedAmps rating that they have (A), if that is known
 */
public record ContactSize(
        String name,
        boolean byHand,
        Carried carried,
        Nature nature,
        double neededAmps,
        OptionalDouble ratedAmps) {}
