package stillturning.parts.element.curve;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * What a full lead-acid battery turns to gas, against its one-hour current, by voltage: an
 * exponential law (Tafel), drawn straight between points. Measured up to a tenth of the one-hour
 * current; what is above follows the same line. Which of the laws a battery follows is not known
 * without measuring it.
 *
 * @see "0.20 V a decade and cell: Kunze, TELESCON 1994, abstract, read; 0.5 % of the one-hour
 *     current at 14.1 V, and 5 % at 15.6 V: manuals of the sealed aircraft and the deep-cycle
 *     class, read; 0.209 V a decade, 10 mA per 100 Ah at 2.23 V: J. Power Sources 168 (2007) 66,
 *     read in a second source; the points are computed from these"
 */
public enum Overcharge {
    /** Through 0.5 % at 14.1 V with 0.20 V a decade and cell: a runaway is held lowest. */
    EARLY(0.200, 13.26, 14.10, 14.82, 15.30, 15.66, 16.02, 16.50, 16.86, 17.22),
    /** Through 0.5 % at 14.1 V and 5 % at 15.6 V: 0.25 V a decade and cell. */
    TYPICAL(0.250, 13.1, 14.1, 15.0, 15.6, 16.05, 16.5, 17.1, 17.55, 18.0),
    /** New, with liquid acid: a runaway is held highest. */
    LATE(0.209, 14.35, 15.22, 15.98, 16.48, 16.86, 17.24, 17.74, 18.11, 18.49);

    /** Of the one-hour current; the first where the tangent at the second comes to nothing. */
    private static final double[] SHARES = {0, 0.001, 0.005, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2};

    private static final int CELLS = 6;

    /** Share of the one-hour current that a battery turns to gas and back without harm. A guess. */
    public static final double HARMLESS_SHARE = 0.05;

    /**
     * Share of its capacity that it bears as gas: at a one-hour current that is half an hour and
     * some 70 K. A guess.
     */
    public static final double BORNE_SHARE = 0.5;

    /**
     * Fall of these voltages of six cells with temperature (V/K): between 5.4 mV a cell (0.06 per
     * K, as above) and 9.4 mV (twice the current every 8 K, an installation manual, read).
     */
    private static final double VOLTS_PER_KELVIN = -0.0074 * CELLS;

    @SuppressWarnings("ImmutableEnumChecker") // never leaves, never written
    private final double[] volts;

    /**
     * @param decade voltage (V) of a cell that makes ten times the gas
     * @param points voltages (V) of six cells at 25 °C, one for each share but the first
     */
    Overcharge(double decade, double... points) {
        volts = new double[points.length + 1];
        volts[0] = points[0] - CELLS * decade / Math.log(10);
        System.arraycopy(points, 0, volts, 1, points.length);
    }

    /** Voltages (V) of a nominal 12 V battery at a temperature (°C). */
    double[] voltsAt(double celsius) {
        double shift = VOLTS_PER_KELVIN * (celsius - ByTemperature.REFERENCE_CELSIUS);
        double[] shifted = new double[volts.length];
        for (int i = 0; i < volts.length; i++) {
            shifted[i] = volts[i] + shift;
        }
        return shifted;
    }

    /** What is guessed here, in words by what it is, for lists of what a result rests on. */
    static Map<String, String> guesses() {
        Map<String, String> guesses = new LinkedHashMap<>();
        guesses.put(
                "law by which a full lead-acid battery gasses",
                "typical: "
                        + words(TYPICAL, 0.005)
                        + ", "
                        + words(TYPICAL, 0.05)
                        + "; where a battery gasses, others are tried: 5 % at "
                        + volts(EARLY, 0.05)
                        + " and at "
                        + volts(LATE, 0.05));
        guesses.put(
                "fall of its gassing voltages with temperature",
                String.format(
                        Locale.ROOT,
                        "typical: %.1f mV/K a cell",
                        -1000 * VOLTS_PER_KELVIN / CELLS));
        guesses.put(
                "gassing that does a lead-acid battery no harm",
                percent(HARMLESS_SHARE, "up to", "of the one-hour current"));
        guesses.put(
                "gas that ends a lead-acid battery",
                percent(BORNE_SHARE, "as much as", "of its capacity"));
        return guesses;
    }

    private static String percent(double share, String before, String of) {
        return String.format(Locale.ROOT, "%s %.0f %% %s", before, 100 * share, of);
    }

    private static String words(Overcharge law, double share) {
        return String.format(
                Locale.ROOT,
                "%.1f %% of the one-hour current at %s",
                100 * share,
                volts(law, share));
    }

    private static String volts(Overcharge law, double share) {
        return String.format(Locale.ROOT, "%.1f V", law.volts[Arrays.binarySearch(SHARES, share)]);
    }

    /** Currents that go with them, in one-hour currents. */
    static double[] shares() {
        return SHARES.clone();
    }
}
