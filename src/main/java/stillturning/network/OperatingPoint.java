package stillturning.network;

import java.util.Arrays;
import stillturning.network.law.BranchChecks;

/**
 * The whole steady answer of a network. Arrays are copied on the way in and out.
 *
 * @param volts voltage of each net against net 0 (V), or against its island's lowest net if it
 *     floats
 * @param amps current of each branch from {@code from} to {@code to} (A)
 * @param floating whether a net has no conducting path to net 0
 * @param worstKclAmps largest sum of currents at any net (A)
 * @param iterations steps taken
 */
@SuppressWarnings("ArrayRecordComponent") // copied at both doors; boxed lists would cost more
public record OperatingPoint(
        double[] volts, double[] amps, boolean[] floating, double worstKclAmps, int iterations) {
    /**
     * @throws IllegalArgumentException if the arrays do not cover the same nets
     */
    public OperatingPoint {
        if (volts.length != floating.length) {
            throw new IllegalArgumentException(
                    volts.length + " voltages but " + floating.length + " floating marks");
        }
        volts = volts.clone();
        amps = amps.clone();
        floating = floating.clone();
    }

    @Override
    public double[] volts() {
        return volts.clone();
    }

    @Override
    public double[] amps() {
        return amps.clone();
    }

    @Override
    public boolean[] floating() {
        return floating.clone();
    }

    /**
     * Voltage of a net (V).
     *
     * @throws IllegalArgumentException if the net is not in the network
     */
    public double volts(int net) {
        BranchChecks.index("net", net, volts.length);
        return volts[net];
    }

    /**
     * Current of a branch (A).
     *
     * @throws IllegalArgumentException if the branch is not in the network
     */
    public double amps(int branch) {
        BranchChecks.index("branch", branch, amps.length);
        return amps[branch];
    }

    /**
     * Whether a net has no conducting path to net 0.
     *
     * @throws IllegalArgumentException if the net is not in the network
     */
    public boolean floating(int net) {
        BranchChecks.index("net", net, volts.length);
        return floating[net];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof OperatingPoint that
                && Arrays.equals(volts, that.volts)
                && Arrays.equals(amps, that.amps)
                && Arrays.equals(floating, that.floating)
                && worstKclAmps == that.worstKclAmps
                && iterations == that.iterations;
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(volts) + Arrays.hashCode(amps);
    }

    @Override
    public String toString() {
        return "OperatingPoint" + Arrays.toString(volts) + Arrays.toString(amps);
    }
}
