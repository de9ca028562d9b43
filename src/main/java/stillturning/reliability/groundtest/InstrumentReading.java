package stillturning.reliability.groundtest;

/**
 * What an instrument must show.
 *
 * @param at bus, source or load
 * @param predicted as played at the printed pace
 * @param low least that it may show, allowance included
 * @param high most that it may show, allowance included
 */
public record InstrumentReading(
        MeasuredQuantity of, String at, double predicted, double low, double high) {

    /** What is measured. */
    public enum MeasuredQuantity {
        /** Voltage of a bus against the aircraft's minus (V). */
        VOLTS(0.1, 0.01),
        /** Current that a source gives, negative while it takes in (A). */
        AMPS(0.5, 0.05),
        /** How long a load or the engine is without supply (s). */
        OUT_SECONDS(0.05, 0.2);

        private final double fixed;
        private final double share;

        /**
         * What an instrument of the workshop and what is stated of loads leave open. Guesses.
         *
         * @param share of the value
         */
        MeasuredQuantity(double fixed, double share) {
            this.fixed = fixed;
            this.share = share;
        }

        /** How far a reading may be off a value. */
        public double allowance(double value) {
            return fixed + share * Math.abs(value);
        }
    }

    /** One that was played twice, at the printed pace and slowly. */
    static InstrumentReading of(MeasuredQuantity of, String at, double quick, double slow) {
        double least = Math.min(quick, slow);
        double most = Math.max(quick, slow);
        double low = least - of.allowance(least);
        return new InstrumentReading(
                of,
                at,
                quick,
                of == MeasuredQuantity.OUT_SECONDS ? Math.max(0, low) : low,
                most + of.allowance(most));
    }

    /** Whether what was measured keeps to it. */
    public boolean holds(double measured) {
        return measured >= low && measured <= high;
    }
}
