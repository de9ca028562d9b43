package stillturning.parts.joining;

import com.google.auto.service.AutoService;
import java.util.List;
import stillturning.parts.Damage;
import stillturning.parts.Detail;
import stillturning.parts.FailureMode;
import stillturning.parts.Faults;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.PartValues;
import stillturning.parts.Symbol;
import stillturning.parts.Symbol.Figure;
import stillturning.parts.Tag;
import stillturning.parts.element.Element;
import stillturning.parts.element.Rectifier;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.OfDimension;

/**
 * A diode from {@code in} (anode) to {@code out} (cathode).
 *
 * @param saturationAmps saturation current (A)
 * @param emissionVolts emission coefficient times thermal voltage (V)
 * @param ohms series resistance (ohm)
 */
public record Diode(Tag tag, double saturationAmps, double emissionVolts, double ohms)
        implements Part {

    static final PartKind KIND =
            new PartKind(
                    "diode",
                    "diode",
                    "diodes",
                    80,
                    Values.class,
                    "measure it both ways, out of circuit");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a diode. */
    @Describes("Lets current through one way only.")
    public record Values(
            @Describes("Forward voltage at the stated current.")
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    double drop,
            @Describes("Current at which the forward voltage is stated.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    double at,
            @Describes("Series resistance.")
                    @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    double resistance)
            implements PartValues {

        @Override
        public Diode part(Tag tag, Site site) {
            double junctionVolts = drop - at * resistance;
            if (!(junctionVolts > 0)) {
                throw new IllegalArgumentException(
                        "diode: the series resistance alone drops "
                                + at * resistance
                                + " V, more than the forward voltage");
            }
            return new Diode(
                    tag,
                    at / Math.expm1(junctionVolts / EMISSION_VOLTS),
                    EMISSION_VOLTS,
                    resistance);
        }
    }

    /** Emission coefficient 1.06 times kT/q at 300 K: a good Schottky diode. A guess. */
    private static final double EMISSION_VOLTS = 0.0275;

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<String> terminals() {
        return List.of("in", "out");
    }

    @Override
    public List<Element> elements() {
        return List.of(new Rectifier("diode", "in", "out", saturationAmps, emissionVolts, ohms));
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                FailureMode.of("open", Faults.open("diode")).by(Damage.TORN),
                // a junction that gets too hot alloys through
                FailureMode.of("shorted", Faults.metalFor(elements().get(0), ohms))
                        .by(Damage.SCORCHED));
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
    public String detail() {
        return Detail.number(1000 * ohms) + " mohm";
    }

    @Override
    public List<Symbol> symbols() {
        return Symbol.ways(this, Figure.DIODE, "");
    }
}
