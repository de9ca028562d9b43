package stillturning.quantity;

import java.math.BigDecimal;
import java.util.List;

/**
 * What a quantity measures; each dimension has one unit in which its values are counted inside, and
 * the sizes that make sense of it here: some powers of ten beyond the smallest and the largest that
 * parts, wires and flights of light aircraft have, so that whatever is written can be computed
 * with.
 */
public enum Dimension {
    /** Counted in volts (V). */
    VOLTAGE("a voltage", "V", "V", 12.8, 1e-6, 100000),
    /** Counted in amperes (A). */
    CURRENT("a current", "A", "A", 5, 1e-9, 1e6),
    /** Counted in ohms (ohm), written in milliohms. */
    RESISTANCE("a resistance", "ohm", "mohm", 0.012, 1e-9, 1e9),
    /** Counted in farads (F). */
    CAPACITANCE("a capacitance", "F", "F", 58, 1e-12, 1e6),
    /** Counted in coulombs (C), written in ampere-hours. */
    CHARGE("a charge", "C", "Ah", 72000, 0.001, 1e10),
    /** Counted in joules (J), written in watt-hours. */
    ENERGY("an energy", "J", "Wh", 18000, 1e-6, 1e13),
    /** Counted in watts (W). */
    POWER("a power", "W", "W", 70, 1e-9, 1e9),
    /** Counted in metres (m). */
    LENGTH("a length", "m", "m", 0.9, 1e-5, 100000),
    /** Counted in square metres (m2), written in square millimetres. */
    AREA("an area", "m2", "mm2", 4e-6, 1e-10, 1),
    /** Counted in kilograms (kg). */
    MASS("a mass", "kg", "kg", 2.1, 1e-6, 1e6),
    /** Counted in seconds (s). */
    TIME("a time", "s", "s", 2.5, 1e-9, 1e10),
    /** Counted in degrees Celsius (°C), not in kelvins. */
    TEMPERATURE("a temperature", "°C", "°C", 25, 0, 1500),
    /** Counted as a fraction: 80 % is 0.8. */
    RATIO("a ratio", "", "%", 0.8, 1e-9, 1e6),
    /** Counted in events per second, written per hour. */
    RATE("a rate", "/s", "/h", 1e-9, 1e-21, 1000),
    /** Counted in revolutions per minute (rpm). */
    ROTATION("a speed of rotation", "rpm", "rpm", 2400, 0.001, 1e6),
    /** Square of the current times time that an opening protector lets through (A2s). */
    LET_THROUGH("a let-through value", "A2s", "A2s", 50, 1e-9, 1e12);

    private final String words;
    private final String inside;
    private final String customary;
    private final double usual;
    private final double least;
    private final double most;

    Dimension(
            String words,
            String inside,
            String customary,
            double usual,
            double least,
            double most) {
        this.words = words;
        this.inside = inside;
        this.customary = customary;
        this.usual = usual;
        this.least = least;
        this.most = most;
    }

    /** Name with its article, for messages: "a current". */
    public String words() {
        return words;
    }

    /** Symbol of the unit in which values are counted inside; empty for a ratio. */
    public String inside() {
        return inside;
    }

    /** Symbol of the unit in which people usually write it. */
    public String customary() {
        return customary;
    }

    /** A usual value of it, for messages that show how to write one. */
    public Quantity example() {
        return Quantity.of(usual, this);
    }

    /**
     * Whether a light aircraft and what is known of it can have such a value. Zero always counts:
     * whether a field allows it is the field's own matter.
     *
     * @param inside in the unit counted inside
     */
    boolean holds(double inside) {
        double size = Math.abs(inside);
        return size <= most && (size >= least || size == 0);
    }

    /** The sizes that are accepted, for messages: "from 1E-9 to 1E+6 A". */
    String range() {
        boolean fraction = inside.isEmpty();
        int places = fraction ? 2 : 0;
        return (least == 0 ? "up to " : "from " + shown(least, places) + " to ")
                + shown(most, places)
                + " "
                + (fraction ? customary : inside);
    }

    private static String shown(double power, int places) {
        return new BigDecimal(Double.toString(power))
                .scaleByPowerOfTen(places)
                .stripTrailingZeros()
                .toString();
    }

    /** Every accepted unit symbol, the customary one first. */
    public List<String> units() {
        return UnitTable.symbolsOf(this);
    }

    /**
     * Regular expression (common to Java and ECMAScript) for the text of such a quantity, without
     * anchors.
     */
    public String pattern() {
        return UnitTable.patternOf(this);
    }

    /** Accepted units for a message, without second spellings: "A, mA, uA, kA". */
    String choices() {
        return String.join(", ", UnitTable.namedIn(this));
    }
}
