package stillturning.assess.ranking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Ranks candidates: hard gates first, then the sum of weighted worths.
 *
 * <p>A candidate that misses fewer gates stands before one that misses more, whatever their values.
 * One candidate dominates another if it is at least as good in every criterion, misses no gate that
 * the other meets, and is better in one criterion or gate.
 */
public final class Ranking {
    private Ranking() {}

    /**
     * Order, reasons and robustness. The result does not depend on the order of the alternatives.
     *
     * @param alternatives at least one, with a value for each criterion and a verdict on the same
     *     gates
     * @throws IllegalArgumentException if names repeat, numbers or gates do not match, nothing is
     *     given, or all weights are 0
     */
    public static RankingResult of(List<Criterion> criteria, List<Alternative> alternatives) {
        return of(criteria, alternatives, List.of());
    }

    /**
     * The same, where something is known of the order of the weights; it narrows what becomes of
     * the ranks under other weights, and nothing else.
     *
     * @throws IllegalArgumentException also if what is known names no criterion or contradicts
     *     itself
     */
    public static RankingResult of(
            List<Criterion> criteria, List<Alternative> alternatives, List<WeightOrder> known) {
        ScoreTable table = table(criteria, alternatives);
        List<List<Integer>> levels = table.levels();
        List<Integer> order = levels.stream().flatMap(List::stream).toList();
        return new RankingResult(
                table.scales(),
                standings(table, levels),
                WeightSpace.robustness(
                        table,
                        order,
                        AdmissibleWeights.of(
                                criteria.stream().map(Criterion::name).toList(), known)),
                Unseating.of(table, order.get(0)));
    }

    /**
     * The same candidates by the same criteria with other weights, as {@link #of} would rank them.
     * What the weights do not reach is taken from before, so that a slider can be followed.
     *
     * @param weights one for each criterion, in the criteria's order
     * @throws IllegalArgumentException if a weight is missing or below 0, or all are 0
     */
    public static RankingResult reweighted(RankingResult before, List<Double> weights) {
        if (weights.size() != before.scales().size()) {
            throw new IllegalArgumentException(
                    "%d weights for %d criteria".formatted(weights.size(), before.scales().size()));
        }
        List<Criterion> criteria = new ArrayList<>();
        for (int i = 0; i < weights.size(); i++) {
            AppliedScale applied = before.scales().get(i);
            criteria.add(
                    new Criterion(
                            applied.criterion(), applied.sense(), weights.get(i), applied.scale()));
        }
        checkCriteria(criteria);
        ScoreTable table =
                byName(criteria, before.standings().stream().map(Ranking::alternative).toList());
        List<List<Integer>> levels = table.levels();
        List<Standing> standings = standings(table, levels);
        return new RankingResult(
                table.scales(),
                standings,
                before.robustness().inOrderOf(standings.stream().map(Standing::name).toList()),
                Unseating.of(table, levels.get(0).get(0)));
    }

    /** Order and reasons alone, without what becomes of them under other weights. */
    public static List<Standing> standings(
            List<Criterion> criteria, List<Alternative> alternatives) {
        ScoreTable table = table(criteria, alternatives);
        return standings(table, table.levels());
    }

    private static ScoreTable table(List<Criterion> criteria, List<Alternative> alternatives) {
        checkCriteria(criteria);
        checkAlternatives(criteria.size(), alternatives);
        return byName(criteria, alternatives);
    }

    private static ScoreTable byName(List<Criterion> criteria, List<Alternative> alternatives) {
        return ScoreTable.of(
                criteria,
                alternatives.stream().sorted(Comparator.comparing(Alternative::name)).toList());
    }

    private static Alternative alternative(Standing standing) {
        return new Alternative(
                standing.name(),
                standing.contributions().stream().map(Contribution::value).toList(),
                standing.missedGates());
    }

    private static List<Standing> standings(ScoreTable table, List<List<Integer>> levels) {
        List<Standing> standings = new ArrayList<>();
        for (List<Integer> level : levels) {
            int rank = standings.size() + 1;
            level.forEach(candidate -> standings.add(standing(table, candidate, rank)));
        }
        return List.copyOf(standings);
    }

    private static Standing standing(ScoreTable table, int candidate, int rank) {
        return new Standing(
                table.alternative(candidate).name(),
                rank,
                table.total(candidate),
                table.contributions(candidate),
                table.alternative(candidate).missedGates(),
                table.names(other -> table.dominates(other, candidate)),
                table.names(other -> table.dominates(candidate, other)));
    }

    private static void checkCriteria(List<Criterion> criteria) {
        Set<String> names = new HashSet<>();
        for (Criterion criterion : criteria) {
            if (!names.add(criterion.name())) {
                throw new IllegalArgumentException("two criteria named " + criterion.name());
            }
        }
        if (!(criteria.stream().mapToDouble(Criterion::weight).sum() > 0)) {
            throw new IllegalArgumentException("no criterion has a weight above 0");
        }
    }

    private static void checkAlternatives(int criteria, List<Alternative> alternatives) {
        if (alternatives.isEmpty()) {
            throw new IllegalArgumentException("no candidate to rank");
        }
        Set<String> gates = gatesOf(alternatives.get(0));
        Set<String> names = new HashSet<>();
        for (Alternative alternative : alternatives) {
            String name = alternative.name();
            if (!names.add(name)) {
                throw new IllegalArgumentException("two candidates named " + name);
            }
            if (alternative.values().size() != criteria) {
                throw new IllegalArgumentException(
                        "%s has %d values for %d criteria"
                                .formatted(name, alternative.values().size(), criteria));
            }
            if (!gatesOf(alternative).equals(gates)) {
                throw new IllegalArgumentException(
                        "%s answers gates %s but %s answers %s"
                                .formatted(
                                        name,
                                        gatesOf(alternative),
                                        alternatives.get(0).name(),
                                        gates));
            }
        }
    }

    private static Set<String> gatesOf(Alternative alternative) {
        Set<String> gates = new HashSet<>();
        alternative.gates().forEach(verdict -> gates.add(verdict.gate()));
        return gates;
    }
}
