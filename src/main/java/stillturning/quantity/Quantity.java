package stillturning.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/**
 * A number with its unit, as somebody wrote it.
 *
 * @param si value in the unit that its dimension counts in, finite
 * @param dimension what it measures
 * @param written the text it came from
 */
public record Quantity(double si, Dimension dimension, String written) {

    private static final MathContext SHORT = new MathContext(15);
    private static final MathContext SHOWN = new MathContext(4);
    private static final MathContext ROUGH = new MathContext(3);
    // 17 digits identify a double; three more absorb the rounding of the conversion
    private static final MathContext CERTAIN = new MathContext(20);

    public Quantity {
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException(
                    "\"" + written + "\" stands for " + si + "; give a finite number");
        }
    }

    /**
     * Reads a quantity of the wanted dimension.
     *
     * @throws MalformedQuantity if the text is no number with a unit of that dimension
     */
    public static Quantity parse(String text, Dimension wanted) throws MalformedQuantity {
        return new QuantityText(text, Optional.of(wanted)).read();
    }

    /**
     * Reads a quantity whose dimension follows from its unit.
     *
     * @throws MalformedQuantity if the text is no number with a known unit
     */
    public static Quantity parse(String text) throws MalformedQuantity {
        return new QuantityText(text, Optional.empty()).read();
    }

    /**
     * Writes a computed value so that reading the text gives exactly the same value again.
     *
     * @param si value in the unit that the dimension counts in, finite
     */
    public static Quantity of(double si, Dimension dimension) {
        double value = si + 0.0; // turns -0.0 into 0.0
        // nobody writes the resistance of a coil in thousandths
        boolean whole = dimension == Dimension.RESISTANCE && Math.abs(value) >= 1;
        String symbol = whole ? dimension.inside() : dimension.customary();
        WrittenUnit unit = UnitTable.find(symbol).orElseThrow();
        new Quantity(value, dimension, "a computed value"); // refuses NaN and infinities
        BigDecimal text = unit.written(value, SHORT);
        BigDecimal exact = unit.inside(text) == value ? text : unit.written(value, CERTAIN);
        return new Quantity(value, dimension, readable(exact) + " " + unit.symbol());
    }

    /**
     * The same value in a unit of a system, rounded to four digits, for showing; itself where it is
     * written in one already, or where both systems write it alike.
     */
    public Quantity in(UnitSystem system) {
        return UnitTable.shownIn(system, this)
                .map(
                        unit -> {
                            BigDecimal text = unit.written(si, SHOWN);
                            String words = readable(text) + " " + unit.symbol();
                            return new Quantity(unit.inside(text), dimension, words);
                        })
                .orElse(this);
    }

    /**
     * A computed value in the unit of a written one, rounded to three digits, for showing beside
     * it.
     *
     * @param like the written one
     */
    public static String shown(double si, Dimension dimension, String like) {
        String symbol = like.replaceFirst("^" + UnitTable.NUMBER, "").strip();
        WrittenUnit unit =
                UnitTable.find(symbol)
                        .filter(u -> u.dimension() == dimension)
                        .or(() -> UnitTable.find(dimension.customary()))
                        .orElseThrow();
        return readable(unit.written(si + 0.0, ROUGH)) + " " + unit.symbol();
    }

    private static String readable(BigDecimal number) {
        BigDecimal digits = number.stripTrailingZeros();
        boolean plain = digits.scale() < 10 && digits.precision() - digits.scale() < 10;
        return plain ? digits.toPlainString() : digits.toString();
    }
}
