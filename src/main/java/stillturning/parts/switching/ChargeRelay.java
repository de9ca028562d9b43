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
import stillturning.parts.Tag;
import stillturning.parts.element.Coil;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Control;
import stillturning.parts.element.Element;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.GrowsWithVolts;
import stillturning.quantity.field.OfDimension;

/**
 * Relay that joins a second battery ({@code out}) to the charged one ({@code in}) while that is
 * being charged: it measures {@code in} against {@code minus}, closes above one voltage and opens
 * below a lower one. It feels the second battery only through its closed contacts. Common practice,
 * no published source.
 *
 * <p>It draws the same whether closed or open; a real one draws less while it is open.
 *
 * @param sensing what it measures {@code in} with
 * @param contactOhms resistance of the closed contacts (ohm)
 */
public record ChargeRelay(Tag tag, Coil sensing, double contactOhms) implements Part {

    static final PartKind KIND =
            new PartKind(
                    "charge-relay",
                    "charge relay",
                    "charge relays",
                    61,
                    Values.class,
                    "measure across its contacts with its input below and above its voltages");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a charge relay. */
    @Describes("Joins a second battery to one that is being charged, by the voltage at its input.")
    public record Values(
            @Describes("Closes when its input has been above this.")
                    @GrowsWithVolts
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    double closesAt,
            @Describes("Opens when its input has been below this.")
                    @GrowsWithVolts
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    double opensAt,
            @Describes("... for this long.") @OfDimension(value = Dimension.TIME, least = "0 s")
                    double after,
            @Describes("What it draws itself at the study's nominal voltage.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    double draws,
            @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm") double resistance,
            @OfDimension(value = Dimension.CURRENT, above = "0 A") Optional<Double> rating)
            implements ContactValues {

        @Override
        public ChargeRelay part(Tag tag, PartSurroundings site) {
            double ohms = site.nominalVolts() / draws;
            return new ChargeRelay(
                    tag,
                    new Coil("sensing", "in", "minus", ohms, closesAt, opensAt, after, after),
                    resistance);
        }
    }

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<String> terminals() {
        return List.of("in", "out", "minus");
    }

    @Override
    public List<Element> elements() {
        return List.of(contact(), sensing);
    }

    private Contact contact() {
        return new Contact(
                "contact", "in", "out", contactOhms, new Control.ByCoil("sensing", true));
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                FailureMode.of("does-not-close", Faults.open("sensing"))
                        .by(Damage.TORN, Damage.SCORCHED, Damage.SOAKED),
                FailureMode.shorted("coil-shorted", sensing),
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

    @Override
    public String detail() {
        return "closes at " + Detail.written(sensing.pullInVolts(), "V");
    }

    @Override
    public List<Symbol> symbols() {
        return List.of(Symbol.around(this, Figure.CONTACTOR, "").showing("contact"));
    }
}
