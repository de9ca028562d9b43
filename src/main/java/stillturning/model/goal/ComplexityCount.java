package stillturning.model.goal;

/**
 * What makes a layout more to build, to know and to do. Each thing is counted for what it is, once:
 * a protector is no part beside, an act that has to be done by heart is not one with time in hand
 * again, and an electronic channel is counted as the breaker and the switch that it stands for.
 */
public enum ComplexityCount {
    PARTS("parts, protectors apart", 1, "each is one to buy, mount and look at"),
    PROTECTORS("protectors", 1, "each is one to size, label and find when it has opened"),
    WIRE_ENDS("wire ends", 0.5, "a wire has two, and is one to lay"),
    KINDS("kinds of parts", 1, "each is one to learn and to keep a spare of"),
    LEVER_POSITIONS("lever positions", 0.5, "a lever has two at least, and is one to set"),
    UNHURRIED_ACTS("acts of the pilot with time in hand", 1, "each is one to read from a card"),
    URGENT_ACTS("acts of the pilot by heart", 2, "each has to be learned, and done in time"),
    SOFTWARE_FUNCTIONS("functions in software", 1, "each is one that cannot be looked at"),
    LOOPS("independent loops", 1, "each is one way more for a current to take");

    private final String words;
    private final double usualWeight;
    private final String because;

    ComplexityCount(String words, double usualWeight, String because) {
        this.words = words;
        this.usualWeight = usualWeight;
        this.because = because;
    }

    /** In words. */
    public String words() {
        return words;
    }

    /** How much one counts where a study does not say it. A guess. */
    public double usualWeight() {
        return usualWeight;
    }

    /** Why one counts at all. */
    public String because() {
        return because;
    }
}
