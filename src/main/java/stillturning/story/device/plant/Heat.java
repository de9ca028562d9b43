package stillturning.story.device.plant;

import java.util.function.DoubleUnaryOperator;
import stillturning.parts.element.curve.TimeCurrentCurve.Memory;
import stillturning.story.device.Situation;
import stillturning.story.device.Stateful;
import stillturning.story.device.Watch;

/**
 * Heat of the first order: 0 where no current flows, 1 where something gives way.
 *
 * <p>Above what is carried continuously it moves so that a cold one gives way after the time of its
 * law; what a current before has warmed shortens that time. At or below, it goes towards the square
 * of the load, with the current that flowed after the last event: exactly, and without steps.
 *
 * <p>What is carried forward is the share of the way from the last event to giving way, as a steady
 * current would go it. A steady current therefore moves it straight, however the heat itself bends.
 */
final class Heat implements Stateful {

    /**
     * How something grows warm.
     *
     * @param holdAmps largest current that is carried continuously (A)
     * @param coldSeconds time in which a steady current above that makes a cold one give way (s)
     * @param coolingSeconds time constant at or below it (s)
     */
    record Law(
            double holdAmps,
            DoubleUnaryOperator coldSeconds,
            double coolingSeconds,
            Memory memory) {}

    /** Keeps a current exactly at the threshold from flipping the state to and fro. */
    private static final double HYSTERESIS = 1e-6;

    /**
     * Where the present current goes this many times faster to giving way than the one by which the
     * way is measured, the share runs away and no step can follow it.
     */
    private static final double MOST_HASTE = 100;

    /** What is as good as 1 must stay this much off, where the next step divides by the rest. */
    private static final double SPECK = 1e-12;

    private final Law law;
    private final int branch;
    private final Situation now;
    private final double perAmp;
    private final boolean counts;

    private final Watch cool;

    private boolean heating;

    /** Heat when heating began, at the last event, and what it goes towards while it cools. */
    private double before;

    private double heat;
    private double rest;
    private double sinceSeconds;

    /** Square of the load at the last event, and how much the way bends with it. */
    private double square;

    private double bend;
    private double share;

    Heat(Law law, int branch, Situation now) {
        this.law = law;
        this.branch = branch;
        this.now = now;
        this.perAmp = 1 / law.holdAmps;
        this.cool = new Watch.OfAmps(branch, perAmp);
        this.counts = law.memory == Memory.COUNTER;
    }

    boolean heating() {
        return heating;
    }

    /** Heat when the present heating began. */
    double before() {
        return before;
    }

    double margin() {
        double load = load();
        return heating ? Math.min(1 - share, load - 1 + HYSTERESIS) : 1 - load;
    }

    Watch watch() {
        return heating ? Watch.Plain.OWN : cool;
    }

    /** The margin is used up. Returns whether it gives way. */
    boolean crossed() {
        if (heating && share >= 1) {
            stop(1);
            return true;
        }
        if (heating) {
            stop(heat());
        } else {
            cool();
            heating = true;
            before = heat;
            start();
        }
        return false;
    }

    /** Heats no more, and cools from this. */
    private void stop(double from) {
        heating = false;
        heat = from;
        rest = 0;
        sinceSeconds = now.seconds;
    }

    private void start() {
        double load = load();
        heat = Math.min(heat, 1 - SPECK);
        square = Math.max(load * load, 1 + SPECK);
        bend = Math.log((square - heat) / (square - 1));
        share = 0;
    }

    @Override
    public void settled() {
        if (!heating) {
            cool();
            rest = restAt(load());
        } else if (load() > 1) {
            heat = heat();
            start();
        }
    }

    /** Measures the rest of the way by the present current, where that is far from the old one. */
    @Override
    public void stepped() {
        if (!heating || counts) {
            return;
        }
        double load = load();
        double reached = heat();
        if (load * load - reached > MOST_HASTE * (square - reached)) {
            heat = reached;
            start();
        }
    }

    private void cool() {
        if (heat != rest && now.seconds > sinceSeconds) {
            heat =
                    rest
                            + (heat - rest)
                                    * Math.exp((sinceSeconds - now.seconds) / law.coolingSeconds);
        }
        sinceSeconds = now.seconds;
    }

    /**
     * What a steady load has come to; more than can be carried continuously begins with the flight.
     */
    private double restAt(double load) {
        return counts || load > 1 ? 0 : load * load;
    }

    /** In balance with what flows in another run, where it may stand elsewhere in its band. */
    void adopt(Heat healthy) {
        heat = restAt(Math.abs(healthy.now.amps(healthy.branch)) * perAmp);
        rest = heat;
        sinceSeconds = now.seconds;
    }

    /** Time from cold to giving way at the present current, less what the heat before saves (s). */
    double seconds() {
        double load = load();
        return heating && load > 1
                ? seconds(law.coldSeconds.applyAsDouble(Math.abs(now.amps(branch))), load, before)
                : Double.POSITIVE_INFINITY;
    }

    /**
     * The same for any such heat.
     *
     * @param coldSeconds from cold (s)
     * @param load above 1
     */
    double seconds(double coldSeconds, double load, double from) {
        if (counts || Double.isInfinite(coldSeconds)) {
            return coldSeconds * (1 - from);
        }
        double steady = load * load;
        return coldSeconds * Math.log((steady - from) / (steady - 1)) / -Math.log1p(-1 / steady);
    }

    private double heat() {
        return counts
                ? heat + (1 - heat) * share
                : square - (square - heat) * Math.exp(-bend * share);
    }

    @Override
    public double value() {
        return share;
    }

    @Override
    public void value(double value) {
        share = value;
    }

    @Override
    public double perSecond() {
        double load = load();
        if (!(heating && load > 1)) {
            return 0;
        }
        double coldSeconds = law.coldSeconds.applyAsDouble(Math.abs(now.amps(branch)));
        if (counts) {
            return 1 / (coldSeconds * (1 - heat));
        }
        double steady = load * load;
        double reached = heat();
        return (steady - reached)
                / (square - reached)
                * (-Math.log1p(-1 / steady) / (coldSeconds * bend));
    }

    @Override
    public double way() {
        return Math.max(0, 1 - share);
    }

    @Override
    public boolean quick() {
        return heating;
    }

    private double load() {
        return Math.abs(now.amps(branch)) * perAmp;
    }
}
