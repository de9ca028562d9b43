package stillturning.assess.ranking;

import java.util.Arrays;

/** Where a criterion's value scale begins and ends. */
public sealed interface Scale {

    /** The scale of a criterion over the values that there are. */
    AppliedScale over(double[] values, Criterion criterion, double weight);

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

        @Override
        public AppliedScale over(double[] values, Criterion criterion, double weight) {
            return new AppliedScale(
                    criterion.name(),
                    criterion.sense(),
                    weight,
                    worst,
                    best,
                    AppliedScale.Origin.GIVEN);
        }
    }

    /**
     * Ends taken from the worst and best finite value among the candidates; adding a candidate may
     * then change the order of the others.
     */
    record OverCandidates() implements Scale {
        @Override
        public AppliedScale over(double[] values, Criterion criterion, double weight) {
            double[] finite = Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
            // nobody has a finite value: all are alike, and the scale has no extent
            double least = finite.length == 0 ? Double.POSITIVE_INFINITY : finite[0];
            double most = finite.length == 0 ? least : finite[finite.length - 1];
            boolean more = criterion.sense() == Sense.MORE_IS_BETTER;
            return new AppliedScale(
                    criterion.name(),
                    criterion.sense(),
                    weight,
                    more ? least : most,
                    more ? most : least,
                    AppliedScale.Origin.RANGE_OF_CANDIDATES);
        }
    }
}
