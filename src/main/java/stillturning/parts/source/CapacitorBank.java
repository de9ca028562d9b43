package stillturning.parts.source;

import com.google.auto.service.AutoService;
import java.util.List;
import stillturning.parts.Alteration.Put;
import stillturning.parts.Damage;
import stillturning.parts.Detail;
import stillturning.parts.FailureMode;
import stillturning.parts.Faults;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.PartValues;
import stillturning.parts.Tag;
import stillturning.parts.element.Capacitor;
import stillturning.parts.element.Element;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.GrowsWithVolts;
import stillturning.quantity.field.OfDimension;

/**
 * Capacitors in series between {@code plus} and {@code minus}, which keep a bus up for moments.
 *
 * @param rating rated voltage (V) and capacitance (F)
 * @param ohms equivalent series resistance (ohm)
 * @param leakAmps leakage at the rated voltage (A)
 */
public record CapacitorBank(Tag tag, Rating rating, double ohms, double leakAmps) implements Part {

    static final PartKind KIND =
            new PartKind(
                    "capacitor-bank",
                    "capacitor bank",
                    "capacitor banks",
                    31,
                    Values.class,
                    "discharge it through a known resistance, against time");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a capacitor bank. */
    @Describes("Keeps a bus up for moments; no battery.")
    public record Values(
            @Describes("Of the whole bank.")
                    @GrowsWithVolts(power = -1)
                    @OfDimension(value = Dimension.CAPACITANCE, above = "0 F")
                    double capacitance,
            @Describes("Resistance in series, of the whole bank.")
                    @GrowsWithVolts
                    @OfDimension(value = Dimension.RESISTANCE, above = "0 ohm")
                    double equivalentResistance,
            @Describes("Highest voltage that it is made for.")
                    @GrowsWithVolts
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    double ratedVoltage,
            @Describes("Current at its rated voltage once it is charged, with its balancing.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    double leakage)
            implements PartValues {

        @Override
        public CapacitorBank part(Tag tag, PartSurroundings site) {
            Rating rating = new Rating(ratedVoltage, capacitance);
            return new CapacitorBank(tag, rating, equivalentResistance, leakage);
        }
    }

    /** Rated voltage (V) and capacitance (F). */
    public record Rating(double volts, double farads) {}

    /**
     * Share of its capacitance that a worn-out bank keeps, while its resistance grows as that
     * shrinks; the usual end of life is four fifths and twice the resistance (from memory,
     * unverified), and a failure is far worse. Guess.
     */
    private static final double WORN_OUT = 0.2;

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<String> terminals() {
        return List.of("plus", "minus");
    }

    @Override
    public List<Element> elements() {
        return List.of(capacitor(1));
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                FailureMode.of("open", Faults.open("capacitor")).by(Damage.TORN, Damage.SCORCHED),
                FailureMode.of(
                        "shorted", Faults.open("capacitor"), Faults.shortBetween("plus", "minus")),
                FailureMode.of("capacitance-lost", new Put(capacitor(WORN_OUT))));
    }

    @Override
    public String entry() {
        return "plus";
    }

    @Override
    public String exit() {
        return "plus";
    }

    @Override
    public boolean takesMany(String terminal) {
        return true;
    }

    private Capacitor capacitor(double share) {
        return new Capacitor(
                "capacitor",
                "plus",
                "minus",
                rating.farads * share,
                ohms / share,
                rating.volts,
                rating.volts / leakAmps);
    }

    @Override
    public String detail() {
        return Detail.number(rating.farads) + " F, " + Detail.written(rating.volts, "V");
    }
}
