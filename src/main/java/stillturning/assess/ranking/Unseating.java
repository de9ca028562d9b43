package stillturning.assess.ranking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stillturning.assess.ranking.WeightChange.Direction;

/**
 * The smallest change of one weight that costs the leader its place.
 *
 * <p>With weight t on the criterion and the others in their present proportions, the leader's lead
 * over a rival is t·a + (1 − t)·b, where a is its lead in worth on that criterion and b its lead on
 * the others together: a straight line with one root, t = b / (b − a).
 */
final class Unseating {
    private final ScoreTable table;
    private final int leader;
    private final double[] weights;

    private Unseating(ScoreTable table, int leader) {
        this.table = table;
        this.leader = leader;
        weights = table.weights();
    }

    static List<WeightChange> of(ScoreTable table, int leader) {
        Unseating unseating = new Unseating(table, leader);
        List<WeightChange> changes = new ArrayList<>();
        for (int j = 0; j < table.scales().size(); j++) {
            unseating.smallestOn(j).ifPresent(changes::add);
        }
        changes.sort(Comparator.comparingDouble(WeightChange::size));
        return List.copyOf(changes);
    }

    private Optional<WeightChange> smallestOn(int criterion) {
        List<Crossing> crossings = new ArrayList<>();
        for (int rival = 0; rival < table.size(); rival++) {
            // no weight lifts a candidate over one that misses fewer gates
            if (rival != leader && table.missed(rival) == table.missed(leader)) {
                levelWith(rival, criterion).ifPresent(crossings::add);
            }
        }
        return crossings.stream().min(SOONEST).map(Crossing::change);
    }

    /**
     * A lead that is lost.
     *
     * @param slope how fast the lead goes with the weight, to the side on which it is lost
     */
    private record Crossing(WeightChange change, double slope) {

        /** In steps: of rivals who draw level at one weight the one who gains fastest leads. */
        private long steps() {
            return ScoreTable.steps(change.size());
        }
    }

    private static final Comparator<Crossing> SOONEST =
            Comparator.comparingLong(Crossing::steps).thenComparingDouble(Crossing::slope);

    private Optional<Crossing> levelWith(int rival, int criterion) {
        double[] others = othersAlone(criterion);
        double here = table.worth(leader, criterion) - table.worth(rival, criterion);
        double elsewhere = table.total(leader, others) - table.total(rival, others);
        // the leader leads now: a lead that is nowhere negative is never lost
        if (Math.min(here, elsewhere) >= -ScoreTable.LEVEL) {
            return Optional.empty();
        }
        AppliedScale scale = table.scales().get(criterion);
        double from = scale.weight();
        double root = elsewhere / (elsewhere - here);
        boolean rises = here < elsewhere;
        return Optional.of(
                new Crossing(
                        new WeightChange(
                                scale.criterion(),
                                from,
                                // at a tie rounding must not carry it past the weight itself
                                rises ? Math.max(from, root) : Math.min(from, root),
                                rises ? Direction.RISES : Direction.FALLS,
                                table.alternative(rival).name()),
                        -Math.abs(here - elsewhere)));
    }

    /**
     * The other weights brought to a sum of 1; even ones where this criterion has all the weight.
     */
    private double[] othersAlone(int criterion) {
        double[] others = weights.clone();
        others[criterion] = 0;
        double rest = 0;
        for (double weight : others) {
            rest += weight;
        }
        for (int j = 0; j < others.length; j++) {
            if (j != criterion) {
                others[j] = rest > 0 ? others[j] / rest : 1.0 / (others.length - 1);
            }
        }
        return others;
    }
}
