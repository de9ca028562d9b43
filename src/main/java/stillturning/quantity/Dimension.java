package stillturning.quantity;

import java.util.List;

/** What a quantity measures; each dimension has one unit in which its values are counted inside. */
public enum Dimension {
    /** Counted in volts (V). */
    VOLTAGE("a voltage", "V", "V", 12.8),
    /** Counted in amperes (A). */
    CURRENT("a current", "A", "A", 5),
    /** Counted in ohms (ohm), written in milliohms. */
    RESISTANCE("a resistance", "ohm", "mohm", 0.012),
    /** Counted in farads (F). */
    CAPACITANCE("a capacitance", "F", "F", 58),
    /** Counted in coulombs (C), written in ampere-hours. */
    CHARGE("a charge", "C", "Ah", 72000),
    /** Counted in joules (J), written in watt-hours. */
    ENERGY("an energy", "J", "Wh", 18000),
    /** Counted in watts (W). */
    POWER("a power", "W", "W", 70),
    /** Counted in metres (m). */
    LENGTH("a length", "m", "m", 0.9),
    /** Counted in square metres (m2), written in square millimetres. */
    AREA("an area", "m2", "mm2", 4e-6),
    /** Counted in kilograms (kg). */
    MASS("a mass", "kg", "kg", 2.1),
    /** Counted in seconds (s). */
    TIME("a time", "s", "s", 2.5),
    /** Counted in degrees Celsius (°C), not in kelvins. */
    TEMPERATURE("a temperature", "°C", "°C", 25),
    /** Counted as a fraction: 80 % is 0.8. */
    RATIO("a ratio", "", "%", 0.8),
    /** Counted in events per second, written per hour. */
    RATE("a rate", "/s", "/h", 1e-9),
    /** Counted in revolutions per minute (rpm). */
    ROTATION("a speed of rotation", "rpm", "rpm", 2400),
    /** Square of the current times time that an opening protector lets through (A2s). */
    LET_THROUGH("a let-through value", "A2s", "A2s", 50);

    private final String words;
    private final String inside;
    private final String customary;
    private final double usual;

    Dimension(String words, String inside, String customary, double usual) {
        this.words = words;
        this.inside = inside;
        this.customary = customary;
        this.usual = usual;
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
