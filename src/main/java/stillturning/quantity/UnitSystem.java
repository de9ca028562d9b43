package stillturning.quantity;

/** In which lengths and masses a reader thinks. */
public enum UnitSystem {
    /** Metres and kilograms. */
    METRIC,
    /** Feet, inches and pounds. */
    US
}
