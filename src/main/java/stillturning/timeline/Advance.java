package stillturning.timeline;

import java.util.List;
import java.util.function.DoubleSupplier;
import stillturning.network.NoOperatingPoint;

/** Steps through time while nothing but charges and heats changes, up to the first event. */
final class Advance {

    /** Charge or heat may be wrong by this much a step. */
    private static final double TOLERANCE = 1e-9;

    /** Events are found to this (s). */
    private static final double SECONDS = 1e-9;

    private final Integrator integrator;
    private final DoubleSupplier lowestMargin;
    private final double longestStepSeconds;

    /**
     * @param lowestMargin of all devices, where the last trial left them
     */
    Advance(Integrator integrator, DoubleSupplier lowestMargin, double longestStepSeconds) {
        this.integrator = integrator;
        this.lowestMargin = lowestMargin;
        this.longestStepSeconds = longestStepSeconds;
    }

    /**
     * One accepted step, cut short at the first event. The network is solved at its start, and no
     * event is due there. Returns the time reached (s).
     */
    double from(double seconds, double limit, List<Stateful> moving) throws NoOperatingPoint {
        double marginHere = Math.max(0, lowestMargin.getAsDouble());
        integrator.begin(moving);
        double step = Math.min(limit - seconds, Math.min(longestStepSeconds, guess(moving)));
        double error = integrator.attempt(step);
        while (error > TOLERANCE && step > SECONDS) {
            step *= Math.max(0.1, 0.9 * Math.pow(TOLERANCE / error, 0.2));
            error = integrator.attempt(step);
        }
        double margin = lowestMargin.getAsDouble();
        if (margin < 0) {
            step = firstEvent(marginHere, step, margin);
        }
        return limit - seconds - step < SECONDS / 10 ? limit : seconds + step;
    }

    /** A step in which the first state comes to the end of its way, and a little beyond. */
    private static double guess(List<Stateful> moving) {
        double step = Double.POSITIVE_INFINITY;
        for (Stateful state : moving) {
            step = Math.min(step, 1.02 * state.way() / Math.abs(state.perSecond()) + 2 * SECONDS);
        }
        return step;
    }

    /**
     * Length of the step (s) just past the first event, by the secant through the last two trials
     * where that stays in the bracket and serves, else by bisection.
     */
    private double firstEvent(double marginHere, double step, double marginThere)
            throws NoOperatingPoint {
        double before = 0;
        double after = step;
        double last = 0;
        double lastMargin = marginHere;
        double trial = step;
        double margin = marginThere;
        double wide = step;
        for (int n = 1; after - before > SECONDS; n++) {
            double perSecond = (margin - lastMargin) / (trial - last);
            if (trial == after && perSecond < 0 && margin > perSecond * SECONDS) {
                return after;
            }
            double next = trial - margin / perSecond + 0.3 * SECONDS;
            boolean serves = next > before && next < after && (n % 4 > 0 || after - before < wide);
            if (n % 4 == 0) {
                wide = (after - before) / 2;
            }
            last = trial;
            lastMargin = margin;
            trial = serves ? next : before + (after - before) / 2;
            integrator.attempt(trial);
            margin = lowestMargin.getAsDouble();
            if (margin < 0) {
                after = trial;
            } else {
                before = trial;
            }
        }
        if (trial != after) {
            integrator.attempt(after);
        }
        return after;
    }
}
