package stillturning.parts.switching;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stillturning.parts.Alteration;
import stillturning.parts.Damage;
import stillturning.parts.FailureMode;
import stillturning.parts.Faults;
import stillturning.parts.Lever;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.PartValues;
import stillturning.parts.Symbol;
import stillturning.parts.Symbol.Figure;
import stillturning.parts.Tag;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Control;
import stillturning.parts.element.Element;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Bounds;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.OfDimension;

/**
 * A hand-operated switch. Single throw: {@code in}, {@code out}, positions off and on. Double
 * throw: {@code common}, {@code up}, {@code down}, positions up, off and down. With several poles
 * each terminal carries its pole's number ({@code in-2}).
 *
 * @param ohms resistance of a closed contact (ohm)
 */
public record Switch(Tag tag, int poles, Throw throwing, double ohms) implements Part {

    static final PartKind KIND =
            new PartKind(
                    "switch",
                    "switch",
                    "switches",
                    70,
                    Values.class,
                    "measure across each pole in each position");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a switch. */
    @Describes("Lever that closes or opens a circuit by hand.")
    public record Values(
            @Bounds(least = 1, most = 4) int poles,
            @Describes("single (off, on) or double (up, off, down).") Throw throwing,
            @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm") double resistance,
            @Describes("Current that its contacts are rated for, resistive load.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    Optional<Double> rating)
            implements PartValues {

        @Override
        public Switch part(Tag tag, Site site) {
            return new Switch(tag, poles, throwing, resistance);
        }

        @Override
        public OptionalDouble contactAmps() {
            return rating.map(OptionalDouble::of).orElse(OptionalDouble.empty());
        }
    }

    private static final Pattern POLE = Pattern.compile("(?<name>[a-z]+)(?<pole>-[0-9]+)?");

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
    public PartKind kind() {
        return KIND;
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
                FailureMode.of(
                                "stuck-open",
                                "stuck open",
                                contacts().stream().map(c -> Faults.open(c.name())).toList())
                        .by(Damage.TORN, Damage.SCORCHED));
        for (String position : throwing.positions()) {
            List<Alteration> welded =
                    contacts().stream()
                            .filter(c -> closedAt(c, position))
                            .map(c -> Faults.metalFor(c, ohms))
                            .toList();
            if (!welded.isEmpty()) {
                String name =
                        throwing == Throw.SINGLE ? "stuck closed" : "stuck closed " + position;
                modes.add(FailureMode.of("stuck-closed", name, welded));
            }
        }
        modes.add(
                FailureMode.of("short-to-ground", Faults.shortToStructure(entry()))
                        .by(Damage.SOAKED));
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

    @Override
    public Optional<String> across(String terminal) {
        Matcher pole = POLE.matcher(terminal);
        if (!pole.matches()) {
            return Optional.empty();
        }
        String suffix = Optional.ofNullable(pole.group("pole")).orElse("");
        return switch (pole.group("name")) {
            case "in" -> Optional.of("out" + suffix);
            case "out" -> Optional.of("in" + suffix);
            case "up", "down" -> Optional.of("common" + suffix);
            default -> Optional.empty();
        };
    }

    @Override
    public boolean severalWays() {
        return throwing == Throw.DOUBLE;
    }

    @Override
    public Optional<String> wayHint() {
        return Optional.of("write the throw, such as " + id() + ".up");
    }

    @Override
    public List<Lever> levers() {
        return List.of(
                Lever.ofContacts(
                        id(), throwing.positions(), throwing == Throw.SINGLE ? "on" : "off"));
    }

    @Override
    public boolean carriesSeveral() {
        return poles > 1;
    }

    @Override
    public String detail() {
        return poles + (throwing == Throw.SINGLE ? " pole, single throw" : " pole, double throw");
    }

    @Override
    public List<Symbol> symbols() {
        return Symbol.ways(this, Figure.SWITCH, "");
    }
}
