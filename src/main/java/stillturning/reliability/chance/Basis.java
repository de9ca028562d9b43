package stillturning.reliability.chance;

/** What a result rests on. */
public enum Basis {
    /** Every combination of events was counted, by a decision diagram. */
    EXACT,
    /** The diagram would have been too large: true bounds, and the upper one as the value. */
    BOUNDED
}
