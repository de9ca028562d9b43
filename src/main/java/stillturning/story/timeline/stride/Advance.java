package stillturning.story.timeline.stride;

import java.util.List;
import stillturning.network.NoOperatingPoint;
import stillturning.story.device.Stateful;

/** Steps through time while nothing but charges and heats changes, up to the first event. */
public final class Advance {

    /** Events are found to this (s). */
    private static final double SECONDS = 1e-9;

    /** Last digits by which a state must move to be seen to move. */
    private static final double DIGITS = 4;

    /** A step may be this many times as long as the last. */
    private static final double MOST_GROWTH = 10;

    /** ... or this part of it. */
    private static final double LEAST_GROWTH = 0.1;

    /** A dip of a margin is seen if it lasts for at least one of so many parts of a step. */
    private static final int PARTS = 8;

    private final Integrator integrator;
    private final DipCheck dips;
    private final Bracket bracket;
    private final StepLimits stride;

    /** What served last, or would have served; steps longer than it are likely to fail (s). */
    private double servedSeconds = Double.POSITIVE_INFINITY;

    /**
     * @param dips reads along with the integrator
     */
    public Advance(Integrator integrator, DipCheck dips, StepLimits stride) {
        this.integrator = integrator;
        this.dips = dips;
        this.bracket = new Bracket(dips);
        this.stride = stride;
    }

    /**
     * One accepted step, cut short at the first event. The network is solved at its start, and no
     * event is due there. Returns the time reached (s).
     *
     * @param standing stores that stand still: one behind a diode may begin to give on the way
     */
    public double from(
            double seconds, double limit, List<Stateful> moving, List<? extends Stateful> standing)
            throws NoOperatingPoint {
        integrator.begin(moving, standing);
        double serves = Math.min(stride.longestSeconds(), servedSeconds);
        double left = limit - seconds;
        double step = Math.min(left, Math.min(serves, guess(moving)));
        boolean straight = step == left && goesStraight(step);
        double reached = straight ? straightStep(step) : bentStep(step);
        return left - reached < SECONDS / 10 ? limit : seconds + reached;
    }

    /** Whether all states and margins go straight from the start to the end of a step. */
    private boolean goesStraight(double step) throws NoOperatingPoint {
        double bend = integrator.glance(step);
        dips.read(1);
        if (!(dips.lowest(1) >= 0 && bend <= stride.tolerance())) {
            return false;
        }
        if (!dips.doubtful(2)) {
            return true;
        }
        dips.read(2);
        integrator.aside(step / 2);
        dips.read(1);
        return dips.lowest(1) >= 0 && dips.straight();
    }

    private double straightStep(double step) throws NoOperatingPoint {
        integrator.straighten(step);
        servedSeconds = Math.max(servedSeconds, MOST_GROWTH * step);
        return step;
    }

    /** Length of a step (s) of at most this length, just past the first event. */
    private double bentStep(double most) throws NoOperatingPoint {
        double step = most;
        double error = integrator.attempt(step);
        while (!(error <= stride.tolerance()) && step > SECONDS) {
            step *= scale(error);
            servedSeconds = step;
            error = integrator.attempt(step);
        }
        servedSeconds = Math.max(servedSeconds, step * scale(error));
        int places = stride.pair().places;
        boolean doubtful = dips.doubtful(places);
        double end = doubtful ? firstFall(step) : step;
        double lowest = doubtful ? dips.lowest() : dips.lowest(places - 1);
        double reached = lowest < 0 ? firstEvent(step, end) : end;
        integrator.take(reached);
        return reached;
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
                Math.min(
                        MOST_GROWTH,
                        0.9 * Math.pow(stride.tolerance() / error, stride.pair().growth)));
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
     * Length of the step (s) just past the first event, as parabolas through the margins foretell
     * it, where that serves, else by bisection.
     *
     * @param end to where the last look went, with an event on the way (s)
     */
    private double firstEvent(double step, double end) throws NoOperatingPoint {
        double enough = Math.max(SECONDS, stride.located() * step);
        int between = stride.pair().places - 2;
        bracket.begin(between, stride.pair().at(between) * step, end);
        double wide = end;
        boolean there = true;
        for (int n = 1; bracket.seconds() > enough; n++) {
            double foretold = bracket.foretold();
            if (there && bracket.endSeconds() - foretold < enough) {
                return bracket.endSeconds();
            }
            double next = foretold + 0.3 * enough;
            boolean serves = bracket.holds(next) && (n % 4 > 0 || bracket.seconds() < wide);
            if (n % 4 == 0) {
                wide = bracket.seconds() / 2;
            }
            double trial = serves ? next : bracket.middle();
            integrator.look(trial);
            there = bracket.narrow(trial);
        }
        if (!there) {
            integrator.look(bracket.endSeconds());
        }
        return bracket.endSeconds();
    }
}
