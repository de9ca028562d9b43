package stillturning.parts;

import java.util.List;
import java.util.Optional;

/**
 * Something that the pilot can move.
 *
 * @param name as procedures and positions name it
 * @param positions where it can stand
 * @param stated whether a candidate must say where it stands in flight
 * @param usual where it stands if nobody says so; of one that must be stated, what a new part gets
 * @param element what it closes and opens, where it is not a hand-moved contact that says so itself
 */
public record Lever(
        String name,
        List<String> positions,
        boolean stated,
        String usual,
        Optional<String> element) {

    /** Positions of what protects and is pulled by hand. */
    public static final List<String> PULLED = List.of("in", "pulled");

    /** Positions of what is commanded on and off. */
    public static final List<String> COMMANDED = List.of("on", "off");

    public Lever {
        positions = List.copyOf(positions);
        if (!positions.contains(usual)) {
            throw new IllegalArgumentException(name + " cannot stand " + usual);
        }
    }

    /** One that moves contacts by hand, each of which knows where it is closed. */
    public static Lever ofContacts(String name, List<String> positions, String usual) {
        return new Lever(name, positions, true, usual, Optional.empty());
    }

    /** One that closes an element in its first position and opens it in its second. */
    public static Lever of(String name, String element, List<String> positions) {
        return new Lever(name, positions, false, positions.get(0), Optional.of(element));
    }
}
