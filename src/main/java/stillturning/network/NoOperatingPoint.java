package stillturning.network;

import java.util.Locale;

/** The equations of a network were not solved; names where and how far off. */
public final class NoOperatingPoint extends Exception {
    private static final long serialVersionUID = 1L;

    private final int net;
    private final int branch;
    private final double residualAmps;

    NoOperatingPoint(int net, int branch, double residualAmps) {
        super(
                String.format(
                        Locale.ROOT,
                        "no operating point: currents at net %d are off by %.3g A, most of all"
                                + " through branch %d; check that branch's limits and demands",
                        net,
                        residualAmps,
                        branch));
        this.net = net;
        this.branch = branch;
        this.residualAmps = residualAmps;
    }

    /** The net whose currents add up worst. */
    public int net() {
        return net;
    }

    /** The branch at that net with the strongest current of its own making, or -1. */
    public int branch() {
        return branch;
    }

    /** What is left over at that net in the last attempt (A); may be NaN. */
    public double residualAmps() {
        return residualAmps;
    }
}
