package stillturning.reliability.asbuilt;

/** Measurements from which nothing can be concluded; the message says why, and what would help. */
public final class UntellingLog extends Exception {

    private static final long serialVersionUID = 1;

    public UntellingLog(String why) {
        super(why);
    }

    /** Why, and what would help. */
    public String why() {
        return String.valueOf(getMessage());
    }
}
