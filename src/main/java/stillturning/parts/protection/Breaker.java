package stillturning.parts.protection;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stillturning.parts.Detail;
import stillturning.parts.FailureMode;
import stillturning.parts.InLine;
import stillturning.parts.Lever;
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

/**
 * A thermal breaker between {@code in} and {@code out}, rating in ampere; a pilot can pull and
 * reset it. Its class says how soon it opens: at twice the rating the fast and the ordinary class
 * lie a factor of 12 to 80 apart.
 */
public record Breaker(Tag tag, double ratedAmps, double ohms, TimeCurrentCurve curve)
        implements InLine {

    static final PartKind KIND =
            new PartKind(
                    "breaker",
                    "breaker",
                    "breakers",
                    110,
                    Values.class,
                    "pull it and measure on both sides");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a breaker. */
    @Describes("Opens on too much current; the pilot can pull it and push it in again.")
    public record Values(
            @Example("5 A (guess)") @OfDimension(value = Dimension.CURRENT, above = "0 A")
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
        public Breaker part(Tag tag, PartSurroundings site) {
            return new Breaker(tag, rating, drop / rating, curve.published());
        }

        @Override
        public Optional<Protection> protection() {
            return Optional.of(new Protection(Chart.BREAKER, rating));
        }

        @Override
        public OptionalDouble interruptAmps() {
            return interrupts.map(OptionalDouble::of).orElse(OptionalDouble.empty());
        }
    }

    /** A bimetal cools in about a minute. Common practice, no published source. */
    private static final double COOLING_SECONDS = 60;

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<Element> elements() {
        return List.of(breaker());
    }

    @Override
    public List<FailureMode> failureModes() {
        return ProtectorModes.of(breaker(), "bench test of its trip");
    }

    private Protector breaker() {
        return new Protector("breaker", "in", "out", ohms, ratedAmps, curve, COOLING_SECONDS, true);
    }

    @Override
    public List<Lever> levers() {
        return List.of(Lever.of(id(), "breaker", Lever.PULLED));
    }

    @Override
    public Optional<Protection> protection(String terminal) {
        return Optional.of(new Protection(Chart.BREAKER, ratedAmps));
    }

    @Override
    public String detail() {
        return Detail.amps(ratedAmps) + ", " + curve.words();
    }

    @Override
    public List<Symbol> symbols() {
        return Symbol.ways(this, Figure.BREAKER, Detail.written(ratedAmps, "A"));
    }
}
