package stillturning.story.device;

/**
 * What the margin of a device is while its state lasts, where that can be said once: so all margins
 * are read together, in the innermost loop of a story.
 */
public sealed interface Watch {

    /** Without numbers. */
    enum Plain implements Watch {
        /** Nothing is watched: {@link Device#NOTHING_TO_WATCH}. */
        NOTHING,
        /** The device has to be asked for its margin. */
        OWN
    }

    /**
     * How far a voltage is from its limit (V).
     *
     * @param eitherWay whether its sign does not count
     * @param sign 1 where it must be above its limit, -1 where below
     */
    record OfVolts(int from, int to, boolean eitherWay, double sign, double limitVolts)
            implements Watch {

        static final double ABOVE = 1;
        static final double BELOW = -1;

        /** The voltage between two nets must be at least this (V). */
        public static OfVolts atLeast(int from, int to, double volts) {
            return new OfVolts(from, to, false, ABOVE, volts);
        }

        /** The voltage between two nets must be at most this (V). */
        public static OfVolts atMost(int from, int to, double volts) {
            return new OfVolts(from, to, false, BELOW, volts);
        }

        /** The same whatever the sign of the voltage. */
        public OfVolts whateverSign() {
            return new OfVolts(from, to, true, sign, limitVolts);
        }
    }

    /** How far a current is from its limit, as a part of that: 1 where none flows. */
    record OfAmps(int branch, double perAmp) implements Watch {}
}
