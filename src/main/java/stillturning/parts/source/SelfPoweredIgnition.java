package stillturning.parts.source;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import stillturning.parts.Alteration.Put;
import stillturning.parts.Damage;
import stillturning.parts.FailureMode;
import stillturning.parts.Faults;
import stillturning.parts.Load;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.PartValues;
import stillturning.parts.Tag;
import stillturning.parts.element.Consumer;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Element;
import stillturning.parts.element.Tolerance;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.OfDimension;

/**
 * An ignition that makes its own current, as a magneto: it sparks unless its terminal {@code kill}
 * is joined to its {@code case}, and a lead that is broken leaves it live. It stands for the load
 * of the same name which the study calls self-powered.
 *
 * <p>That it needs a turning engine is left out: nothing but the engine hangs on it, and that asks
 * only whether it would spark.
 *
 * @param volts in the mean across its open kill terminal while it turns (V)
 * @param killAmps what flows through a kill lead that is grounded (A)
 */
public record SelfPoweredIgnition(Tag tag, double volts, double killAmps) implements Part {

    static final PartKind KIND =
            new PartKind(
                    "self-powered-ignition",
                    "self-powered ignition",
                    "self-powered ignitions",
                    32,
                    Values.class,
                    "ground its kill lead while the engine idles, the other one off");

    /** Puts the kind on the list. */
    @AutoService(PartKind.Listed.class)
    public static final class Listed implements PartKind.Listed {
        @Override
        public PartKind kind() {
            return KIND;
        }
    }

    /** What is known of a self-powered ignition. */
    @Describes("Sparks without a bus while the engine turns, unless its kill lead is grounded.")
    public record Values(
            @Describes("In the mean across its open kill terminal.")
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    double voltage,
            @Describes("Through its grounded kill lead.")
                    @OfDimension(value = Dimension.CURRENT, above = "0 A")
                    double killCurrent)
            implements PartValues {

        @Override
        public SelfPoweredIgnition part(Tag tag, PartSurroundings site) {
            return new SelfPoweredIgnition(tag, voltage, killCurrent);
        }
    }

    /** Share of its voltage below which it no longer sparks. Guess. */
    private static final double SPARKS = 0.5;

    /** A bad contact in its distributor, or damp, stops it as it stops any load. */
    private static final Damage[] STOPPED_BY = {Damage.TORN, Damage.SCORCHED, Damage.SOAKED};

    @Override
    public PartKind kind() {
        return KIND;
    }

    @Override
    public List<String> terminals() {
        return List.of("kill", "case");
    }

    @Override
    public List<Element> elements() {
        return List.of(sparking("kill"));
    }

    @Override
    public List<FailureMode> failureModes() {
        return List.of(
                FailureMode.of("stops-working", Faults.open(Load.WORK))
                        .whateverItsSupply()
                        .by(STOPPED_BY),
                FailureMode.of("kill-short", Faults.shortBetween("kill", "case"))
                        .whateverItsSupply(),
                FailureMode.of("kill-open", new Put(sparking("inside"))));
    }

    private Consumer sparking(String from) {
        double least = SPARKS * volts;
        Demand own = new Demand(Demand.DemandKind.SELF_POWERED, killAmps, volts);
        Tolerance grounded = new Tolerance(least, least, 0, 0, Double.POSITIVE_INFINITY, 0);
        return new Consumer(Load.WORK, from, "case", own, grounded);
    }

    @Override
    public String entry() {
        return "kill";
    }

    @Override
    public String exit() {
        return "kill";
    }

    @Override
    public Optional<String> across(String terminal) {
        return Optional.empty();
    }

    @Override
    public boolean takesMany(String terminal) {
        return terminal.equals("case");
    }
}
