package stillturning.assess.ranking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RobustnessTest {
    private static final double TOLERANCE = 0.002;

    private static RankShares of(RankingResult result, String name) {
        return result.robustness().shares().stream()
                .filter(shares -> shares.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static void assertNear(double[] expected, List<Double> actual) {
        double[] values = actual.stream().mapToDouble(v -> v).toArray();
        assertEquals(expected.length, values.length);
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], values[i], TOLERANCE, "entry " + i);
        }
    }

    // Rank acceptability and central weight: R. Lahdelma, P. Salminen, Operations Research 49(3)
    // (2001) 444-454; definitions read in a second source. The values of both cases are computed
    // here in closed form.
    @Test
    void sharesOfTwoCriteriaMatchTheClosedForm() {
        RankingResult result =
                Ranking.of(
                        Candidates.units(2),
                        List.of(
                                Candidates.of("A", 1, 0),
                                Candidates.of("B", 0, 1),
                                Candidates.of("C", .6, .6)));
        assertNear(new double[] {.4, .1, .5}, of(result, "A").byRank());
        assertNear(new double[] {.4, .1, .5}, of(result, "B").byRank());
        assertNear(new double[] {.2, .8, 0}, of(result, "C").byRank());
        assertNear(new double[] {.8, .2}, of(result, "A").centralWeights());
        assertNear(new double[] {.2, .8}, of(result, "B").centralWeights());
        assertNear(new double[] {.5, .5}, of(result, "C").centralWeights());
    }

    @Test
    void sharesOfThreeCriteriaMatchTheClosedForm() {
        RankingResult result =
                Ranking.of(
                        Candidates.units(3),
                        List.of(
                                Candidates.of("A", 1, 0, 0),
                                Candidates.of("B", 0, 1, 0),
                                Candidates.of("C", 0, 0, 1),
                                Candidates.of("D", .5, .5, .5)));
        double[] corner = {1 / 4., 1 / 12., 1 / 3., 1 / 3.};
        assertNear(corner, of(result, "A").byRank());
        assertNear(corner, of(result, "B").byRank());
        assertNear(corner, of(result, "C").byRank());
        assertNear(new double[] {1 / 4., 3 / 4., 0, 0}, of(result, "D").byRank());
        assertNear(new double[] {2 / 3., 1 / 6., 1 / 6.}, of(result, "A").centralWeights());
        assertNear(new double[] {1 / 6., 2 / 3., 1 / 6.}, of(result, "B").centralWeights());
        assertNear(new double[] {1 / 3., 1 / 3., 1 / 3.}, of(result, "D").centralWeights());
    }

    // Shares in closed form: P(all wi < t) = 1 - 3(1-t)^2 + 3(1-2t)^2 at t = .4, and areas of the
    // clipped simplex; computed here.
    @Test
    void sharesOfThreeCriteriaMatchTheAreasOfTheClippedSimplex() {
        assertFirstShares(
                new double[] {.32, .32, .32, .04},
                new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {.4, .4, .4}},
                List.of());
        assertFirstShares(
                new double[] {.2879726962, .3258992915, .3184037819, .0677242304},
                new double[][] {{1, .2, 0}, {0, 1, .3}, {.3, 0, 1}, {.5, .5, .5}},
                List.of());
        assertFirstShares(
                new double[] {2 / 3., 1 / 3.}, new double[][] {{1, 0}, {0, .5}}, List.of());
    }

    // With w1 >= w2 >= w3 the first leads but where w1 < .4: .04, by symmetry; computed here.
    @Test
    void knowingTheOrderOfTheWeightsLeavesTheSharesOfThatPart() {
        List<WeightOrder> ordered =
                List.of(new WeightOrder("c0", "c1"), new WeightOrder("c1", "c2"));
        assertFirstShares(
                new double[] {.96, 0, 0, .04},
                new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {.4, .4, .4}},
                ordered);
        // where w1 >= w2 the second never leads, and the third does in a third of it, by symmetry
        RankingResult half =
                ranked(
                        new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}},
                        List.of(new WeightOrder("c0", "c1")));
        assertEquals(0, firstOf(half, 1), 1e-12);
        assertEquals(2 / 3., firstOf(half, 0), 5e-3);
    }

    private static void assertFirstShares(
            double[] expected, double[][] values, List<WeightOrder> known) {
        RankingResult result = ranked(values, known);
        double error = result.robustness().shareError();
        assertTrue(error > 0 && error < .002, "stated error " + error);
        for (int i = 0; i < values.length; i++) {
            assertEquals(expected[i], firstOf(result, i), 1.5 * error, "candidate " + i);
        }
    }

    private static RankingResult ranked(double[][] values, List<WeightOrder> known) {
        List<Alternative> alternatives = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            alternatives.add(Candidates.of("n" + i, values[i]));
        }
        return Ranking.of(Candidates.units(values[0].length), alternatives, known);
    }

    private static double firstOf(RankingResult result, int candidate) {
        return of(result, "n" + candidate).byRank().get(0);
    }

    // P(w1 > c) = (1 - c)^(n - 1) for a uniform simplex (computed here).
    @ParameterizedTest
    @CsvSource({"3, .25", "4, .125", "5, .0625"})
    void oneWeightExceedsOneHalfAsOftenAsOnAUniformSimplex(int criteria, double expected) {
        AdmissibleWeights all = AdmissibleWeights.of(names(criteria), List.of());
        SplittableRandom random = new SplittableRandom(7);
        double[] weights = new double[criteria];
        int draws = 40_000;
        int above = 0;
        for (int i = 0; i < draws; i++) {
            all.at(random.doubles(all.dimensions()).toArray(), weights);
            assertEquals(1, Arrays.stream(weights).sum(), 1e-12);
            above += weights[0] > .5 ? 1 : 0;
        }
        assertEquals(expected, above / (double) draws, .01);
    }

    private static List<String> names(int criteria) {
        return IntStream.range(0, criteria).mapToObj(j -> "c" + j).toList();
    }

    // Rank-order centroid weights are the mean of the ordered simplex: F. Barron, B. Barrett 1996
    // (from memory, unverified); values computed here.
    @ParameterizedTest
    @CsvSource({
        "2, .75 .25",
        "3, .6111 .2778 .1111",
        "4, .5208 .2708 .1458 .0625",
    })
    void orderedWeightsAverageToTheRankOrderCentroid(int criteria, String expected) {
        List<WeightOrder> known =
                IntStream.range(1, criteria)
                        .mapToObj(j -> new WeightOrder("c" + (j - 1), "c" + j))
                        .toList();
        AdmissibleWeights ordered = AdmissibleWeights.of(names(criteria), known);
        SplittableRandom random = new SplittableRandom(11);
        double[] weights = new double[criteria];
        double[] mean = new double[criteria];
        int draws = 40_000;
        for (int i = 0; i < draws; i++) {
            ordered.at(random.doubles(ordered.dimensions()).toArray(), weights);
            for (int j = 0; j < criteria; j++) {
                mean[j] += weights[j] / draws;
            }
        }
        double[] centroid =
                Arrays.stream(expected.split(" ")).mapToDouble(Double::parseDouble).toArray();
        for (int j = 0; j < criteria; j++) {
            assertEquals(centroid[j], mean[j], .005);
        }
    }

    @Test
    void statementsThatContradictOrNameNothingAreRefused() {
        List<String> names = names(2);
        List<WeightOrder> circle =
                List.of(new WeightOrder("c0", "c1"), new WeightOrder("c1", "c0"));
        assertThrows(IllegalArgumentException.class, () -> AdmissibleWeights.of(names, circle));
        List<WeightOrder> strange = List.of(new WeightOrder("c0", "nobody"));
        assertThrows(IllegalArgumentException.class, () -> AdmissibleWeights.of(names, strange));
    }

    @Test
    void withOneCriterionNothingIsUncertain() {
        Robustness robustness =
                Ranking.of(Candidates.units(1), List.of(Candidates.of("A", 1))).robustness();
        assertEquals(1, robustness.weightings());
        assertEquals(0, robustness.shareError());
    }

    @Test
    void levelCandidatesShareTheirRanksEvenly() {
        RankingResult result =
                Ranking.of(
                        Candidates.units(2),
                        List.of(Candidates.of("A", .5, .5), Candidates.of("B", .5, .5)));
        assertEquals(List.of(.5, .5), of(result, "A").byRank());
        assertEquals(List.of(.5, .5), of(result, "B").byRank());
    }

    @Test
    void noWeightingLiftsACandidateOverOneThatMissesFewerGates() {
        RankingResult result =
                Ranking.of(
                        Candidates.units(1),
                        List.of(
                                Candidates.gated("good", 1, false),
                                Candidates.gated("meets", 0, true)));
        assertEquals(List.of(0.0, 1.0), of(result, "good").byRank());
        assertEquals(List.of(), of(result, "good").centralWeights());
        assertEquals(List.of(), result.unseatedBy());
    }

    // Computed here: C leads .6 to .5; A is level where w = .6 on the first criterion, B where it
    // is .4.
    @Test
    void smallestWeightChangeIsWhereTheTotalsAreLevel() {
        RankingResult result =
                Ranking.of(
                        Candidates.units(2),
                        List.of(
                                Candidates.of("A", 1, 0),
                                Candidates.of("B", 0, .9),
                                Candidates.of("C", .6, .6)));
        WeightChange first = result.unseatedBy().get(0);
        assertEquals(.5, first.from(), 1e-12);
        assertEquals(.1, first.size(), 1e-12);
        assertEquals("A", first.newLeader());
        WeightChange onFirst =
                result.unseatedBy().stream()
                        .filter(change -> change.criterion().equals("c0"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(.6, onFirst.to(), 1e-12);
    }

    @Test
    void leaderThatIsBestInEverythingIsNeverUnseated() {
        RankingResult result =
                Ranking.of(
                        Candidates.units(3),
                        List.of(Candidates.of("A", 1, 1, 1), Candidates.of("B", .9, .2, 1)));
        assertTrue(result.unseatedBy().isEmpty());
    }

    @Test
    void changeCountsFromZeroWeightToo() {
        List<Criterion> criteria = List.of(Candidates.unit("now", 1), Candidates.unit("never", 0));
        RankingResult result =
                Ranking.of(
                        criteria, List.of(Candidates.of("A", .8, 0), Candidates.of("B", .6, .6)));
        // computed here: .8 (1 - t) = .6 gives t = .25; the same weights seen from the other side
        WeightChange change = result.unseatedBy().get(0);
        assertEquals(.25, change.size(), 1e-12);
        assertEquals(2, result.unseatedBy().size());
        assertEquals(.25, result.unseatedBy().get(1).size(), 1e-12);
    }
}
