package stillturning.story;

/** What follows from a failure could not be computed; names the part and the time. */
public final class UntoldStory extends Exception {
    private static final long serialVersionUID = 1;

    public UntoldStory(String message) {
        super(message);
    }

    public UntoldStory(String message, Throwable cause) {
        super(message, cause);
    }

    /** The same, with the failure that led there named. */
    public UntoldStory of(String failure) {
        return new UntoldStory(failure + ": " + getMessage(), this);
    }
}
