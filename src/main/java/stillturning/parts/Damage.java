package stillturning.parts;

/**
 * What an event does to the parts that it reaches. Each failure mode says which damage causes it.
 * Common practice, no published source.
 */
public enum Damage {
    /** Broken off, crushed, torn: what conducts or gives, no longer does. */
    TORN,

    /**
     * Hotter than its insulation stands, not yet as hot as copper melts: plastic goes first. So
     * wires touch metal before they part, and a carrier lets its bar down onto the structure.
     */
    SCORCHED,

    /**
     * Wet with water that conducts a little: what has bare terminals near each other, or a board
     * inside, stops or creeps to ground; the middle of a wire and what is cast in resin does not
     * mind.
     */
    SOAKED,

    /** Wires rubbed until they part. */
    WORN_APART,

    /** Wires rubbed until their copper touches metal. */
    WORN_BARE,

    /** The program inside stops. */
    HUNG
}
