package stillturning.sizing.result;

/**
 * What a finding is about, gravest first, and what is so with nothing wrong before what it takes a
 * short to show. What its two numbers mean stands with each.
 */
public enum Rule {
    /** The same as {@link #DUTY} of a protector without which the engine stops. */
    ENGINE_DUTY(Gravity.WRONG),
    /**
     * The protector's rating (A) exceeds what the wire carries in the best of places (A), so that
     * it burns before the protector opens.
     */
    PROTECTS_NOTHING(Gravity.WRONG),
    /** The wire carries more (A) than it may continuously (A). */
    AMPACITY(Gravity.WRONG),
    /** The protector carries more with nothing wrong (A) than it is rated for (A). */
    DUTY(Gravity.WRONG),
    /** The current on switching on (A) may open the protector, which allows so much (A). */
    INRUSH(Gravity.WRONG),
    /**
     * The current while the starter turns (A) may open the protector, which surely lets through so
     * much for so long (A).
     */
    CRANKING_DUTY(Gravity.WRONG),
    /** The load has less (V) than its minimum (V), with nothing wrong. */
    MINIMUM(Gravity.WRONG),
    /** A load that the engine needs stops while it is started: lowest (V), minimum (V). */
    CRANKING(Gravity.WRONG),
    /**
     * A short drives this current (A) through the wire, more than it may carry continuously (A).
     */
    UNPROTECTED(Gravity.WRONG),
    /**
     * A return that is chafed to metal carries what others return (A), more than it may carry
     * continuously (A): between its ground and the metal lies what their current drops elsewhere.
     */
    STRAY_RETURN(Gravity.WRONG),
    /** The protector's rating (A) exceeds the largest that the chart has for the wire (A). */
    CHART(Gravity.WRONG),
    /** A short (A) makes the wire too hot before its protector opens; it may carry (A). */
    HEAT(Gravity.WRONG),
    /** The short-circuit current at the protector (A) exceeds what it can interrupt (A). */
    INTERRUPT(Gravity.WRONG),
    /** The wires of the circuit drop more (V) than allowed (V). */
    DROP(Gravity.WRONG),
    /** The contacts need a higher rating (A) than they have (A). */
    CONTACT(Gravity.WRONG),
    /** An over-voltage guard acts at a voltage (V) that alternators hold anyway (V). */
    GUARD_LOW(Gravity.WRONG),
    /** Alternators hold a battery at more (V) than its makers charge it with (V). */
    OVERCHARGED(Gravity.WRONG),
    /** On average the aircraft takes more (A) than the alternators give in that phase (A). */
    ALTERNATOR(Gravity.WRONG),
    /** The same although the alternators hold their set point, and so could give more. */
    ALTERNATOR_HELD(Gravity.WRONG),
    /** A battery that no alternator charges is empty when the flight ends (both 0 to 1). */
    EMPTIED(Gravity.WRONG),
    /**
     * A protector without which the engine stops carries with nothing wrong (A) nearly all that it
     * is rated for (A).
     */
    ENGINE_MARGIN(Gravity.LOOK),
    /** As {@link #CRANKING}, with tired batteries in the cold. */
    CRANKING_COLD(Gravity.LOOK),
    /** A battery that comes nearly empty takes in more (A) than its management allows (A). */
    CHARGE_CURRENT(Gravity.LOOK),
    /** A load gets nothing in a phase in which it runs: what leads to it is open (V, minimum V). */
    OFF(Gravity.LOOK),
    /** Main power wires drop more (V) than the published share of the bus voltage (V). */
    MAIN_POWER(Gravity.LOOK),
    /** Continuous loads take a larger share of the alternators (A) than advised (A). */
    ALTERNATOR_SHARE(Gravity.LOOK),
    /** The battery ends the flight with less charge than it started with (both 0 to 1). */
    CHARGE(Gravity.LOOK),
    /** The same although the alternators hold their set point throughout. */
    CHARGE_HELD(Gravity.LOOK),
    /** The same of a battery that no alternator charges. */
    CHARGE_APART(Gravity.LOOK),
    /**
     * A short (A) makes the wire too hot before its protector opens, where that is as slow as its
     * class allows: the worst of so many wires (number).
     */
    HEAT_IF_SLOW(Gravity.LOOK),
    /** After a failure the protector carries more (A) than it is rated for (A). */
    DUTY_AFTER_FAILURE(Gravity.LOOK),
    /** Nothing is known of the rating of contacts or protectors: what is needed (A). */
    UNRATED(Gravity.LOOK),
    /**
     * A run that is unprotected by custom: battery lead or starter main; current (A), limit (A).
     * The other part is the one whose short drives the current, where that is not the wire's own.
     */
    UNPROTECTED_BY_CUSTOM(Gravity.NOTE);

    /** How grave a finding is. */
    public enum Gravity {
        /** A published or stated limit is broken. */
        WRONG,
        /** Worth a second look. */
        LOOK,
        /** To be known. */
        NOTE
    }

    private final Gravity gravity;

    Rule(Gravity gravity) {
        this.gravity = gravity;
    }

    /** How grave it is. */
    public Gravity gravity() {
        return gravity;
    }
}
