package stillturning.parts.switching;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillturning.parts.Alteration;
import stillturning.parts.FailureMode;
import stillturning.parts.Lever;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.Symbol;
import stillturning.parts.Symbol.Figure;
import stillturning.parts.Tag;
import stillturning.parts.element.Element;
import stillturning.parts.switching.Poles.PoleContact;
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
            implements ContactValues {

        @Override
        public Switch part(Tag tag, PartSurroundings site) {
            return new Switch(tag, poles, throwing, resistance);
        }
    }

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
        return contacts().terminals();
    }

    @Override
    public List<Element> elements() {
        return List.copyOf(contacts().contacts());
    }

    @Override
    public List<FailureMode> failureModes() {
        List<FailureMode> modes = new ArrayList<>();
        modes.add(contacts().open("stuck-open"));
        for (String position : throwing.positions()) {
            List<Alteration> welded = contacts().weldedAt(position);
            if (!welded.isEmpty()) {
                String name =
                        throwing == Throw.SINGLE ? "stuck closed" : "stuck closed " + position;
                modes.add(FailureMode.of("stuck-closed", name, welded));
            }
        }
        modes.add(contacts().shortToGround());
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

    private Poles contacts() {
        return throwing == Throw.SINGLE
                ? Poles.of(poles, ohms, new PoleContact("on", "in", "out", Set.of("on")))
                : Poles.of(
                        poles,
                        ohms,
                        new PoleContact("up", "common", "up", Set.of("up")),
                        new PoleContact("down", "common", "down", Set.of("down")));
    }

    @Override
    public Optional<String> across(String terminal) {
        return contacts().across(terminal);
    }

    @Override
    public Optional<String> wayHint() {
        return throwing == Throw.DOUBLE
                ? Optional.of("write the throw, such as " + id() + ".up")
                : Optional.empty();
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
