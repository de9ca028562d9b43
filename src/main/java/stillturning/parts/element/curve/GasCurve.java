package stillturning.parts.element.curve;

/** Currents (A) that become gas at voltages (V), both ascending, straight between them. */
public final class GasCurve {

    private final double[] volts;
    private final double[] amps;

    GasCurve(double[] volts, double[] amps) {
        this.volts = volts.clone();
        this.amps = amps.clone();
    }

    public double[] volts() {
        return volts.clone();
    }

    public double[] amps() {
        return amps.clone();
    }

    /** The same of another number of cells, and another one-hour current. */
    public GasCurve times(double cells, double oneHourAmps) {
        return new GasCurve(multiplied(volts, cells), multiplied(amps, oneHourAmps));
    }

    private static double[] multiplied(double[] values, double factor) {
        double[] product = values.clone();
        for (int i = 0; i < product.length; i++) {
            product[i] *= factor;
        }
        return product;
    }
}
