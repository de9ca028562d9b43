package stillturning.reliability.asbuilt;

/**
 * What the log of a discharge says of a battery.
 *
 * @param capacity charge that it holds at 25 °C and its rated current (C)
 * @param ohms resistance full and at 25 °C (ohm)
 * @param charge state of charge at the first reading, 0 to 1; a little above 1 where it read higher
 *     than a full one
 * @param quality how well the battery of the program follows the log
 */
public record FittedBattery(
        FittedValue capacity, FittedValue ohms, FittedValue charge, Quality quality) {

    /** More than this between log and model, and it is another battery: of 12 V (V). A guess. */
    public static final double MOST_MISFIT_VOLTS = 0.1;

    /**
     * How well it fits.
     *
     * @param readings how many were held against the model
     * @param rmsVolts what is left over, root of the mean square (V)
     * @param widened what errors were multiplied by since neighbouring readings are off together
     * @param celsius temperature for which it holds (°C)
     * @param fits whether so little is left over that values may be concluded
     * @param together correlation of the errors of capacity and resistance, -1 to 1
     */
    public record Quality(
            int readings,
            double rmsVolts,
            double widened,
            double celsius,
            boolean fits,
            double together) {}
}
