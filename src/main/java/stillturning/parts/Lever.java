package stillturning.parts;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Something that the pilot can move.
 *
 * @param name as procedures and positions name it
 * @param positions where it can stand
 * @param stated whether a candidate must say where it stands in flight
 * @param usual where it stands if nobody says so; of one that must be stated, what a new part gets
 * @param sprung positions that it leaves by itself when the hand lets go, so that it cannot be left
 *     there
 * @param element what it closes and opens, where it is not a hand-moved contact that says so itself
 */
public record Lever(
        String name,
        List<String> positions,
        boolean stated,
        String usual,
        Set<String> sprung,
        Optional<String> element) {

    /** Positions of what protects and is pulled by hand. */
    public static final List<String> PULLED = List.of("in", "pulled");

    /** Positions of what is commanded on and off. */
    public static final List<String> COMMANDED = List.of("on", "off");

    public Lever {
        positions = List.copyOf(positions);
        sprung = Set.copyOf(sprung);
        if (!positions.contains(usual)) {
            throw new IllegalArgumentException(name + " cannot stand " + usual);
        }
    }

    /** One that moves contacts by hand, each of which knows where it is closed. */
    public static Lever ofContacts(String name, List<String> positions, String usual) {
        return new Lever(name, positions, true, usual, Set.of(), Optional.empty());
    }

    /** One that closes an element in its first position and opens it in its second. */
    public static Lever of(String name, String element, List<String> positions) {
        return new Lever(name, positions, false, positions.get(0), Set.of(), Optional.of(element));
    }

    /** The same, which does not stay in a position. */
    public Lever springingBackFrom(String position) {
        return new Lever(name, positions, stated, usual, Set.of(position), element);
    }

    /** Where it stays by itself. */
    public List<String> restingPositions() {
        return positions.stream().filter(position -> !sprung.contains(position)).toList();
    }
}
