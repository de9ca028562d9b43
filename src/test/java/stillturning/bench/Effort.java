package stillturning.bench;

/**
 * How many cases drawn by lot a test tries: the first few with every build, all of them with the
 * profile {@code thorough}.
 */
public final class Effort {

    private static final boolean THOROUGH = Boolean.getBoolean("thorough");

    private Effort() {}

    /** The first few, or all. */
    public static int cases(int few, int all) {
        return THOROUGH ? all : few;
    }
}
