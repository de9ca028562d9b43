package stillturning.desktop.viewmodel;

/** The work areas, in the order of the work. */
public enum AreaName {
    START(1, "Start"),
    DRAW(2, "Draw"),
    SIZE(3, "Size"),
    BREAK(4, "Break"),
    DECIDE(5, "Decide"),
    EXPLAIN(6, "Explain");

    private final int number;
    private final String words;

    AreaName(int number, String words) {
        this.number = number;
        this.words = words;
    }

    /** Its place in the order, from 1; with Control the key that shows it. */
    public int number() {
        return number;
    }

    /** What the user reads. */
    public String words() {
        return words;
    }
}
