package stillturning.network.law;

import java.util.Arrays;

/**
 * What of a charging current becomes gas, by the voltage across a battery: nothing up to the first
 * point, straight from point to point, and straight on beyond the last.
 */
public final class GasPath {

    /** Of a battery that never gasses. */
    public static final GasPath NEVER = straight(Double.POSITIVE_INFINITY, 1);

    private final double[] volts;
    private final double[] amps;

    /**
     * @param volts ascending (V), at least two
     * @param amps from 0, ascending (A), one for each voltage
     * @throws IllegalArgumentException if they are not, or do not pair up
     */
    public GasPath(double[] volts, double[] amps) {
        this.volts = volts.clone();
        this.amps = amps.clone();
        boolean rising = volts.length == amps.length && volts.length > 1 && amps[0] == 0;
        for (int i = 1; rising && i < volts.length; i++) {
            rising = volts[i] > volts[i - 1] && amps[i] > amps[i - 1];
        }
        if (!rising) {
            throw new IllegalArgumentException(
                    "gas does not rise from 0 A with the voltage: "
                            + Arrays.toString(volts)
                            + " V, "
                            + Arrays.toString(amps)
                            + " A");
        }
    }

    private GasPath(double from, double ohms) {
        volts = new double[] {from, from + ohms};
        amps = new double[] {0, 1};
    }

    /**
     * One resistance (ohm) from a voltage (V) on.
     *
     * @throws IllegalArgumentException if the resistance is too small, or the voltage no number
     */
    public static GasPath straight(double volts, double ohms) {
        BranchChecks.ohms(ohms);
        if (!(volts >= 0)) {
            throw new IllegalArgumentException("gas from " + volts + " V on: below 0 or no number");
        }
        return new GasPath(volts, ohms);
    }

    /** Current that becomes gas (A). */
    public double ampsAt(double across) {
        if (across <= volts[0]) {
            return 0;
        }
        int piece = piece(across);
        return amps[piece] + (across - volts[piece]) * siemens(piece);
    }

    /** Slope of that (S). */
    public double siemensAt(double across) {
        return across <= volts[0] ? 0 : siemens(piece(across));
    }

    private int piece(double across) {
        int piece = 0;
        while (piece < volts.length - 2 && across > volts[piece + 1]) {
            piece++;
        }
        return piece;
    }

    private double siemens(int piece) {
        return (amps[piece + 1] - amps[piece]) / (volts[piece + 1] - volts[piece]);
    }
}
