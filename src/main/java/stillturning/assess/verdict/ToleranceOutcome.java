package stillturning.assess.verdict;

/**
 * What the tolerance of the protectors leaves open after one failure: the part that is expected to
 * give way is as slow as its band allows, and all others are as fast.
 *
 * @param expected the part that typically gives way
 * @param instead the part that may give way although it need not; empty where the expected one may
 *     carry the current continuously and nothing else ends it
 * @param fastSeconds when that may be, if it gives way (s)
 * @param slowSeconds how long the expected one may take (s); infinite if it might never open
 * @param then what comes of the failure in that case
 */
public record ToleranceOutcome(
        String expected, String instead, double fastSeconds, double slowSeconds, Verdict then) {

    /** Whether something gives way that need not. */
    public boolean unselective() {
        return !instead.isEmpty();
    }
}
