package stillturning.structure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.model.Cockpit;
import stillturning.parts.Part;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Control.ByHand;

/** Where the levers stand in flight or can be put by a procedure. */
final class LeverPositions {

    private final Cockpit cockpit;

    LeverPositions(Cockpit cockpit) {
        this.cockpit = cockpit;
    }

    /** A position of a lever, and the names of the contacts that are closed there. */
    record Stand(String position, Set<String> closed) {
        Stand {
            closed = Set.copyOf(closed);
        }
    }

    /** Every position of a lever, the one in flight first. */
    Set<String> positions(String lever) {
        return positions(Optional.ofNullable(cockpit.flight().get(lever)).stream(), lever);
    }

    /**
     * A position of what conducts wherever nobody has opened it, in which it does; empty if it is
     * open in flight and no procedure closes it.
     *
     * @param opened name of the position in which it does not
     */
    Optional<String> closing(String lever, String opened) {
        String flight = cockpit.flight().getOrDefault(lever, "");
        return positions(Stream.of(flight), lever).stream()
                .filter(position -> !position.equals(opened))
                .findFirst();
    }

    private Set<String> positions(Stream<String> flight, String lever) {
        Set<String> positions = new LinkedHashSet<>();
        Stream.concat(
                        flight,
                        cockpit.procedures().stream()
                                .map(procedure -> procedure.moves().get(lever))
                                .filter(Objects::nonNull))
                .forEach(positions::add);
        return positions;
    }

    /**
     * A part's hand-moved contacts that are closed together, for each useful position of its lever:
     * one that closes less than another is left out.
     */
    List<Stand> stands(Part part) {
        List<Contact> contacts =
                part.elements().stream()
                        .filter(Contact.class::isInstance)
                        .map(Contact.class::cast)
                        .filter(contact -> contact.control() instanceof ByHand)
                        .toList();
        List<Stand> all = new ArrayList<>();
        for (String position : positions(part.id())) {
            Set<String> closed =
                    contacts.stream()
                            .filter(contact -> isClosed(contact, position))
                            .map(Contact::name)
                            .collect(Collectors.toUnmodifiableSet());
            if (all.stream().noneMatch(other -> other.closed().containsAll(closed))) {
                all.removeIf(other -> closed.containsAll(other.closed()));
                all.add(new Stand(position, closed));
            }
        }
        return List.copyOf(all);
    }

    private static boolean isClosed(Contact contact, String position) {
        return contact.control() instanceof ByHand hand && hand.closedAt().contains(position);
    }
}
