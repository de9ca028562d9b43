package stillturning.parts;

import java.math.BigDecimal;
import java.math.MathContext;
import stillturning.quantity.Formats;

/** Numbers in a part's detail, to three digits where nothing else is said. */
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

    /** With as few digits as it was likely written with, to two decimals. */
    public static String written(double value, String unit) {
        return Formats.fixed(value, 2).replaceAll("\\.?0+$", "") + " " + unit;
    }
}
