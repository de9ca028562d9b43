package stillturning.parts.joining;

import com.google.auto.service.AutoService;
import java.util.List;
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
import stillturning.parts.element.Element;
import stillturning.parts.element.Rectifier;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.MeasuredBy;
import stillturning.quantity.field.OfDimension;

/**
 * A diode from {@code in} (anode) to {@code out} (cathode).
 *
 * @param saturationAmps saturation current (A)
 * @param emissionVolts emission coefficient times thermal voltage (V)
 * @param ohms series resistance (ohm)
 */
public record Diode(Tag tag, double saturationAmps, double emissionVolts, double ohms)
        implements InLine {

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
                    @MeasuredBy("its voltage at the stated current from a bench supply")
                    double drop,
            @Describes("Current at which the forward voltage is stated.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    double at,
            @Describes("Series resistance.")
                    @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    @MeasuredBy("its voltage at two currents from a bench supply, warm")
                    double resistance)
            implements PartValues {

        @Override
        public Diode part(Tag tag, PartSurroundings site) {
            DiodeLaw law = DiodeLaw.through(drop, at, resistance);
            return new Diode(tag, law.saturationAmps(), law.emissionVolts(), resistance);
        }
    }

    @Override
    public PartKind kind() {
        return KIND;
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
    public String detail() {
        return Detail.number(1000 * ohms) + " mohm";
    }

    @Override
    public List<Symbol> symbols() {
        return Symbol.ways(this, Figure.DIODE, "");
    }
}
