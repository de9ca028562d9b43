package stillturning.report.drawing.plot;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Round numbers along an axis. */
public record Ticks(List<Double> values, double step) {

    /** Multiples of 1, 2 or 5 times a power of ten within the bounds, at most so many. */
    public static Ticks within(double low, double high, int most) {
        double step = step((high - low) / Math.max(1, most - 1));
        List<Double> values = new ArrayList<>();
        for (long i = (long) Math.ceil(low / step - 1e-9); i * step <= high + step * 1e-9; i++) {
            values.add(i * step);
        }
        return new Ticks(List.copyOf(values), step);
    }

    static double step(double atLeast) {
        double decade = Math.pow(10, Math.floor(Math.log10(atLeast)));
        for (double factor : new double[] {1, 2, 5}) {
            if (factor * decade >= atLeast * (1 - 1e-9)) {
                return factor * decade;
            }
        }
        return 10 * decade;
    }

    /** A number without needless digits. */
    public static String text(double value) {
        BigDecimal rounded =
                new BigDecimal(value)
                        .round(new MathContext(6, RoundingMode.HALF_EVEN))
                        .stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString().replace('-', '−');
    }
}
