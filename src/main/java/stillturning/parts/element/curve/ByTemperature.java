package stillturning.parts.element.curve;

/**
 * What cold and warmth do to a battery: straight lines between points, level beyond them, 1 at 25
 * °C.
 *
 * @see "factors and coefficient: shapes of maker's curves, from memory, unverified"
 */
@SuppressWarnings("ImmutableEnumChecker") // the arrays never leave and are never written
public enum ByTemperature {
    /** Acid that is cold is slow; its rest voltage rises by 0.2 mV a kelvin and cell. */
    LEAD_ACID(
            new double[] {-40, -20, 0, 25, 40},
            new double[] {0.25, 0.55, 0.80, 1, 1.05},
            new double[] {3.5, 2.2, 1.4, 1, 0.9},
            6 * 0.2e-3),
    /** Its rest voltage rises at some charges and falls at others, so it is left where it is. */
    LITHIUM_IRON_PHOSPHATE(
            new double[] {-40, -20, 0, 25, 45},
            new double[] {0.20, 0.60, 0.85, 1, 1.02},
            new double[] {12, 5, 2, 1, 0.7},
            0);

    /** Temperature at which everything is stated (°C). */
    public static final double REFERENCE_CELSIUS = 25;

    private final double[] celsius;
    private final double[] capacity;
    private final double[] resistance;
    private final double voltsPerKelvin;

    ByTemperature(double[] celsius, double[] capacity, double[] resistance, double voltsPerKelvin) {
        this.celsius = celsius;
        this.capacity = capacity;
        this.resistance = resistance;
        this.voltsPerKelvin = voltsPerKelvin;
    }

    /** Capacity at a temperature (°C) as a multiple of the stated one. */
    public double capacityAt(double celsius) {
        return along(capacity, celsius);
    }

    /** Resistance at a temperature (°C) as a multiple of the stated one. */
    public double resistanceAt(double celsius) {
        return along(resistance, celsius);
    }

    /** What a temperature (°C) adds to the rest voltage of a nominal 12 V battery (V). */
    public double voltsAt(double celsius) {
        return voltsPerKelvin * (celsius - REFERENCE_CELSIUS);
    }

    private double along(double[] values, double at) {
        if (at <= celsius[0]) {
            return values[0];
        }
        for (int i = 1; i < celsius.length; i++) {
            if (at <= celsius[i]) {
                double share = (at - celsius[i - 1]) / (celsius[i] - celsius[i - 1]);
                return values[i - 1] + share * (values[i] - values[i - 1]);
            }
        }
        return values[values.length - 1];
    }
}
