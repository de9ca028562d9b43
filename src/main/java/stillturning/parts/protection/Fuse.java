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
import stillturning.parts.element.curve.TimeCurrentCurve;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.Example;
import stillturning.quantity.field.OfDimension;

/** A fuse between {@code in} and {@code out}, rating in ampere; a pilot cannot replace it. */
public record Fuse(Tag tag, double ratedAmps, double ohms, TimeCurrentCurve curve)
        implements InLine {

    /** One spare fuse of each rating, or half of them. 14 CFR 23.1357, read in a second source. */
    private static final double SPARE_SHARE = 0.5;

    static final PartKind KIND =
            new PartKind("fuse", "fuse", "fuses", 100, Values.class, "measure across it")
                    .withSpares(SPARE_SHARE);

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a fuse. */
    @Describes("Melts on too much current; not to be set again in flight.")
    public record Values(
            @Example("10 A (guess)") @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    double rating,
            @Describes("Voltage across it at its rating.")
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    double drop,
            ProtectorCurves.Curve curve,
            @Describes("Largest current that it interrupts.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    Optional<Double> interrupts)
            implements PartValues {

        @Override
        public Fuse part(Tag tag, PartSurroundings site) {
            return new Fuse(tag, rating, drop / rating, curve.published());
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

    /** A fuse element is thin and cools fast. Common practice, no published source. */
    private static final double COOLING_SECONDS = 10;

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<Element> elements() {
        return List.of(fuse());
    }

    @Override
    public List<FailureMode> failureModes() {
        return ProtectorModes.of(fuse(), "look at its type and rating");
    }

    private Protector fuse() {
        return new Protector("fuse", "in", "out", ohms, ratedAmps, curve, COOLING_SECONDS, false);
    }

    @Override
    public Optional<Protection> protection(String terminal) {
        return Optional.of(new Protection(Chart.FUSE, ratedAmps));
    }

    @Override
    public String detail() {
        return Detail.amps(ratedAmps) + ", " + curve.source();
    }

    @Override
    public List<Symbol> symbols() {
        return Symbol.ways(this, Figure.FUSE, Detail.written(ratedAmps, "A"));
    }
}
