package stillturning.assess.ranking;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What becomes of first place when weights and values are both unknown: stochastic multicriteria
 * acceptability.
 *
 * @param samples how often all values were drawn
 * @param leftOut draws beside these in which a candidate could not be computed
 * @param candidates in order of name
 * @see "R. Lahdelma, P. Salminen, Operations Research 49(3) (2001) 444-454 (from memory)"
 */
public record Acceptability(int samples, int leftOut, List<Accepted> candidates) {

    /** Of so many standard errors is the half width of a 95 % interval. */
    private static final double WIDE = 1.96;

    /** Agresti and Coull add so many drawn either way; keeps an error where all agree. */
    private static final double ADDED = 2;

    /**
     * One candidate.
     *
     * @param first share of draws and weightings in which it is first
     * @param firstError half width of the 95 % interval, from how much the draws differ
     * @param centralWeights mean weighting of those that put it first; empty where none does
     * @param confidence share of draws in which it is first with its central weights; 0 where it
     *     has none
     * @param confidenceError half width of the 95 % interval
     * @param asWeighed share of draws in which it is first with the criteria's own weights
     * @param asWeighedError half width of the 95 % interval
     */
    public record Accepted(
            String name,
            double first,
            double firstError,
            List<Double> centralWeights,
            double confidence,
            double confidenceError,
            double asWeighed,
            double asWeighedError) {
        public Accepted {
            centralWeights = List.copyOf(centralWeights);
        }
    }

    public Acceptability {
        candidates = List.copyOf(candidates);
    }

    /**
     * Over some draws of all values.
     *
     * @param drawn the same candidates in each draw
     * @param known of the order of the weights
     * @throws IllegalArgumentException if there is no draw
     */
    public static Acceptability of(
            List<Criterion> criteria, List<List<Alternative>> drawn, List<WeightOrder> known) {
        if (drawn.isEmpty()) {
            throw new IllegalArgumentException("no draw of the values");
        }
        Map<String, List<RankShares>> shares = new HashMap<>();
        for (List<Alternative> alternatives : drawn) {
            Ranking.of(criteria, alternatives, known)
                    .robustness()
                    .shares()
                    .forEach(s -> shares.computeIfAbsent(s.name(), n -> new ArrayList<>()).add(s));
        }
        List<Accepted> candidates =
                shares.keySet().stream()
                        .sorted()
                        .map(
                                name ->
                                        accepted(
                                                name,
                                                shares.getOrDefault(name, List.of()),
                                                criteria,
                                                drawn))
                        .toList();
        return new Acceptability(drawn.size(), 0, candidates);
    }

    /** The same, where so many draws more could not be computed. */
    public Acceptability leavingOut(int draws) {
        return new Acceptability(samples, draws, candidates);
    }

    private static Accepted accepted(
            String name,
            List<RankShares> shares,
            List<Criterion> criteria,
            List<List<Alternative>> drawn) {
        double[] firsts = shares.stream().mapToDouble(s -> s.byRank().get(0)).toArray();
        double sum = 0;
        double squares = 0;
        for (double first : firsts) {
            sum += first;
            squares += first * first;
        }
        int draws = firsts.length;
        double mean = sum / draws;
        double variance = draws == 1 ? 0 : Math.max(0, squares - sum * mean) / (draws - 1);
        List<Double> central = central(shares, sum, criteria.size());
        long times = central.isEmpty() ? 0 : leading(name, criteria, drawn, central);
        long own =
                leading(name, criteria, drawn, criteria.stream().map(Criterion::weight).toList());
        return new Accepted(
                name,
                mean,
                WIDE * Math.sqrt(variance / draws),
                central,
                (double) times / draws,
                error(times, draws),
                (double) own / draws,
                error(own, draws));
    }

    /** Half width of the 95 % interval of a share. */
    private static double error(long times, int draws) {
        double middle = (times + ADDED) / (draws + 2 * ADDED);
        return WIDE * Math.sqrt(middle * (1 - middle) / (draws + 2 * ADDED));
    }

    private static long leading(
            String name,
            List<Criterion> criteria,
            List<List<Alternative>> drawn,
            List<Double> weights) {
        return drawn.stream().filter(d -> leads(name, criteria, d, weights)).count();
    }

    /** Each draw counts by how often it puts the candidate first. */
    private static List<Double> central(List<RankShares> shares, double sum, int criteria) {
        return IntStream.range(0, sum > 0 ? criteria : 0)
                .mapToObj(
                        j ->
                                shares.stream()
                                                .filter(s -> !s.centralWeights().isEmpty())
                                                .mapToDouble(
                                                        s ->
                                                                s.byRank().get(0)
                                                                        * s.centralWeights().get(j))
                                                .sum()
                                        / sum)
                .toList();
    }

    private static boolean leads(
            String name, List<Criterion> criteria, List<Alternative> drawn, List<Double> weights) {
        List<Criterion> weighed =
                IntStream.range(0, criteria.size())
                        .mapToObj(
                                j ->
                                        new Criterion(
                                                criteria.get(j).name(),
                                                criteria.get(j).sense(),
                                                weights.get(j),
                                                criteria.get(j).scale()))
                        .toList();
        return Ranking.standings(weighed, drawn).stream()
                .anyMatch(s -> s.rank() == 1 && s.name().equals(name));
    }
}
