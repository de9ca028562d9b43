package stillturning.draft;

/** A change that cannot be made; the message says why, and what to do. Nothing was changed. */
public final class ChangeRefused extends Exception {

    private static final long serialVersionUID = 1;

    public ChangeRefused(String why) {
        super(why);
    }

    public ChangeRefused(String why, Throwable cause) {
        super(why, cause);
    }

    /** Why, and what to do. */
    public String why() {
        return String.valueOf(getMessage());
    }
}
