package stillturning.cli.terminal;

/** What the program hands back to its caller. */
public final class ExitCode {

    /** Done, nothing to object to. */
    public static final int FINE = 0;

    /**
     * Done, and something is wrong: the leader misses a hard requirement, normal flight itself
     * does, or a protector lets its wire burn.
     */
    public static final int REQUIREMENT_MISSED = 1;

    /** The arguments, the study or the files around it are not as they should be. */
    public static final int BAD_INPUT = 2;

    /** The program itself failed, or its results could not be written. */
    public static final int INTERNAL = 3;

    /**
     * The reader of the results stopped reading: 128 and the number of SIGPIPE, as a shell reports
     * other programs to which this happens.
     */
    public static final int READER_GONE = 141;

    private ExitCode() {}
}
