package stillturning.story;

/** How the pilot keeps to the candidate's procedures. */
public enum Pilot {
    /** Responds in the procedure's time. */
    PLANNED("as planned", 1),
    /** Responds in three times the procedure's time. */
    LATE("late", 3),
    /** Does nothing. */
    NEVER("never", Double.POSITIVE_INFINITY);

    private final String words;
    private final double slowness;

    Pilot(String words, double slowness) {
        this.words = words;
        this.slowness = slowness;
    }

    /** In words. */
    public String words() {
        return words;
    }

    public double responseSeconds(double plannedSeconds) {
        return this == NEVER ? Double.POSITIVE_INFINITY : plannedSeconds * slowness;
    }
}
