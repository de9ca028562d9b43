package stillturning.parts.element.curve;

import java.util.Map;

/**
 * What a battery takes in: up to a current that falls with the charge still missing its resistance
 * alone counts; as much again needs {@link #OVER_VOLTS} more; and beside that, the higher the
 * voltage, the more turns to gas or heat.
 *
 * @see "common practice, no published source; shares are guesses"
 */
public enum Acceptance {
    /** A one-hour current while flat, less as it fills; full it takes next to nothing but gas. */
    LEAD_ACID(1, 1, 0.0001, 15) {
        @Override
        public GasCurve gas(Overcharge law, double celsius) {
            return new GasCurve(law.voltsAt(celsius), Overcharge.shares());
        }

        @Override
        public Map<String, String> guesses() {
            return Overcharge.guesses();
        }
    },
    /**
     * Three times the one-hour current until a tenth is missing, then steeply less; its electrolyte
     * gives way above 4.2 V a cell (from memory, unverified).
     */
    LITHIUM_IRON_PHOSPHATE(3, 0.1, 0.001, 14.6) {
        @Override
        public GasCurve gas(Overcharge law, double celsius) {
            return new GasCurve(
                    new double[] {GIVES_WAY_VOLTS, GIVES_WAY_VOLTS + OVER_VOLTS},
                    new double[] {0, 1});
        }

        @Override
        public Map<String, String> guesses() {
            return Map.of();
        }
    };

    /** Over-potential that drives as much current again through a nominal 12 V battery (V). */
    public static final double OVER_VOLTS = 2;

    private static final double GIVES_WAY_VOLTS = 16.8;

    private final double most;
    private final double tapers;
    private final double floats;
    private final double mostVolts;

    /**
     * @param most current while flat, in one-hour currents
     * @param tapers share of the charge that is missing when the current begins to fall
     * @param floats current that is still accepted when full, in one-hour currents
     * @param mostVolts highest voltage that sheets charge a nominal 12 V battery with (V)
     */
    Acceptance(double most, double tapers, double floats, double mostVolts) {
        this.most = most;
        this.tapers = tapers;
        this.floats = floats;
        this.mostVolts = mostVolts;
    }

    /**
     * Highest voltage (V) that makers charge a nominal 12 V battery with, and for some hours only.
     *
     * @see "lead-acid: the sheet of a valve-regulated 12 V battery of 40 Ah, 14.7 to 15.0 V in
     *     cycles, read; lithium: 3.65 V a cell, four in series, sheets, read"
     */
    public double mostVolts() {
        return mostVolts;
    }

    /** Current (A) that a battery of this one-hour current (A) accepts at a charge. */
    public double ampsAt(double charge, double oneHourAmps) {
        double missing = Math.min(1, Math.max(0, 1 - charge) / tapers);
        return oneHourAmps * (floats + most * missing);
    }

    /** What a nominal 12 V battery turns to gas at a temperature (°C), in one-hour currents. */
    public abstract GasCurve gas(Overcharge law, double celsius);

    /** What is guessed of that, in words by what it is. */
    public abstract Map<String, String> guesses();
}
