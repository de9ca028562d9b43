package stillturning.model.wiring;

import stillturning.model.Installation.Nature;

/** Published limits, each with where it stands. */
public final class PublishedLimits {

    /** A drop is refused beyond this: the AC's own example accepts 0.504 V (table 11-7, read). */
    public static final double ROUNDING = 1.01;

    /**
     * Share of an alternator's limit that continuous loads may take where nothing watches over it.
     *
     * @see "FAA AC 43.13-1B change 1, 11-35 (p. 11-12), read"
     */
    public static final double ALTERNATOR_SHARE = 0.8;

    /**
     * Share of its rating that a protector without which the engine stops may carry: above, heat,
     * age and the spread of its class are left no room. Common practice, no published source.
     */
    public static final double PROTECTOR_SHARE = 0.8;

    /**
     * Share of the regulated voltage that main power wires may drop.
     *
     * @see "FAA-H-8083-31 ch. 9 and FAA-H-8083-32 ch. 4, read in a second source"
     */
    public static final double MAIN_POWER_SHARE = 0.02;

    /** Thinnest wire that stands handling. Common practice, no published source. */
    public static final String THINNEST = "22";

    private static final double SYSTEM_VOLTS = 14;
    private static final double CONTINUOUS_VOLTS = 0.5;
    private static final double INTERMITTENT_FACTOR = 2;
    private static final double HIGH_VOLTS = 20;

    private PublishedLimits() {}

    /**
     * Largest drop from bus to load and back (V): 0.5 V at 14 V, 1 V at 28 V; twice that for what
     * runs now and then.
     *
     * @see "FAA AC 43.13-1B, table 11-6: continuous read in a second source, intermittent from
     *     memory"
     */
    public static double dropVolts(double nominalVolts, boolean continuous) {
        double volts = CONTINUOUS_VOLTS * nominalVolts / SYSTEM_VOLTS;
        return continuous ? volts : INTERMITTENT_FACTOR * volts;
    }

    /**
     * Rating that contacts need, as a multiple of the current that they switch. The table has 12
     * and 28 V; the 12 V column serves systems of 14 V.
     *
     * @see "FAA AC 43.13-1B, table 11-4 (p. 11-17), read"
     */
    public static double contactFactor(Nature nature, double nominalVolts) {
        boolean high = nominalVolts >= HIGH_VOLTS;
        return switch (nature) {
            case LAMP -> high ? 8 : 5;
            case INDUCTIVE -> high ? 4 : 2;
            case RESISTIVE -> high ? 2 : 1;
            case MOTOR -> high ? 3 : 2;
        };
    }
}
