package stillturning.assess.ranking;

/** Where a criterion's value scale begins and ends. */
public sealed interface Scale {

    /**
     * Fixed ends: {@code worst} is worth nothing, {@code best} everything, and a value beyond an
     * end is worth as much as the end.
     */
    record Anchored(double worst, double best) implements Scale {
        public Anchored {
            if (!Double.isFinite(worst) || !Double.isFinite(best) || worst == best) {
                throw new IllegalArgumentException(
                        "scale from " + worst + " to " + best + " needs two different finite ends");
            }
        }
    }

    /**
     * Ends taken from the worst and best finite value among the candidates; adding a candidate may
     * then change the order of the others.
     */
    record OverCandidates() implements Scale {}
}
