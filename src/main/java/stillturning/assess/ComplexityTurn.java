package stillturning.assess;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stillturning.assess.ranking.Standing;
import stillturning.model.goal.ComplexityCount;
import stillturning.model.goal.ComplexityWeights;

/**
 * A change of what one of a count adds to complexity that changes the order of candidates.
 *
 * @param from what one adds now
 * @param to where the order changes
 * @param passed who loses the place
 * @param passing who takes it
 * @param place which place; 1 for the first
 */
public record ComplexityTurn(
        ComplexityCount count, double from, double to, String passed, String passing, int place) {

    /** Weights are tried from nothing to so many times what they are. */
    public static final double MOST_TIMES = 3;

    private static final int STEPS = 60;
    private static final double NEAR = 1e-7;

    /**
     * The nearest changes of each weight alone, down to nothing and up to three times (from 0 to 3
     * where it is nothing now), nearest first; none where the order holds or there is none.
     */
    public static List<ComplexityTurn> of(Assessment assessment) {
        if (assessment.appraisals().isEmpty()) {
            return List.of();
        }
        List<ComplexityTurn> turns = new ArrayList<>();
        ComplexityWeights weights = assessment.study().goals().preferences().complexity();
        for (ComplexityCount count : ComplexityCount.values()) {
            double from = weights.of(count);
            double most = from > 0 ? MOST_TIMES * from : MOST_TIMES;
            turn(assessment, count, from, most).ifPresent(turns::add);
            turn(assessment, count, from, 0).ifPresent(turns::add);
        }
        turns.sort(Comparator.comparingDouble(t -> Math.abs(t.to - t.from)));
        return List.copyOf(turns);
    }

    /** The first change of the order on the way, found by halving the step in which it falls. */
    private static Optional<ComplexityTurn> turn(
            Assessment assessment, ComplexityCount count, double from, double end) {
        List<String> now = order(assessment, count, from);
        double same = from;
        for (int i = 1; i <= STEPS; i++) {
            double other = from + (end - from) * i / STEPS;
            if (other != from && !order(assessment, count, other).equals(now)) {
                while (Math.abs(other - same) > NEAR) {
                    double middle = (same + other) / 2;
                    if (order(assessment, count, middle).equals(now)) {
                        same = middle;
                    } else {
                        other = middle;
                    }
                }
                return Optional.of(turn(count, from, other, now, order(assessment, count, other)));
            }
            same = other;
        }
        return Optional.empty();
    }

    private static ComplexityTurn turn(
            ComplexityCount count, double from, double to, List<String> now, List<String> then) {
        int place = 0;
        while (now.get(place).equals(then.get(place))) {
            place++;
        }
        return new ComplexityTurn(count, from, to, now.get(place), then.get(place), place + 1);
    }

    private static List<String> order(Assessment assessment, ComplexityCount count, double weight) {
        ComplexityWeights weights =
                assessment.study().goals().preferences().complexity().with(count, weight);
        return StudyRanking.standings(assessment.study(), assessment.appraisals(), weights).stream()
                .map(Standing::name)
                .toList();
    }
}
