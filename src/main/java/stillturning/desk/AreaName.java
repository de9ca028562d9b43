package stillturning.desk;

/** The work areas, in the order of the work. */
public enum AreaName {
    START("Start"),
    DRAW("Draw"),
    SIZE("Size"),
    BREAK("Break"),
    DECIDE("Decide"),
    EXPLAIN("Explain");

    private final String words;

    AreaName(String words) {
        this.words = words;
    }

    /** What the user reads. */
    public String words() {
        return words;
    }
}
