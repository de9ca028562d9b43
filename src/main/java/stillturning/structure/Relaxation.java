package stillturning.structure;

/** What the shape usually does not count as a way, and may be asked to. */
public enum Relaxation {
    /** Current may pass loads, coils and other sources on its way. */
    THROUGH_LOADS_AND_SOURCES,
    /** A channel that is switched off may lose its logic, and close because that is its default. */
    FALLING_INTO_DEFAULTS
}
