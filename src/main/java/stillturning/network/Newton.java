package stillturning.network;

/**
 * Newton's iteration on the nodal equations. All laws without hidden coupling are the gradient of
 * one function (the co-content), convex wherever no load draws more at less voltage; so where a
 * full step overshoots, the iteration goes as far along it as that function falls, which neither
 * diodes nor flat current limits can make cycle. A matrix is factored again only when the last one
 * stops serving.
 */
final class Newton {
    /** Kirchhoff's current law holds at least this well in any answer (A). */
    static final double PROMISED_AMPS = 1e-6;

    private static final double AIMED_AMPS = 1e-9;
    private static final double AIMED_VOLTS = 1e-10;
    private static final double NEARLY_UNLOADED = 0.01;
    private static final double MOST_STRETCH = 1024.0;
    private static final int MOST_STEPS = 40;
    private static final double LEAST_WIDEST_STEP = 1.0;

    /**
     * A step that leaves more than this part of the residual asks for new slopes. New slopes cost
     * as much as half a step, and with them the residual falls by its square.
     */
    private static final double SERVES = 1e-4;

    /** After a step as short as this, of which so little is left, the next is none. */
    private static final double SURE_VOLTS = AIMED_VOLTS / SERVES;

    /** After a step as short as this, a hundredth of the residual may be left. */
    private static final double SHORT_VOLTS = 10 * AIMED_VOLTS;

    private static final double SHRINKS = 0.01;

    /** From nothing so many straight networks are tried, until no line moves by more than this. */
    private static final int MOST_LINES = 6;

    private static final double LINE_VOLTS = 0.01;

    private final NodalEquations equations;
    private final StarMesh mesh;
    private final int reference;
    private int first;
    private double[] volts;
    private double[] trial;
    private final double[] excess;
    private final double[] step;
    private boolean factored;
    private double worst;
    private int steps;

    Newton(NodalEquations equations, Topology topology) {
        this.equations = equations;
        mesh = equations.mesh;
        reference = topology.steps();
        volts = new double[reference + 1];
        trial = new double[reference + 1];
        excess = new double[reference + 1];
        step = new double[reference + 1];
    }

    double[] volts() {
        return volts;
    }

    double[] excess() {
        return excess;
    }

    double worstAmps() {
        return worst;
    }

    int steps() {
        return steps;
    }

    /** Starts counting again; the next step factors if {@code conductancesChanged}. */
    void begin(boolean conductancesChanged) {
        steps = 0;
        first = equations.resistances.kept();
        factored &= !conductancesChanged;
    }

    /**
     * Forgets the voltages: finds those of the nearly unloaded network, then loads it, which meets
     * the highest of several points first; whether it arrived.
     */
    boolean convergeFromNothing() {
        equations.loadShare(NEARLY_UNLOADED);
        boolean held = startFromNothing() && converge();
        equations.loadShare(1.0);
        evaluate(volts);
        // where there are no loads, that was it
        factored &= worst <= AIMED_AMPS;
        return held && converge();
    }

    /** The voltages of the nearly unloaded network, as far as they are found. */
    double[] nearlyUnloaded() {
        equations.loadShare(NEARLY_UNLOADED);
        startFromNothing();
        equations.loadShare(1.0);
        expand();
        return volts.clone();
    }

    private boolean startFromNothing() {
        factored = false;
        equations.drawLikely();
        double moved = Double.POSITIVE_INFINITY;
        for (int n = 0; n < MOST_LINES && moved > LINE_VOLTS; n++) {
            if (!solveLines()) {
                return false;
            }
            moved = equations.drawNext(volts);
        }
        if (moved <= LINE_VOLTS) {
            return true;
        }
        // lines that jump to and fro between limits lead nowhere
        equations.drawLikely();
        return solveLines();
    }

    private boolean solveLines() {
        equations.guess(excess);
        if (!mesh.reduce(equations.siemens)) {
            return false;
        }
        steps++;
        mesh.solve(excess, volts);
        return true;
    }

    /** Steps from the present voltages until the equations hold; whether they do. */
    boolean converge() {
        boolean found = iterate();
        expand();
        if (found && worst > PROMISED_AMPS) {
            // so steep that the last digits of a voltage matter: only iterating over all evens them
            equations.resistances.keepAll();
            first = 0;
            factored = false;
            found = iterate();
        }
        return found;
    }

    private void expand() {
        if (first > 0) {
            equations.expand(volts, excess);
            measure(0);
        }
    }

    private boolean iterate() {
        evaluate(volts);
        int idle = 0;
        double last = Double.POSITIVE_INFINITY;
        for (int n = 0; n < MOST_STEPS; n++) {
            if (!factored && !factor()) {
                return false;
            }
            double size = direction();
            boolean settled = size <= AIMED_VOLTS || (idle > 0 && size > 0.5 * last);
            last = size;
            if (worst <= AIMED_AMPS && settled) {
                if (equations.stillLinearised(volts)) {
                    // without positive slopes it balances like a pencil on its tip
                    return factored;
                }
                factored = false;
                idle = 0;
                continue;
            }
            if (idle > 2 && worst <= PROMISED_AMPS) {
                return true;
            }
            double before = worst;
            if (!advance(n)) {
                return false;
            }
            boolean asLess = worst <= SERVES * before && size <= SURE_VOLTS;
            boolean asShorter = worst <= SHRINKS * before && size <= SHORT_VOLTS;
            if (factored && worst <= AIMED_AMPS && (asLess || asShorter)) {
                // the next step would be as much shorter as less is left
                return true;
            }
            idle = worst > 0.9 * before ? idle + 1 : 0;
            factored &= worst <= SERVES * before || equations.straightThroughout();
        }
        return false;
    }

    /**
     * Starts from laws without flat stretches and flattens them by and by, which ends the slow
     * zigzag between several limits at once; whether it arrived.
     */
    boolean convergeBySharpening() {
        equations.loadShare(NEARLY_UNLOADED);
        boolean held = startFromNothing();
        equations.loadShare(1.0);
        for (double leak = 1e3; held && leak > 1e-6; leak *= 0.25) {
            equations.soften(leak);
            factored = false;
            held = converge();
        }
        equations.soften(0.0);
        factored = false;
        return held && converge();
    }

    /** Takes over voltages found elsewhere; whether the equations hold there. */
    boolean holdsAt(double[] found) {
        System.arraycopy(found, 0, volts, 0, reference);
        equations.evaluate(volts, excess);
        measure(0);
        return worst <= PROMISED_AMPS;
    }

    private boolean factor() {
        equations.linearise(volts, false);
        factored = mesh.reduce(equations.siemens);
        if (factored) {
            return true;
        }
        equations.linearise(volts, true);
        return mesh.reduce(equations.siemens);
    }

    /** Finds where to go; returns the largest change of a net (V). */
    private double direction() {
        mesh.solve(excess, step);
        double size = largest(step, first, reference);
        if (size > LEAST_WIDEST_STEP) {
            shorten(size);
        }
        return size;
    }

    /** No step goes farther than nets can be apart. */
    private void shorten(double size) {
        double widest = LEAST_WIDEST_STEP + 2.0 * equations.widestVolts();
        if (size > widest) {
            for (int k = first; k < reference; k++) {
                step[k] *= widest / size;
            }
        }
    }

    /** Goes along the direction; whether the result is still a number. */
    private boolean advance(int turn) {
        double downhill = along();
        double far = 1.0;
        attempt(far);
        steps++;
        while (!factored && along() > 0.9 * downhill && far < MOST_STRETCH) {
            far *= 2.0;
            attempt(far);
        }
        double uphill = -along();
        double allowed = turn < 8 ? 0.9 : 0.4;
        if (uphill > allowed * downhill && !equations.straightThroughout()) {
            search(downhill, uphill, far);
        }
        double[] passed = volts;
        volts = trial;
        trial = passed;
        return !Double.isNaN(worst) && worst < Double.POSITIVE_INFINITY;
    }

    /** Finds the point of the way where it stops falling (Illinois, with a bisection in three). */
    private void search(double downhill, double uphill, double far) {
        double low = 0.0;
        double high = far;
        double fall = downhill;
        double rise = uphill;
        for (int n = 0; n < 60; n++) {
            double weight = n % 3 == 2 ? 0.5 : fall / (fall + rise);
            double t = low + (high - low) * weight;
            attempt(t);
            double here = along();
            if (Math.abs(here) <= 0.2 * downhill || t <= low || t >= high) {
                return;
            }
            if (here > 0.0) {
                low = t;
                fall = here;
                rise *= 0.5;
            } else {
                high = t;
                rise = -here;
                fall *= 0.5;
            }
        }
    }

    private void attempt(double t) {
        double[] here = volts;
        double[] there = trial;
        double[] way = step;
        for (int k = first; k < reference; k++) {
            there[k] = here[k] + t * way[k];
        }
        evaluate(there);
    }

    /** How fast the co-content falls along the step where the equations were evaluated last (W). */
    private double along() {
        double[] left = excess;
        double[] way = step;
        double sum = 0.0;
        for (int k = first; k < reference; k++) {
            sum += left[k] * way[k];
        }
        return sum;
    }

    private void evaluate(double[] at) {
        if (first > 0) {
            equations.evaluateLeft(at, excess);
        } else {
            equations.evaluate(at, excess);
        }
        measure(first);
    }

    private void measure(int from) {
        worst = largest(excess, from, reference + 1);
    }

    /** The largest of some numbers, whatever their sign; NaN if one is none. */
    private static double largest(double[] numbers, int begin, int end) {
        double most = 0.0;
        double sum = 0.0;
        for (int k = begin; k < end; k++) {
            double size = Math.abs(numbers[k]);
            sum += size;
            if (size > most) {
                most = size;
            }
        }
        // a comparison does not see what is no number
        return Double.isNaN(sum) ? sum : most;
    }
}
