package stillturning.reliability.cutset;

/** What a set of events comes to. */
public enum SetVerdict {
    /** What is feared happens. */
    LOST,
    /** It does not. */
    LIVES,
    /** These events cannot happen together. */
    IMPOSSIBLE,
    /** Nobody can say. */
    UNTOLD
}
