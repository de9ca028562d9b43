package stillturning.parts;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What must be known of a part beside its name and place: a record of a kind's own file, SI
 * throughout, its fields described by their marks.
 */
public interface PartValues {

    /**
     * What surrounds a part in its candidate.
     *
     * @param nominalVolts nominal voltage of the aircraft (V)
     * @param arrivals names of the lines that end at it without naming a terminal, for what has a
     *     terminal for each
     */
    record PartSurroundings(double nominalVolts, List<String> arrivals) {
        public PartSurroundings {
            arrivals = List.copyOf(arrivals);
        }
    }

    /**
     * The part.
     *
     * @throws IllegalArgumentException if its values contradict each other
     */
    Part part(Tag tag, PartSurroundings site);

    /** What it weighs and costs, where that follows from its values. */
    default Optional<Tag.Burden> burden(CableCost cable) {
        return Optional.empty();
    }

    /** What limits the current of a line in which it lies. */
    default Optional<Protection> protection() {
        return Optional.empty();
    }

    /** What its contacts are rated for, resistive load (A), where it has any. */
    default OptionalDouble contactAmps() {
        return OptionalDouble.empty();
    }

    /** Largest current that it interrupts (A), if that is known. */
    default OptionalDouble interruptAmps() {
        return OptionalDouble.empty();
    }
}
