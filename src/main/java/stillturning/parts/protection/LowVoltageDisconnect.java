package stillturning.parts.protection;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stillturning.parts.Damage;
import stillturning.parts.Detail;
import stillturning.parts.FailureMode;
import stillturning.parts.Faults;
import stillturning.parts.InLine;
import stillturning.parts.PartKind;
import stillturning.parts.PartValues;
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
 * Takes loads off before a battery is empty: opens {@code in} to {@code out} when the voltage of
 * {@code in} against {@code minus} has been low for a while, and closes once it has been high
 * enough for as long.
 *
 * @param contactOhms resistance of the closed contact (ohm)
 */
public record LowVoltageDisconnect(Tag tag, Thresholds thresholds, double contactOhms)
        implements InLine {

    static final PartKind KIND =
            new PartKind(
                    "low-voltage-disconnect",
                    "low-voltage disconnect",
                    "low-voltage disconnects",
                    91,
                    Values.class,
                    "bench test with a lowered voltage");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a low-voltage disconnect. */
    @Describes("Takes loads off when the voltage is low, so that the battery lasts for the rest.")
    public record Values(
            @Describes("Opens below this.")
                    @GrowsWithVolts
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    double opensAt,
            @Describes("Closes again above this.")
                    @GrowsWithVolts
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    double closesAt,
            @Describes("... after so long, both ways.")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    double after,
            @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm") double resistance,
            @Describes("Current that its contact carries continuously.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    Optional<Double> rating)
            implements PartValues {

        @Override
        public LowVoltageDisconnect part(Tag tag, PartSurroundings site) {
            return new LowVoltageDisconnect(
                    tag, new Thresholds(opensAt, closesAt, after), resistance);
        }

        @Override
        public OptionalDouble contactAmps() {
            return rating.map(OptionalDouble::of).orElse(OptionalDouble.empty());
        }
    }

    /** Opens below one voltage (V), closes at another (V), each after a while (s). */
    public record Thresholds(double opensVolts, double closesVolts, double seconds) {}

    /** What measures draws about a milliampere. A guess. */
    private static final double SENSOR_OHMS = 10_000;

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
        return List.of(contact(), sensor());
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                FailureMode.of("opens-for-no-reason", Faults.open("contact"))
                        .by(Damage.TORN, Damage.SCORCHED, Damage.SOAKED),
                FailureMode.shorted("sensor-shorted", sensor()),
                FailureMode.of(
                        "does-not-open-when-it-should", Faults.metalFor(contact(), contactOhms)));
    }

    @Override
    public boolean takesMany(String terminal) {
        return terminal.equals("minus");
    }

    private Contact contact() {
        Control low = new Control.ByCoil("sensor", true);
        return new Contact("contact", entry(), exit(), contactOhms, low);
    }

    private Coil sensor() {
        double seconds = thresholds.seconds;
        double closes = thresholds.closesVolts;
        double opens = thresholds.opensVolts;
        return new Coil("sensor", entry(), "minus", SENSOR_OHMS, closes, opens, seconds, seconds);
    }

    @Override
    public List<Symbol> symbols() {
        String opens = "opens at " + Detail.written(thresholds.opensVolts, "V");
        return List.of(Symbol.around(this, Figure.BOX, opens).showing("contact"));
    }
}
