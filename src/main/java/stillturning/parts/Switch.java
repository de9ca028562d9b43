package stillturning.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Control;
import stillturning.parts.element.Element;

/**
 * A hand-operated switch. Single throw: {@code in}, {@code out}, positions off and on. Double
 * throw: {@code common}, {@code up}, {@code down}, positions up, off and down. With several poles
 * each terminal carries its pole's number ({@code in-2}).
 *
 * @param ohms resistance of a closed contact (ohm)
 */
public record Switch(Tag tag, int poles, Throw throwing, double ohms) implements Part {

    /** How many circuits one pole can close. */
    public enum Throw {
        SINGLE(List.of("off", "on")),
        DOUBLE(List.of("up", "off", "down"));

        @SuppressWarnings("ImmutableEnumChecker") // a list made by List.of
        private final List<String> positions;

        Throw(List<String> positions) {
            this.positions = positions;
        }

        /** Where the lever can stand. */
        public List<String> positions() {
            return positions;
        }
    }

    public Switch {
        if (poles < 1) {
            throw new IllegalArgumentException(tag.id() + ": a switch has at least one pole");
        }
    }

    @Override
    public List<String> terminals() {
        Stream<String> names =
                throwing == Throw.SINGLE
                        ? Stream.of("in", "out")
                        : Stream.of("common", "up", "down");
        List<String> ofOnePole = names.toList();
        return IntStream.rangeClosed(1, poles)
                .boxed()
                .flatMap(pole -> ofOnePole.stream().map(name -> onPole(name, pole)))
                .toList();
    }

    @Override
    public List<Element> elements() {
        return contacts().stream().map(c -> (Element) c).toList();
    }

    @Override
    public List<FailureMode> failureModes() {
        List<FailureMode> modes = new ArrayList<>();
        modes.add(
                new FailureMode(
                        "stuck open",
                        contacts().stream().map(c -> Faults.open(c.name())).toList()));
        for (String position : throwing.positions()) {
            List<Alteration> welded =
                    contacts().stream()
                            .filter(c -> closedAt(c, position))
                            .map(c -> Faults.metalFor(c, ohms))
                            .toList();
            if (!welded.isEmpty()) {
                String name =
                        throwing == Throw.SINGLE ? "stuck closed" : "stuck closed " + position;
                modes.add(new FailureMode(name, welded));
            }
        }
        modes.add(FailureMode.of("short to ground", Faults.shortToStructure(entry())));
        return List.copyOf(modes);
    }

    @Override
    public String entry() {
        return terminals().get(0);
    }

    @Override
    public String exit() {
        return terminals().get(1);
    }

    @Override
    public boolean mayDangle(String terminal) {
        return throwing == Throw.DOUBLE || poles > 1;
    }

    private List<Contact> contacts() {
        return IntStream.rangeClosed(1, poles).boxed().flatMap(this::contactsOf).toList();
    }

    private Stream<Contact> contactsOf(int pole) {
        return throwing == Throw.SINGLE
                ? Stream.of(contact("in", "out", "on", pole))
                : Stream.of(
                        contact("common", "up", "up", pole),
                        contact("common", "down", "down", pole));
    }

    private Contact contact(String from, String to, String position, int pole) {
        return new Contact(
                onPole(position, pole),
                onPole(from, pole),
                onPole(to, pole),
                ohms,
                new Control.ByHand(Set.of(position)));
    }

    private static boolean closedAt(Contact contact, String position) {
        return contact.control() instanceof Control.ByHand hand
                && hand.closedAt().contains(position);
    }

    private String onPole(String name, int pole) {
        return poles == 1 ? name : name + "-" + pole;
    }
}
