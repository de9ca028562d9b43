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
import stillturning.quantity.field.Example;
import stillturning.quantity.field.OfDimension;

/**
 * A small resistance between {@code in} and {@code out} by which an ammeter measures: all of the
 * line's current goes through it.
 *
 * @param ratedAmps current (A) at which its drop is stated
 * @param ohms resistance (ohm)
 */
public record Shunt(Tag tag, double ratedAmps, double ohms) implements InLine {

    static final PartKind KIND =
            new PartKind(
                    "shunt",
                    "shunt",
                    "shunts",
                    82,
                    Values.class,
                    "look at it, tug it, measure its resistance end to end");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a shunt. */
    @Describes("Small resistance in a line, by which an ammeter measures its current.")
    public record Values(
            @Example("50 A (guess)")
                    @Describes("Current at which its drop is stated.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    double rating,
            @Describes("Voltage across it at its rating.")
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    double drop)
            implements PartValues {

        @Override
        public Shunt part(Tag tag, PartSurroundings site) {
            return new Shunt(tag, rating, drop / rating);
        }
    }

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<Element> elements() {
        return List.of(strip());
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                FailureMode.of("open", Faults.open("strip")).by(Damage.TORN),
                // its bolted joints corrode
                FailureMode.of("high-resistance", Faults.badContact(strip())).by(Damage.SOAKED));
    }

    private Conductor strip() {
        return new Conductor("strip", entry(), exit(), ohms);
    }

    @Override
    public String detail() {
        return Detail.amps(ratedAmps);
    }
}
