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

    /** One accepted step, cut short at the first event. Returns the time reached (s). */
    double from(double seconds, double limit, List<Stateful> moving) throws NoOperatingPoint {
        integrator.begin(moving);
        double step = Math.min(limit - seconds, Math.min(longestStepSeconds, guess(moving)));
        double error = integrator.attempt(step);
        while (error > TOLERANCE && step > SECONDS) {
            step *= Math.max(0.1, 0.9 * Math.pow(TOLERANCE / error, 0.2));
            error = integrator.attempt(step);
        }
        double margin = lowestMargin.getAsDouble();
        if (margin < 0) {
            step = firstEvent(step, margin);
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
     * Length of the step (s) just past the first event: regula falsi (Illinois rule), one bisection
     * in three, and trials just beside an end of the bracket once the event is known to be there.
     */
    private double firstEvent(double step, double marginThere) throws NoOperatingPoint {
        double before = 0;
        double after = step;
        double marginAfter = marginThere;
        integrator.rewind();
        double marginBefore = Math.max(lowestMargin.getAsDouble(), 0);
        int sideKept = 0;
        for (int n = 1; after - before > SECONDS; n++) {
            double share = n % 3 == 0 ? 0.5 : marginBefore / (marginBefore - marginAfter);
            double trial = within(before, before + (after - before) * share, after);
            integrator.attempt(trial);
            double margin = lowestMargin.getAsDouble();
            if (margin < 0) {
                after = trial;
                marginAfter = margin;
                marginBefore = sideKept == 1 ? marginBefore / 2 : marginBefore;
                sideKept = 1;
            } else {
                before = trial;
                marginBefore = margin;
                marginAfter = sideKept == -1 ? marginAfter / 2 : marginAfter;
                sideKept = -1;
            }
        }
        integrator.attempt(after);
        return after;
    }

    private static double within(double before, double trial, double after) {
        double beside = 0.6 * SECONDS;
        return Math.min(Math.max(trial, before + beside), after - beside);
    }
}
