package stillturning.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * One way to write a unit: inside value = (written value + offset) x numerator / denominator,
 * exact.
 *
 * @param symbol as written
 * @param named false for a second spelling, which messages leave out
 */
record WrittenUnit(
        String symbol,
        Dimension dimension,
        BigDecimal offset,
        BigDecimal numerator,
        BigDecimal denominator,
        boolean named) {

    // 40 digits leave the one rounding that matters to the conversion to double
    private static final MathContext DIGITS = new MathContext(40);

    double inside(BigDecimal written) {
        return written.add(offset).multiply(numerator).divide(denominator, DIGITS).doubleValue();
    }

    BigDecimal written(double inside, MathContext digits) {
        return new BigDecimal(inside)
                .multiply(denominator)
                .divide(numerator, DIGITS)
                .subtract(offset)
                .round(digits);
    }

    /** The same unit under a second spelling. */
    WrittenUnit spelt(String spelling) {
        return new WrittenUnit(spelling, dimension, offset, numerator, denominator, false);
    }
}
