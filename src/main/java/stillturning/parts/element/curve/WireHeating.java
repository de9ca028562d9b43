package stillturning.parts.element.curve;

/**
 * How an insulated copper wire grows hot. Two limits, each of the first order: what a steady
 * current of this size just reaches, and what a much larger one reaches by its energy alone.
 *
 * @param circularMils conductor area (cmil)
 * @param bundleAmps continuous current in a full bundle at 70 °C for 150 °C wire (A)
 * @see "table 11-9 of FAA AC 43.13-1B (read) for the steady current of the insulation; ICEA form
 *     for its energy (read in a second source); Preece for the steady current that melts copper,
 *     Onderdonk for the energy (read)"
 */
public record WireHeating(double circularMils, double bundleAmps) {

    /** What the insulation of 150 °C wire stands (°C). */
    public static final double INSULATION_CELSIUS = 150;

    private static final double BUNDLE_CELSIUS = 70;
    private static final double COPPER_MELTS_CELSIUS = 1083;
    private static final double NO_RESISTANCE_CELSIUS = 234;

    /** A place as hot as the insulation stands leaves next to nothing, not less than nothing. */
    private static final double HOTTEST_CELSIUS = INSULATION_CELSIUS - 1;

    public WireHeating {
        Require.positive("wire", "conductor area (cmil)", circularMils);
        Require.positive("wire", "bundle current (A)", bundleAmps);
    }

    /** Steady current that just brings the insulation to its limit (A), in air of this (°C). */
    public double insulationAmps(double celsius) {
        double room = INSULATION_CELSIUS - Math.min(celsius, HOTTEST_CELSIUS);
        return bundleAmps * Math.sqrt(room / (INSULATION_CELSIUS - BUNDLE_CELSIUS));
    }

    /** Energy that does it when none is given off (A2 s). */
    public double insulationEnergy(double celsius) {
        double cold = Math.min(celsius, HOTTEST_CELSIUS) + NO_RESISTANCE_CELSIUS;
        return circularMils
                * circularMils
                * 0.0297
                * Math.log10((INSULATION_CELSIUS + NO_RESISTANCE_CELSIUS) / cold);
    }

    /**
     * Time in which a steady current brings the insulation of a cold wire to its limit.
     *
     * @param celsius temperature around it (°C)
     * @return time (s); infinite for a current that air cools well enough
     */
    public double secondsToSpoil(double amps, double celsius) {
        double steady = insulationAmps(celsius);
        double square = amps / steady * (amps / steady);
        return square <= 1
                ? Double.POSITIVE_INFINITY
                : insulationEnergy(celsius) / (steady * steady) * -Math.log1p(-1 / square);
    }

    /** Steady current that just melts it in air, by Preece (A). */
    public double meltingAmps() {
        double inches = Math.sqrt(circularMils) / 1000;
        return 10_244 * inches * Math.sqrt(inches);
    }

    /** Energy that melts it when none is given off, by Onderdonk (A2 s). */
    public double meltingEnergy(double celsius) {
        double cold = celsius + NO_RESISTANCE_CELSIUS;
        return circularMils
                * circularMils
                * Math.log10(1 + (COPPER_MELTS_CELSIUS - celsius) / cold)
                / 33;
    }

    /**
     * Time in which a steady current melts the cold wire.
     *
     * @param celsius temperature around it (°C)
     * @return time (s); infinite for a current that air cools well enough
     */
    public double secondsToMelt(double amps, double celsius) {
        double square = amps / meltingAmps() * (amps / meltingAmps());
        return square <= 1
                ? Double.POSITIVE_INFINITY
                : meltingEnergy(celsius)
                        / (meltingAmps() * meltingAmps())
                        * -Math.log1p(-1 / square);
    }
}
