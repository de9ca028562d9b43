package stillturning.parts.protection;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stillturning.parts.Detail;
import stillturning.parts.FailureMode;
import stillturning.parts.InLine;
import stillturning.parts.PartKind;
import stillturning.parts.PartValues;
import stillturning.parts.Protection;
import stillturning.parts.Protection.Chart;
import stillturning.parts.Symbol;
import stillturning.parts.Symbol.Figure;
import stillturning.parts.Tag;
import stillturning.parts.element.Element;
import stillturning.parts.element.Protector;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.Example;
import stillturning.quantity.field.OfDimension;

/**
 * The slow fuse of heavy leads, bolted between {@code in} and {@code out}: it bears what a starter
 * or an alternator draws for seconds, and melts where the lead is shorted.
 *
 * @param ratedAmps rating (A)
 * @param ohms resistance (ohm)
 */
public record CurrentLimiter(Tag tag, double ratedAmps, double ohms) implements InLine {

    static final PartKind KIND =
            new PartKind(
                    "current-limiter",
                    "current limiter",
                    "current limiters",
                    101,
                    Values.class,
                    "measure across it");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a current limiter. */
    @Describes("Slow bolted fuse of a heavy lead; melts on a short.")
    public record Values(
            @Example("80 A (guess)") @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    double rating,
            @Describes("Voltage across it at its rating.")
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    double drop,
            @Describes("Largest current that it interrupts.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    Optional<Double> interrupts)
            implements PartValues {

        @Override
        public CurrentLimiter part(Tag tag, PartSurroundings site) {
            return new CurrentLimiter(tag, rating, drop / rating);
        }

        @Override
        public Optional<Protection> protection() {
            return Optional.of(new Protection(Chart.FUSE, rating));
        }

        @Override
        public OptionalDouble interruptAmps() {
            return interrupts.map(OptionalDouble::of).orElse(OptionalDouble.empty());
        }
    }

    /** A bolted strip is thicker than that of a blade fuse and cools slower. A guess. */
    private static final double COOLING_SECONDS = 30;

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
        return ProtectorModes.of(strip(), "look at its type and rating");
    }

    private Protector strip() {
        return new Protector(
                "strip",
                entry(),
                exit(),
                ohms,
                ratedAmps,
                ProtectorCurves.HIGH_CURRENT_FUSE,
                COOLING_SECONDS,
                false);
    }

    @Override
    public Optional<Protection> protection(String terminal) {
        return Optional.of(new Protection(Chart.FUSE, ratedAmps));
    }

    @Override
    public String detail() {
        return Detail.amps(ratedAmps);
    }

    @Override
    public List<Symbol> symbols() {
        return Symbol.ways(this, Figure.FUSE, Detail.written(ratedAmps, "A"));
    }
}
