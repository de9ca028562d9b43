package stillturning.quantity;

/** In which lengths, masses and temperatures a reader thinks. */
public enum UnitSystem {
    /** Metres, kilograms and degrees Celsius. */
    METRIC,
    /** Feet, inches, pounds and degrees Fahrenheit. */
    US
}
