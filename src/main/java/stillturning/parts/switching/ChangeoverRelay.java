package stillturning.parts.switching;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.parts.Damage;
import stillturning.parts.FailureMode;
import stillturning.parts.Faults;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.Symbol;
import stillturning.parts.Symbol.Figure;
import stillturning.parts.Symbol.Pin;
import stillturning.parts.Symbol.PinEdge;
import stillturning.parts.Symbol.When;
import stillturning.parts.Tag;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Control;
import stillturning.parts.element.Element;
import stillturning.parts.switching.Contactor.Winding;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.GrowsWithVolts;
import stillturning.quantity.field.OfDimension;

/**
 * Relay whose coil ({@code coil-plus}, {@code coil-minus}) moves {@code common} from {@code
 * normally-closed} to {@code normally-open}. One blade makes both contacts, so that a contact which
 * is welded keeps the other one open. Common practice, no published source.
 *
 * <p>The gap of some milliseconds while the blade moves is not played: both change at one instant.
 *
 * @param contactOhms resistance of a closed contact (ohm)
 */
public record ChangeoverRelay(Tag tag, Winding winding, double contactOhms) implements Part {

    static final PartKind KIND =
            new PartKind(
                    "changeover-relay",
                    "changeover relay",
                    "changeover relays",
                    62,
                    Values.class,
                    "measure across both contacts, coil off and on");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a changeover relay. */
    @Describes("Contacts that a coil moves from one side to the other.")
    public record Values(
            @GrowsWithVolts(power = 2) @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    double coilResistance,
            @GrowsWithVolts @OfDimension(value = Dimension.VOLTAGE, above = "0 V") double pullIn,
            @GrowsWithVolts @OfDimension(value = Dimension.VOLTAGE, above = "0 V") double dropOut,
            @Describes("Time that its contacts take to move.")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    double delay,
            @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm") double resistance,
            @OfDimension(value = Dimension.CURRENT, above = "0 A") Optional<Double> rating)
            implements ContactValues {

        @Override
        public ChangeoverRelay part(Tag tag, PartSurroundings site) {
            return new ChangeoverRelay(
                    tag, new Winding(coilResistance, pullIn, dropOut, delay), resistance);
        }
    }

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<String> terminals() {
        return List.of("common", "normally-closed", "normally-open", "coil-plus", "coil-minus");
    }

    @Override
    public List<Element> elements() {
        return List.of(contact("normally-closed"), contact("normally-open"), winding.coil());
    }

    private Contact contact(String to) {
        boolean whenPulled = to.equals("normally-open");
        String name = to.replace('-', ' ');
        return new Contact(name, "common", to, contactOhms, new Control.ByCoil("coil", whenPulled));
    }

    @Override
    public List<FailureMode> failureModes() {
        Contact closed = contact("normally-closed");
        Contact open = contact("normally-open");
        return List.of(
                FailureMode.of("common-open", Faults.open(closed.name()), Faults.open(open.name()))
                        .by(Damage.TORN, Damage.SCORCHED),
                FailureMode.of("coil-open", Faults.open("coil")).by(Damage.TORN, Damage.SOAKED),
                FailureMode.shorted("coil-shorted", winding.coil()).inspectedBy(Contactor.COIL),
                welded(closed, open),
                welded(open, closed));
    }

    private FailureMode welded(Contact one, Contact other) {
        return FailureMode.of(
                "welded",
                "welded " + one.name(),
                List.of(Faults.metalFor(one, contactOhms), Faults.open(other.name())));
    }

    @Override
    public String entry() {
        return "normally-open";
    }

    @Override
    public String exit() {
        return "common";
    }

    @Override
    public boolean mayDangle(String terminal) {
        return terminal.startsWith("normally-");
    }

    @Override
    public List<String> inputs() {
        return List.of("coil-plus");
    }

    /** Its coil is always a row of its own: with two ways it belongs to neither. */
    @Override
    public List<Symbol> symbols() {
        List<Pin> coil =
                List.of(Pin.at(PinEdge.LEFT, "coil-plus"), Pin.at(PinEdge.RETURN, "coil-minus"));
        List<Symbol> all = new ArrayList<>(Symbol.ways(this, Figure.CONTACTOR, ""));
        all.add(Symbol.consumer(this, "coil", coil, When.ALWAYS));
        return List.copyOf(all);
    }
}
