package stillturning.reliability.asbuilt;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.TDistribution;

/** The resistance of a wire or a contact from what it drops. */
public final class DropFit {

    private DropFit() {}

    /**
     * One reading.
     *
     * @param volts between its ends (V), at least 0
     * @param amps through it (A), above 0
     */
    public record MeasuredDrop(double volts, double amps) {
        public MeasuredDrop {
            if (!(volts >= 0 && amps > 0 && Double.isFinite(volts) && Double.isFinite(amps))) {
                throw new IllegalArgumentException(
                        "a drop of " + volts + " V at " + amps + " A gives no resistance");
            }
        }
    }

    /**
     * A resistance.
     *
     * @param ohms by least squares through 0 V at 0 A (ohm)
     * @param half half the interval of 95 % (ohm); empty with one reading
     */
    public record Fitted(double ohms, OptionalDouble half) {}

    /**
     * Fits readings.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Fitted of(List<MeasuredDrop> drops) {
        if (drops.isEmpty()) {
            throw new IllegalArgumentException("no drop gives no resistance");
        }
        double across = drops.stream().mapToDouble(d -> d.volts * d.amps).sum();
        double squares = drops.stream().mapToDouble(d -> d.amps * d.amps).sum();
        double ohms = across / squares;
        int degrees = drops.size() - 1;
        if (degrees == 0) {
            return new Fitted(ohms, OptionalDouble.empty());
        }
        double left = drops.stream().mapToDouble(d -> Math.pow(d.volts - ohms * d.amps, 2)).sum();
        double error = Math.sqrt(left / degrees / squares);
        double quantile = new TDistribution(degrees).inverseCumulativeProbability(0.975);
        return new Fitted(ohms, OptionalDouble.of(quantile * error));
    }
}
