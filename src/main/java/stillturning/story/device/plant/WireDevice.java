package stillturning.story.device.plant;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import stillturning.model.Circuit.Placed;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.Open;
import stillturning.network.law.Resistive;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.curve.TimeCurrentCurve.Memory;
import stillturning.parts.element.curve.Tripping;
import stillturning.parts.element.curve.WireHeating;
import stillturning.story.StoryEvent;
import stillturning.story.device.BranchDevice;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Racer;
import stillturning.story.device.Situation;
import stillturning.story.device.Stateful;
import stillturning.story.device.Watch;

/** An insulated wire: its insulation passes its limit, later its copper melts and is a gap. */
final class WireDevice implements BranchDevice, Racer {

    private final Placed placed;
    private final WireHeating wire;
    private final int branch;
    private final Situation now;
    private final BranchLaw whole;
    private final Heat insulation;
    private final Heat copper;
    private boolean spoiled;
    private boolean melted;

    WireDevice(Placed placed, Conductor conductor, WireHeating wire, int branch, Situation now) {
        this.placed = placed;
        this.wire = wire;
        this.branch = branch;
        this.now = now;
        this.whole = new Resistive(conductor.ohms());
        double celsius = now.celsius(placed.part());
        this.insulation = heat(wire.insulationAmps(celsius), wire.insulationEnergy(celsius));
        this.copper = heat(wire.meltingAmps(), wire.meltingEnergy(celsius));
        now.racers.add(this);
    }

    private Heat heat(double steadyAmps, double energy) {
        double constant = energy / (steadyAmps * steadyAmps);
        return new Heat(
                new Heat.Law(
                        steadyAmps, new Adiabatic(steadyAmps, constant), constant, Memory.METAL),
                branch,
                now);
    }

    /** Until it is as hot as its steady current would make it in the end (s). */
    private record Adiabatic(double steadyAmps, double constant) implements DoubleUnaryOperator {
        @Override
        public double applyAsDouble(double amps) {
            return -constant * Math.log1p(-steadyAmps / amps * (steadyAmps / amps));
        }
    }

    @Override
    public List<Stateful> heats() {
        return List.of(insulation, copper);
    }

    @Override
    public int branch() {
        return branch;
    }

    @Override
    public BranchLaw law() {
        return melted ? Open.CIRCUIT : whole;
    }

    @Override
    public boolean waits() {
        return false;
    }

    @Override
    public boolean gaveWay() {
        return spoiled || melted;
    }

    /** Copper melts at far more than insulation stands, so it is only watched where that is hot. */
    @Override
    public double margin() {
        if (melted) {
            return NOTHING_TO_WATCH;
        }
        double first = spoiled ? NOTHING_TO_WATCH : insulation.margin();
        return spoiled || insulation.heating() || copper.heating()
                ? Math.min(first, copper.margin())
                : first;
    }

    @Override
    public Watch watch() {
        if (melted) {
            return Watch.Plain.NOTHING;
        }
        return spoiled || copper.heating() ? Watch.Plain.OWN : insulation.watch();
    }

    @Override
    public void cross() {
        double amps = Math.abs(now.amps(branch));
        if (copper.margin() < 0 && copper.crossed()) {
            melted = true;
            now.opens(placed.part(), wire.secondsToMelt(amps, now.celsius(placed.part())));
            now.log(
                    StoryEvent.Kind.WIRE_MELTS,
                    placed.part(),
                    "melts at " + EventWords.amps(amps) + " and is a gap");
        } else if (!spoiled && insulation.margin() < 0 && insulation.crossed()) {
            spoiled = true;
            now.log(StoryEvent.Kind.WIRE_OVERHEATS, placed.part(), overheats(amps));
        }
    }

    private String overheats(double amps) {
        double seconds = wire.secondsToMelt(amps, now.celsius(placed.part()));
        String limit =
                String.format(
                        Locale.ROOT,
                        "passes its insulation's %.0f °C at %s, %s times its %s in a bundle; ",
                        WireHeating.INSULATION_CELSIUS,
                        EventWords.amps(amps),
                        EventWords.figures(amps / wire.bundleAmps()),
                        EventWords.amps(wire.bundleAmps()));
        return limit
                + (Double.isInfinite(seconds)
                        ? "would not melt below "
                                + EventWords.amps(wire.meltingAmps())
                                + " (Preece)"
                        : "would melt after " + EventWords.figures(seconds) + " s (Onderdonk)");
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof WireDevice then) {
            spoiled = then.spoiled;
            melted = then.melted;
            insulation.adopt(then.insulation);
            copper.adopt(then.copper);
        }
    }

    @Override
    public String part() {
        return placed.part();
    }

    /** The copper of a wire is drawn far more evenly than protectors are made: no tolerance. */
    @Override
    public double seconds(Tripping edge) {
        return spoiled ? Double.POSITIVE_INFINITY : insulation.seconds();
    }
}
