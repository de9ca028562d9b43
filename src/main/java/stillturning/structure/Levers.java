package stillturning.structure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.element.Contact;
import stillturning.element.Control.ByHand;
import stillturning.model.Cockpit;
import stillturning.parts.Part;

/** Where the levers stand in flight or can be put by a procedure. */
final class Levers {

    private final Cockpit cockpit;

    Levers(Cockpit cockpit) {
        this.cockpit = cockpit;
    }

    /** Every position of a lever, the one in flight first. */
    Set<String> positions(String lever) {
        Set<String> positions = new LinkedHashSet<>();
        Stream.concat(
                        Stream.of(cockpit.flight()),
                        cockpit.procedures().stream().map(procedure -> procedure.moves()))
                .map(moves -> moves.get(lever))
                .filter(Objects::nonNull)
                .forEach(positions::add);
        return positions;
    }

    /**
     * Names of a part's hand-moved contacts that are closed together, a set for each useful
     * position of its lever: one that closes less than another is left out. Empty if none closes
     * any.
     */
    List<Set<String>> stands(Part part) {
        List<Contact> contacts =
                part.elements().stream()
                        .filter(Contact.class::isInstance)
                        .map(Contact.class::cast)
                        .filter(contact -> contact.control() instanceof ByHand)
                        .toList();
        List<Set<String>> all = new ArrayList<>();
        for (String position : positions(part.id())) {
            Set<String> closed =
                    contacts.stream()
                            .filter(contact -> isClosed(contact, position))
                            .map(Contact::name)
                            .collect(Collectors.toUnmodifiableSet());
            if (all.stream().noneMatch(other -> other.containsAll(closed))) {
                all.removeIf(closed::containsAll);
                all.add(closed);
            }
        }
        return List.copyOf(all);
    }

    private static boolean isClosed(Contact contact, String position) {
        return contact.control() instanceof ByHand hand && hand.closedAt().contains(position);
    }
}
