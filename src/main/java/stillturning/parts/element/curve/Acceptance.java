package stillturning.parts.element.curve;

/**
 * What a battery takes in: up to a current that falls with the charge still missing its resistance
 * alone counts; as much again needs {@link #OVER_VOLTS} more; and above a voltage the surplus turns
 * to gas or heat.
 *
 * @see "common practice, no published source; voltages from memory, unverified; shares are guesses"
 */
public enum Acceptance {
    /** A one-hour current while flat, less as it fills; 2.4 V a cell is where it gasses. */
    LEAD_ACID(1, 1, 14.4),
    /**
     * Three times the one-hour current until a tenth is missing, then steeply less; its electrolyte
     * gives way above 4.2 V a cell.
     */
    LITHIUM_IRON_PHOSPHATE(3, 0.1, 16.8);

    /** Float current of a full battery against its one-hour current. */
    private static final double FLOAT = 0.001;

    /** Over-potential that drives as much current again through a nominal 12 V battery (V). */
    public static final double OVER_VOLTS = 2;

    private final double most;
    private final double tapers;
    private final double gassingVolts;

    /**
     * @param most current while flat, in one-hour currents
     * @param tapers share of the charge that is missing when the current begins to fall
     */
    Acceptance(double most, double tapers, double gassingVolts) {
        this.most = most;
        this.tapers = tapers;
        this.gassingVolts = gassingVolts;
    }

    /** Current (A) that a battery of this one-hour current (A) accepts at a charge. */
    public double ampsAt(double charge, double oneHourAmps) {
        double missing = Math.min(1, Math.max(0, 1 - charge) / tapers);
        return oneHourAmps * (FLOAT + most * missing);
    }

    /** Voltage (V) from which a nominal 12 V battery gasses. */
    public double gassingVolts() {
        return gassingVolts;
    }
}
