package stillturning.parts.switching;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import stillturning.parts.Damage;
import stillturning.parts.Detail;
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
import stillturning.parts.element.Coil;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Control;
import stillturning.parts.element.Element;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.GrowsWithVolts;
import stillturning.quantity.field.MeasuredBy;
import stillturning.quantity.field.OfDimension;

/**
 * Contactor or relay: a coil ({@code coil-plus}, {@code coil-minus}) that closes {@code in} to
 * {@code out}.
 *
 * @param contactOhms resistance of the closed contacts (ohm)
 */
public record Contactor(Tag tag, Winding winding, double contactOhms) implements Part {

    static final PartKind KIND =
            new PartKind(
                    "contactor",
                    "contactor",
                    "contactors",
                    60,
                    Values.class,
                    "measure across its contacts, coil off and on");

    /** How a winding is looked for whose turns touch. */
    static final String COIL = "measure the resistance of its coil";

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a contactor. */
    @Describes("Contacts for large currents, closed by a coil.")
    public record Values(
            @GrowsWithVolts(power = 2)
                    @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    @MeasuredBy("an ohmmeter across its coil, leads off")
                    double coilResistance,
            @GrowsWithVolts
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    @MeasuredBy("raise a bench supply on its coil until it pulls in")
                    double pullIn,
            @GrowsWithVolts
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    @MeasuredBy("lower a bench supply on its coil until it lets go")
                    double dropOut,
            @Describes("Time that its contacts take to move.")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    double delay,
            @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    @MeasuredBy("the voltage across its closed contacts at a known current")
                    double resistance,
            @OfDimension(value = Dimension.CURRENT, above = "0 A") Optional<Double> rating)
            implements ContactValues {

        @Override
        public Contactor part(Tag tag, PartSurroundings site) {
            return new Contactor(
                    tag, new Winding(coilResistance, pullIn, dropOut, delay), resistance);
        }
    }

    /** Coil resistance (ohm), pull-in and drop-out voltage (V), and how long it takes (s). */
    public record Winding(double ohms, double pullInVolts, double dropOutVolts, double seconds) {
        Coil coil() {
            return new Coil(
                    "coil",
                    "coil-plus",
                    "coil-minus",
                    ohms,
                    pullInVolts,
                    dropOutVolts,
                    seconds,
                    seconds);
        }
    }

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<String> terminals() {
        return List.of("in", "out", "coil-plus", "coil-minus");
    }

    @Override
    public List<Element> elements() {
        return List.of(contact(), winding.coil());
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                FailureMode.of("drops-out", Faults.open("coil"))
                        .by(Damage.TORN, Damage.SCORCHED, Damage.SOAKED)
                        .alsoCalled("stuck open", "will not close"),
                FailureMode.shorted("coil-shorted", winding.coil()).inspectedBy(COIL),
                FailureMode.of("welded", Faults.metalFor(contact(), contactOhms)));
    }

    @Override
    public String entry() {
        return "in";
    }

    @Override
    public String exit() {
        return "out";
    }

    @Override
    public boolean takesMany(String terminal) {
        return true;
    }

    private Contact contact() {
        return new Contact("contact", "in", "out", contactOhms, new Control.ByCoil("coil", true));
    }

    @Override
    public List<String> inputs() {
        return List.of("coil-plus");
    }

    @Override
    public boolean endsBatteryLead() {
        return true;
    }

    @Override
    public String detail() {
        return Detail.number(winding.ohms) + " ohm coil";
    }

    /**
     * A coil that its own contact side feeds is drawn at the contactor; one that is fed from
     * elsewhere is a row of its own among the loads.
     */
    @Override
    public List<Symbol> symbols() {
        List<Pin> coil =
                List.of(Pin.at(PinEdge.LEFT, "coil-plus"), Pin.at(PinEdge.RETURN, "coil-minus"));
        List<Pin> contact =
                List.of(
                        Pin.at(PinEdge.BY_CURRENT, "in"),
                        Pin.at(PinEdge.BY_CURRENT, "out"),
                        Pin.at(PinEdge.BELOW, "coil-minus").only(When.FEEDS_OWN_COIL));
        return List.of(
                Symbol.consumer(this, "coil", coil, When.COIL_FED_ELSEWHERE),
                Symbol.of(this, Figure.CONTACTOR, "", contact).showing("contact"));
    }
}
