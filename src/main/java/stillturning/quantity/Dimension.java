package stillturning.quantity;

import java.util.List;

/** What a quantity measures; each dimension has one unit in which its values are counted inside. */
public enum Dimension {
    /** Counted in volts (V). */
    VOLTAGE("a voltage", "V", "V"),
    /** Counted in amperes (A). */
    CURRENT("a current", "A", "A"),
    /** Counted in ohms (ohm). */
    RESISTANCE("a resistance", "ohm", "ohm"),
    /** Counted in coulombs (C), written in ampere-hours. */
    CHARGE("a charge", "C", "Ah"),
    /** Counted in joules (J), written in watt-hours. */
    ENERGY("an energy", "J", "Wh"),
    /** Counted in watts (W). */
    POWER("a power", "W", "W"),
    /** Counted in metres (m). */
    LENGTH("a length", "m", "m"),
    /** Counted in square metres (m2), written in square millimetres. */
    AREA("an area", "m2", "mm2"),
    /** Counted in kilograms (kg). */
    MASS("a mass", "kg", "kg"),
    /** Counted in seconds (s). */
    TIME("a time", "s", "s"),
    /** Counted in degrees Celsius (°C), not in kelvins. */
    TEMPERATURE("a temperature", "°C", "°C"),
    /** Counted as a fraction: 80 % is 0.8. */
    RATIO("a ratio", "", "%"),
    /** Counted in events per second, written per hour. */
    RATE("a rate", "/s", "/h"),
    /** Counted in revolutions per minute (rpm). */
    ROTATION("a speed of rotation", "rpm", "rpm"),
    /** Square of the current times time that an opening protector lets through (A2s). */
    LET_THROUGH("a let-through value", "A2s", "A2s");

    private final String words;
    private final String inside;
    private final String customary;

    Dimension(String words, String inside, String customary) {
        this.words = words;
        this.inside = inside;
        this.customary = customary;
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
