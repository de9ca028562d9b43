package stillturning.model;

/** From when the time counts that an engine must run on. */
public enum CountsFrom {
    /** Before it nobody can do anything about the failure: not turn back, not shed, not land. */
    FIRST_SIGN("the first sign that the pilot can have"),
    FAILURE("the failure");

    private final String words;

    CountsFrom(String words) {
        this.words = words;
    }

    /** In words. */
    public String words() {
        return words;
    }
}
