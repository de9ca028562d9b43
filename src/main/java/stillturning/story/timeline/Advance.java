package stillturning.story.timeline;

import java.util.List;
import stillturning.network.NoOperatingPoint;
import stillturning.story.device.Stateful;

/** Steps through time while nothing but charges and heats changes, up to the first event. */
final class Advance {

    /** Events are found to this (s). */
    private static final double SECONDS = 1e-9;

    /** Last digits by which a state must move to be seen to move. */
    private static final double DIGITS = 4;

    /** Where an event is likely, to this part of the step. */
    private static final double ROUGHLY = 0.01;

    /** A step may be this many times as long as the last. */
    private static final double MOST_GROWTH = 10;

    /** ... or this part of it. */
    private static final double LEAST_GROWTH = 0.1;

    /** A dip of a margin is seen if it lasts for at least one of so many parts of a step. */
    private static final int PARTS = 8;

    private final Integrator integrator;
    private final DipCheck dips;
    private final StepLimits stride;

    /** What served last, or would have served; steps longer than it are likely to fail (s). */
    private double servedSeconds = Double.POSITIVE_INFINITY;

    /** Goes to a time after the start (s) and leaves the network solved there. */
    private interface Look {
        void at(double seconds) throws NoOperatingPoint;
    }

    /**
     * @param dips reads along with the integrator
     */
    Advance(Integrator integrator, DipCheck dips, StepLimits stride) {
        this.integrator = integrator;
        this.dips = dips;
        this.stride = stride;
    }

    /**
     * One accepted step, cut short at the first event. The network is solved at its start, and no
     * event is due there. Returns the time reached (s).
     */
    double from(double seconds, double limit, List<Stateful> moving) throws NoOperatingPoint {
        integrator.begin(moving);
        double marginHere = Math.max(0, dips.lowest());
        double serves = Math.min(stride.longestSeconds(), servedSeconds);
        double step = Math.min(limit - seconds, Math.min(serves, guess(moving)));
        double bend = integrator.glance(step);
        double margin = dips.lowest();
        if (margin >= 0 && bend <= stride.tolerance() && nothingBetween(step)) {
            integrator.straighten(step);
            servedSeconds = Math.max(servedSeconds, MOST_GROWTH * step);
        } else {
            double likely =
                    margin >= 0
                            ? step
                            : firstEvent(integrator::glance, marginHere, step, ROUGHLY * step);
            step = bentStep(marginHere, likely);
        }
        return limit - seconds - step < SECONDS / 10 ? limit : seconds + step;
    }

    /** Length of a step (s) of at most this length, just past the first event. */
    private double bentStep(double marginHere, double most) throws NoOperatingPoint {
        double step = most;
        double error = integrator.attempt(step);
        while (!(error <= stride.tolerance()) && step > SECONDS) {
            step *= scale(error);
            servedSeconds = step;
            error = integrator.attempt(step);
        }
        servedSeconds = Math.max(servedSeconds, step * scale(error));
        double end = dips.doubtful(Integrator.STAGES - 1) ? firstFall(step) : step;
        double reached =
                dips.lowest() < 0 ? firstEvent(integrator::look, marginHere, end, SECONDS) : end;
        integrator.take(reached);
        return reached;
    }

    /** Whether all margins go straight from the start to the end of a step glanced at. */
    private boolean nothingBetween(double step) throws NoOperatingPoint {
        dips.read(1);
        if (!dips.doubtful(2)) {
            return true;
        }
        dips.read(2);
        integrator.glance(step / 2);
        dips.read(1);
        boolean straight = dips.lowest() >= 0 && dips.straight();
        integrator.glance(step);
        return straight;
    }

    /** Looks into a step part by part, up to the first with an event or to the end of it. */
    private double firstFall(double step) throws NoOperatingPoint {
        for (int part = 1; part < PARTS; part++) {
            double seconds = step * part / PARTS;
            integrator.look(seconds);
            if (dips.lowest() < 0) {
                return seconds;
            }
        }
        integrator.look(step);
        return step;
    }

    /** What to multiply a step of this error by. */
    private double scale(double error) {
        if (!Double.isFinite(error)) {
            return LEAST_GROWTH;
        }
        return Math.max(
                LEAST_GROWTH,
                Math.min(MOST_GROWTH, 0.9 * Math.pow(stride.tolerance() / error, 0.2)));
    }

    /**
     * A step in which the first state comes to the end of its way, and a little beyond: so far that
     * even what creeps has moved by more than its last digit.
     */
    private static double guess(List<Stateful> moving) {
        double step = Double.POSITIVE_INFINITY;
        for (Stateful state : moving) {
            double way = 1.02 * state.way() + DIGITS * Math.ulp(state.value());
            step = Math.min(step, way / Math.abs(state.perSecond()) + 2 * SECONDS);
        }
        return step;
    }

    /**
     * Length of the step (s) just past the first event, by the secant through the last two looks
     * where that stays in the bracket and serves, else by bisection.
     *
     * @param step to where the last look went, with an event on the way (s)
     * @param seconds how far past the event the step may end (s)
     */
    private double firstEvent(Look look, double marginHere, double step, double seconds)
            throws NoOperatingPoint {
        double before = 0;
        double after = step;
        double last = 0;
        double lastMargin = marginHere;
        double trial = step;
        double margin = dips.lowest();
        double wide = step;
        for (int n = 1; after - before > seconds; n++) {
            double perSecond = (margin - lastMargin) / (trial - last);
            if (trial == after && perSecond < 0 && margin > perSecond * seconds) {
                return after;
            }
            double next = trial - margin / perSecond + 0.3 * seconds;
            boolean serves = next > before && next < after && (n % 4 > 0 || after - before < wide);
            if (n % 4 == 0) {
                wide = (after - before) / 2;
            }
            last = trial;
            lastMargin = margin;
            trial = serves ? next : before + (after - before) / 2;
            look.at(trial);
            margin = dips.lowest();
            if (margin < 0) {
                after = trial;
            } else {
                before = trial;
            }
        }
        if (trial != after) {
            look.at(after);
        }
        return after;
    }
}
