package stillturning.assess.ranking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Worths, totals, gates and dominance of candidates that are held in order of name. */
final class ScoreTable {
    /**
     * Totals are counted in steps of this, so that sums of the same numbers in another order are
     * level. Rounding, unlike a tolerance between two, is the same whatever others are there.
     */
    static final double LEVEL = 1e-9;

    private final List<AppliedScale> scales;
    private final List<Alternative> alternatives;
    private final double[][] worths;
    private final double[] totals;
    private final int[] missed;

    private ScoreTable(
            List<AppliedScale> scales, List<Alternative> alternatives, double[][] worths) {
        this.scales = scales;
        this.alternatives = alternatives;
        this.worths = worths;
        double[] weights = weights();
        totals = new double[alternatives.size()];
        missed = new int[alternatives.size()];
        for (int i = 0; i < totals.length; i++) {
            totals[i] = total(i, weights);
            missed[i] = alternatives.get(i).missedGates().size();
        }
    }

    static ScoreTable of(List<Criterion> criteria, List<Alternative> alternatives) {
        double weightSum = criteria.stream().mapToDouble(Criterion::weight).sum();
        List<AppliedScale> scales = new ArrayList<>();
        double[][] worths = new double[alternatives.size()][criteria.size()];
        for (int j = 0; j < criteria.size(); j++) {
            Criterion criterion = criteria.get(j);
            for (int i = 0; i < worths.length; i++) {
                worths[i][j] = criterion.scale().worthOf(alternatives.get(i).values().get(j));
            }
            double weight = criterion.weight() / weightSum;
            scales.add(
                    new AppliedScale(
                            criterion.name(), criterion.sense(), weight, criterion.scale()));
        }
        return new ScoreTable(List.copyOf(scales), alternatives, worths);
    }

    List<AppliedScale> scales() {
        return scales;
    }

    int size() {
        return alternatives.size();
    }

    Alternative alternative(int candidate) {
        return alternatives.get(candidate);
    }

    double[] weights() {
        return scales.stream().mapToDouble(AppliedScale::weight).toArray();
    }

    double worth(int candidate, int criterion) {
        return worths[candidate][criterion];
    }

    int missed(int candidate) {
        return missed[candidate];
    }

    double total(int candidate) {
        return totals[candidate];
    }

    double total(int candidate, double[] weights) {
        double sum = 0;
        for (int j = 0; j < weights.length; j++) {
            sum += weights[j] * worths[candidate][j];
        }
        return sum;
    }

    List<Contribution> contributions(int candidate) {
        return IntStream.range(0, scales.size())
                .mapToObj(
                        j ->
                                new Contribution(
                                        scales.get(j).criterion(),
                                        alternatives.get(candidate).values().get(j),
                                        worths[candidate][j],
                                        scales.get(j).weight() * worths[candidate][j]))
                .toList();
    }

    /** Candidates by fewest gates missed, then by total; level ones together, by name. */
    List<List<Integer>> levels() {
        List<Integer> order = new ArrayList<>(IntStream.range(0, size()).boxed().toList());
        order.sort(
                Comparator.<Integer>comparingInt(i -> missed[i])
                        .thenComparingLong(i -> -steps(totals[i]))
                        .thenComparing(this::byValues)
                        .thenComparingInt(i -> i));
        List<List<Integer>> levels = new ArrayList<>();
        for (int from = 0, to = 1; from < order.size(); from = to++) {
            while (to < order.size() && level(order.get(from), order.get(to))) {
                to++;
            }
            levels.add(List.copyOf(order.subList(from, to)));
        }
        return List.copyOf(levels);
    }

    /**
     * Better values first, criterion by criterion: so none stands before one that dominates it, and
     * no third candidate changes the order of two that share a rank.
     */
    private int byValues(int first, int second) {
        for (int j = 0; j < scales.size(); j++) {
            int order = order(j, second, first);
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }

    private int order(int criterion, int one, int other) {
        return scales.get(criterion)
                .sense()
                .compare(
                        alternatives.get(one).values().get(criterion),
                        alternatives.get(other).values().get(criterion));
    }

    private boolean level(int better, int candidate) {
        return missed[better] == missed[candidate]
                && steps(totals[better]) == steps(totals[candidate]);
    }

    /** A total in steps that tell two apart. */
    static long steps(double total) {
        return Math.round(total / LEVEL);
    }

    boolean dominates(int one, int other) {
        boolean better = false;
        for (int j = 0; j < scales.size(); j++) {
            int order = order(j, one, other);
            if (order < 0) {
                return false;
            }
            better |= order > 0;
        }
        Set<String> missedByOne = missedNames(one);
        Set<String> missedByOther = missedNames(other);
        return missedByOther.containsAll(missedByOne)
                && (better || missedByOther.size() > missedByOne.size());
    }

    private Set<String> missedNames(int candidate) {
        return alternatives.get(candidate).missedGates().stream()
                .map(GateVerdict::gate)
                .collect(Collectors.toSet());
    }

    /** Names of the candidates that pass a test, in order of name. */
    List<String> names(IntPredicate wanted) {
        return IntStream.range(0, size())
                .filter(wanted)
                .mapToObj(i -> alternatives.get(i).name())
                .toList();
    }
}
