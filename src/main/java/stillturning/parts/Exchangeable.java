package stillturning.parts;

import java.util.Optional;

/** What can be bought otherwise without anything else being changed. */
public interface Exchangeable {

    /** This thing under the name and in the place of another; empty if that is of another kind. */
    Optional<Part> inPlaceOf(Part other);

    /** A thing in the place of another, where it can be exchanged for it. */
    static Optional<Part> exchanged(Part thing, Part other) {
        return thing instanceof Exchangeable one ? one.inPlaceOf(other) : Optional.empty();
    }
}
