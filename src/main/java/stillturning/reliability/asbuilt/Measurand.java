package stillturning.reliability.asbuilt;

/**
 * What is measured.
 *
 * @param step of the ground test, as {@link StepKey} names it; empty for what belongs to none
 * @param at part, load or bus; the part that is opened for what must happen
 */
public record Measurand(MeasurandKind kind, String step, String at) {

    /** What of it. */
    public enum MeasurandKind {
        /** Whether what must happen in a step happened: 1 or 0. */
        HAPPENED(0, 0),
        /** Voltage of a bus (V). */
        VOLTS(0, 0),
        /** Current that a source gives (A). */
        AMPS(0, 0),
        /** How long something is without supply (s). */
        OUT_SECONDS(0, 0),
        /** Charge that a battery holds, its age included, at 25 °C (C). */
        CAPACITY(0, 0.05),
        /** Resistance of a battery, its age included, full and at 25 °C (ohm). */
        BATTERY_OHMS(0.0005, 0.05),
        /** What a load draws at its nominal voltage (A). */
        LOAD_AMPS(0.05, 0.03),
        /** Resistance of a wire, a contact or a protector (ohm). */
        PATH_OHMS(0.0005, 0.10);

        private final double fixed;
        private final double share;

        /**
         * What an instrument of the workshop leaves open; of readings of a ground test that is in
         * their limits. Guesses.
         */
        MeasurandKind(double fixed, double share) {
            this.fixed = fixed;
            this.share = share;
        }

        double allowance(double value) {
            return fixed + share * Math.abs(value);
        }
    }

    /** Of no step. */
    public static Measurand of(MeasurandKind kind, String at) {
        return new Measurand(kind, "", at);
    }
}
