package stillturning.assess.verdict;

/** What a failure does, worst first. */
public enum Outcome {
    ENGINE_LOST("engine lost"),
    STOPS_UNTIL_PILOT_ACTS("engine stops until the pilot acts"),
    STOPS_UNLESS_PILOT_ACTS("engine runs on only if the pilot acts in time"),
    INTERRUPTED("engine interrupted, recovers by itself"),
    REDUNDANCY_LOST("redundancy lost"),
    LOADS_LOST("other loads lost"),
    NO_EFFECT("no effect");

    private final String words;

    Outcome(String words) {
        this.words = words;
    }

    /** In words. */
    public String words() {
        return words;
    }

    /** Whether the engine does not come through without the pilot, or not at all. */
    public boolean needsPilot() {
        return this == STOPS_UNTIL_PILOT_ACTS || this == STOPS_UNLESS_PILOT_ACTS;
    }
}
