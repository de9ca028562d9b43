package stillturning.parts;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers in a part's detail, to three digits. */
public final class Detail {

    private Detail() {}

    /** A rating (A). */
    public static String amps(double amps) {
        return number(amps) + " A";
    }

    /** A plain number. */
    public static String number(double value) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(3))
                .stripTrailingZeros()
                .toPlainString();
    }
}
