package stillturning.model.wiring;

import stillturning.parts.Cable;

/**
 * Current that a wire carries continuously, by the method of AC 43.13-1B: the current of a single
 * wire in free air, times a factor for altitude, times one for the bundle.
 *
 * <p>The curves themselves could not be read. What stands here are smooth laws laid through the
 * points that could: free air through 47 A of No. 14 at 150 K (read) with the heat loss of a thin
 * wire, which also meets 21.5 A of No. 20 at 140 K (from memory); altitude straight between points;
 * bundle through 0.60 for 8 wires at 60 % (read) and 0.52 for 35 wires at 20 % (from memory).
 *
 * <p>Against the 51 currents of table 11-9 (read) the law lies up to 14 % below; six points lie
 * above the table: four by up to 5 %, and by 9 and 11 % the two that the table rounds to 3 and 4 A.
 * The table is no independent check of the altitude: all of it is at 60 000 ft, and the factor
 * there was inferred from one of its points.
 *
 * @see "FAA AC 43.13-1B change 1, p. 11-23 and 11-27, read; points from memory as said"
 */
public final class Ampacity {

    private static final double FREE_AIR_AMPS = 47;
    private static final double FREE_AIR_CIRCULAR_MILS = 3831;
    private static final double FREE_AIR_KELVINS = 150;

    /** From air at 20 °C to the 150 °C that airframe insulation stands. */
    private static final double BEST_KELVINS = 130;

    /** Through 47 A of No. 14 (read) and 21.5 A of No. 20 at 140 K (from memory). Computed here. */
    private static final double AREA_EXPONENT = 0.65;

    private static final double FOOT_METRES = 0.3048;

    /**
     * Feet and factor: 1.00 at sea level and 0.86 at 35 000 ft from memory, 0.91 at 20 000 ft read,
     * 0.78 at 60 000 ft inferred from table 11-9: its 7 A of No. 20 at 150 °C against about 17 A in
     * free air, from memory.
     */
    private static final double[][] ALTITUDE = {
        {0, 1.00}, {20_000, 0.91}, {35_000, 0.86}, {60_000, 0.78}
    };

    /** f = (1 + a u)^-b with u = loading (wires - 1), laid through both points. Computed here. */
    private static final double BUNDLE_SLOPE = 0.675;

    private static final double BUNDLE_EXPONENT = 0.38;

    /** Inferred temperature of no resistance, copper (°C): AC 43.13-1B, 11-66d(4), read. */
    private static final double ZERO_OHM_CELSIUS = 234.5;

    private static final double TABLE_CELSIUS = 20;

    private Ampacity() {}

    /**
     * Where a wire lies.
     *
     * @param ambientCelsius temperature around it (°C)
     * @param insulationCelsius what its insulation withstands continuously (°C)
     * @param wires in its bundle, itself counted
     * @param loading share of the bundle's capacity that is used, 0 to 1
     */
    public record WireSurroundings(
            double ambientCelsius,
            double insulationCelsius,
            double altitudeMetres,
            int wires,
            double loading) {
        double kelvins() {
            return insulationCelsius - ambientCelsius;
        }
    }

    /** Continuous current (A); 0 where it is hotter than the insulation stands. */
    public static double of(Cable cable, WireSurroundings place) {
        return freeAirAmps(cable, place.kelvins())
                * altitudeFactor(place.altitudeMetres)
                * bundleFactor(place.wires, place.loading);
    }

    /**
     * Current (A) that a wire carries in the best of places: alone, in free air at sea level and 20
     * °C, until it is as hot as airframe insulation stands, 150 °C. A protector of a larger rating
     * lets it burn wherever it lies, for a protector carries its rating without end.
     */
    public static double inBestPlace(Cable cable) {
        return freeAirAmps(cable, BEST_KELVINS);
    }

    /** Current of a single wire in free air (A) that warms it by so much (K). */
    static double freeAirAmps(Cable cable, double kelvins) {
        return FREE_AIR_AMPS
                * Math.pow(cable.circularMils() / FREE_AIR_CIRCULAR_MILS, AREA_EXPONENT)
                * Math.sqrt(Math.max(0, kelvins) / FREE_AIR_KELVINS);
    }

    /** What altitude (m) leaves of it. */
    static double altitudeFactor(double metres) {
        double feet = Math.max(0, metres / FOOT_METRES);
        for (int i = 1; i < ALTITUDE.length; i++) {
            double[] low = ALTITUDE[i - 1];
            double[] high = ALTITUDE[i];
            if (feet <= high[0]) {
                return low[1] + (high[1] - low[1]) * (feet - low[0]) / (high[0] - low[0]);
            }
        }
        return ALTITUDE[ALTITUDE.length - 1][1];
    }

    /** What a bundle leaves of it. */
    static double bundleFactor(int wires, double loading) {
        return Math.pow(1 + BUNDLE_SLOPE * loading * (wires - 1), -BUNDLE_EXPONENT);
    }

    /**
     * Temperature of a conductor (°C), estimated on the cautious side: T1 + (TR - T1) sqrt(I /
     * Imax).
     *
     * @see "AC 43.13-1B, p. 11-23: symbols read, form of the equation from memory"
     */
    public static double conductorCelsius(double amps, double mostAmps, WireSurroundings place) {
        if (mostAmps <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        return place.ambientCelsius + place.kelvins() * Math.sqrt(Math.abs(amps) / mostAmps);
    }

    /** Resistance at a temperature (°C), as a multiple of that at 20 °C. */
    public static double hotter(double celsius) {
        return (ZERO_OHM_CELSIUS + celsius) / (ZERO_OHM_CELSIUS + TABLE_CELSIUS);
    }
}
