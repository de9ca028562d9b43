package stillturning.model.goal;

import java.util.Optional;

/**
 * From where to where a criterion's values run; in seconds, kilograms, money or counts.
 *
 * @param acceptable as bad as could be accepted: worth nothing
 * @param halfway worth half of the way; empty where every step counts the same
 * @param enough as good as is needed: worth everything
 * @param stated whether the study states it
 * @param because where the two ends come from, in words
 */
public record ValueScale(
        CriterionName criterion,
        double acceptable,
        Optional<Double> halfway,
        double enough,
        boolean stated,
        String because) {

    public ValueScale {
        String name = criterion.words();
        if (!Double.isFinite(acceptable) || !Double.isFinite(enough) || acceptable == enough) {
            throw new IllegalArgumentException(
                    name
                            + ": a scale from "
                            + acceptable
                            + " to "
                            + enough
                            + " needs two different finite ends");
        }
        if (criterion.moreIsBetter() != enough > acceptable) {
            throw new IllegalArgumentException(
                    name
                            + ": what is enough, "
                            + enough
                            + ", is worse than what is acceptable, "
                            + acceptable);
        }
        double least = Math.min(acceptable, enough);
        double most = Math.max(acceptable, enough);
        if (halfway.filter(h -> !(h > least && h < most)).isPresent()) {
            throw new IllegalArgumentException(
                    name
                            + ": halfway, "
                            + halfway.get()
                            + ", is not between "
                            + acceptable
                            + " and "
                            + enough);
        }
    }

    /** One that a study states. */
    public static ValueScale stated(
            CriterionName criterion, double acceptable, Optional<Double> halfway, double enough) {
        return new ValueScale(criterion, acceptable, halfway, enough, true, "stated in the study");
    }

    /** The value that is worth half of the way. */
    public double middle() {
        return halfway.orElse(acceptable + (enough - acceptable) / 2);
    }
}
