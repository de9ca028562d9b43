package stillturning.device;

import stillturning.element.TimeCurrentCurve;
import stillturning.element.Tripping;

/**
 * Heat of a protector: 0 cold, 1 opens. Above what it carries for ever it heats at the rate of its
 * published curve, which is a cold protector's; below, it cools.
 */
final class Tripper implements Stateful {

    /** Keeps a current exactly at the threshold from flipping the state to and fro. */
    private static final double HYSTERESIS = 1e-6;

    private final double ratedAmps;
    private final TimeCurrentCurve curve;
    private final double coolingSeconds;
    private final Situation now;
    private final int branch;
    private final Tripping edge;
    private boolean heating;
    private double heat;
    private double cooledAtSeconds;

    /**
     * @param edge where in the curve's band it is
     */
    Tripper(
            double ratedAmps,
            TimeCurrentCurve curve,
            double coolingSeconds,
            int branch,
            Tripping edge,
            Situation now) {
        this.ratedAmps = ratedAmps;
        this.curve = curve;
        this.coolingSeconds = coolingSeconds;
        this.branch = branch;
        this.edge = edge;
        this.now = now;
    }

    double margin() {
        double load = load();
        return heating ? Math.min(1 - heat, load - 1 + HYSTERESIS) : 1 - load;
    }

    /** The margin is used up. Returns whether the protector opens. */
    boolean crossed() {
        if (heating && heat >= 1) {
            return true;
        }
        if (heating) {
            cooledAtSeconds = now.seconds;
        } else {
            heat *= Math.exp(-(now.seconds - cooledAtSeconds) / coolingSeconds);
        }
        heating = !heating;
        return false;
    }

    /** It has opened, and heats no more. */
    void forget() {
        heating = false;
    }

    void adopt(Tripper other) {
        heat = other.heat;
        heating = other.heating;
        cooledAtSeconds = other.cooledAtSeconds;
    }

    @Override
    public double value() {
        return heat;
    }

    @Override
    public void value(double value) {
        heat = value;
    }

    @Override
    public double perSecond() {
        return heating ? 1 / curve.secondsToOpen(Math.abs(now.amps(branch)) / ratedAmps, edge) : 0;
    }

    @Override
    public double way() {
        return Math.max(0, 1 - heat);
    }

    @Override
    public boolean quick() {
        return heating;
    }

    /** Current against what is carried for ever. */
    private double load() {
        return Math.abs(now.amps(branch)) / (ratedAmps * curve.holdMultiple());
    }
}
