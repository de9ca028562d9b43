package stillturning.assess.crosscheck;

/**
 * What the shape of a candidate does not know and its stories do. Each can be taken away, and the
 * story told again without it.
 */
public enum StoryOnlyFact {
    SNEAK_PATH("current comes through a load, a coil or another source"),
    DEFAULT("a channel that is switched off loses its logic and closes by default"),
    TIME("batteries run down"),
    WEAK_SUPPLY("a supply is too weak for what it has to feed"),
    WAITING("the engine does not wait until its needs are met again"),
    PILOT("no procedure sets the levers so in time"),
    AUTOMATIC("an automatic acts"),
    MANAGEMENT("a battery's management acts"),
    OVER_VOLTAGE("loads or guards do not bear the voltage"),
    UNSTEADY("an alternator without a battery is played as gone"),
    RESTING_CONTACT("a contact that is closed at rest is open while its coil is fed");

    private final String words;

    StoryOnlyFact(String words) {
        this.words = words;
    }

    /** In words. */
    public String words() {
        return words;
    }

    /** Whether it is about who moves levers, and when. */
    boolean isAboutWhoActs() {
        return this == PILOT || this == AUTOMATIC;
    }
}
