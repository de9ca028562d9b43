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
import stillturning.parts.Tag;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Element;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.OfDimension;

/**
 * A resistor between {@code in} and {@code out} that limits what charges a battery or a capacitor.
 *
 * <p>A wound power resistor burns open. Shorted is not credible: nothing in it melts together with
 * as much metal as would carry the current. Common practice, no published source.
 *
 * @param ohms resistance (ohm)
 * @param watts power that it gives off continuously (W)
 */
public record ChargeResistor(Tag tag, double ohms, double watts) implements InLine {

    static final PartKind KIND =
            new PartKind(
                    "charge-resistor",
                    "charge resistor",
                    "charge resistors",
                    83,
                    Values.class,
                    "measure its resistance end to end");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a charge resistor. */
    @Describes("Resistor that limits the current of a charging path.")
    public record Values(
            @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm") double resistance,
            @Describes("Power that it gives off continuously.")
                    @OfDimension(value = Dimension.POWER, above = "0 W")
                    double rating)
            implements PartValues {

        @Override
        public ChargeResistor part(Tag tag, PartSurroundings site) {
            return new ChargeResistor(tag, resistance, rating);
        }
    }

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<Element> elements() {
        return List.of(new Conductor("winding", entry(), exit(), ohms));
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                // water creeps in at its ends and eats the wire
                FailureMode.of("open", Faults.open("winding"))
                        .by(Damage.TORN, Damage.SCORCHED, Damage.SOAKED));
    }

    @Override
    public String detail() {
        return Detail.number(ohms) + " ohm, " + Detail.number(watts) + " W";
    }
}
