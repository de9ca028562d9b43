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

    /** Share of a step on either side of an event over which its margin is taken as straight. */
    private static final double NEAR = 1e-4;

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

    /** A way to look at a time from the start of the step. */
    private interface Look {
        void at(double seconds) throws NoOperatingPoint;
    }

    /**
     * Length of the step (s) just past the first event. Cheap looks inside the step find where it
     * must be; one correction by full trials then puts it there. Where that fails, full trials find
     * it alone.
     */
    private double firstEvent(double step, double marginThere) throws NoOperatingPoint {
        integrator.keep(step);
        double near = justPast(integrator::glance, step, marginThere);
        double fall = fallAround(near, step);
        integrator.attempt(near);
        double past = near + lowestMargin.getAsDouble() / fall + SECONDS / 2;
        if (fall > 0 && past > 0 && past < step) {
            integrator.attempt(past);
            double margin = lowestMargin.getAsDouble();
            if (margin < 0 && margin >= -2 * SECONDS * fall) {
                return past;
            }
        }
        integrator.attempt(step);
        double after = justPast(integrator::attempt, step, lowestMargin.getAsDouble());
        integrator.attempt(after);
        return after;
    }

    /** How fast the margin falls around a time (1/s), by two looks. */
    private double fallAround(double time, double step) throws NoOperatingPoint {
        double before = Math.max(0, time - NEAR * step);
        double after = Math.min(step, time + NEAR * step);
        integrator.glance(before);
        double marginBefore = lowestMargin.getAsDouble();
        integrator.glance(after);
        return (marginBefore - lowestMargin.getAsDouble()) / (after - before);
    }

    /**
     * Time just past the first event (s): regula falsi (Illinois rule), one bisection in three, and
     * trials just beside an end of the bracket once the event is known to be there.
     */
    private double justPast(Look look, double step, double marginThere) throws NoOperatingPoint {
        double before = 0;
        double after = step;
        double marginAfter = marginThere;
        integrator.rewind();
        double marginBefore = Math.max(lowestMargin.getAsDouble(), 0);
        int sideKept = 0;
        for (int n = 1; after - before > SECONDS; n++) {
            double share = n % 3 == 0 ? 0.5 : marginBefore / (marginBefore - marginAfter);
            double trial = within(before, before + (after - before) * share, after);
            look.at(trial);
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
        return after;
    }

    private static double within(double before, double trial, double after) {
        double beside = 0.6 * SECONDS;
        return Math.min(Math.max(trial, before + beside), after - beside);
    }
}
