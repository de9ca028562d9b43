package stillturning.assess.ranking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RobustnessTest {
    private static final double TOLERANCE = 0.01;

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

    // P(w1 > c) = (1 - c)^(n - 1) for a uniform simplex (computed here).
    @ParameterizedTest
    @CsvSource({"3, .25", "4, .125", "5, .0625"})
    void oneWeightExceedsOneHalfAsOftenAsOnAUniformSimplex(int criteria, double expected) {
        SplittableRandom random = new SplittableRandom(7);
        double[] weights = new double[criteria];
        int draws = 40_000;
        int above = 0;
        for (int i = 0; i < draws; i++) {
            WeightSpace.draw(random, weights);
            assertEquals(1, Arrays.stream(weights).sum(), 1e-12);
            above += weights[0] > .5 ? 1 : 0;
        }
        assertEquals(expected, above / (double) draws, TOLERANCE);
    }

    // Rank-order centroid weights are the mean of the ordered simplex: F. Barron, B. Barrett 1996
    // (from memory, unverified); values computed here.
    @ParameterizedTest
    @CsvSource({
        "2, .75 .25",
        "3, .6111 .2778 .1111",
        "4, .5208 .2708 .1458 .0625",
    })
    void sortedWeightsAverageToTheRankOrderCentroid(int criteria, String expected) {
        SplittableRandom random = new SplittableRandom(11);
        double[] weights = new double[criteria];
        double[] mean = new double[criteria];
        int draws = 40_000;
        for (int i = 0; i < draws; i++) {
            WeightSpace.draw(random, weights);
            Arrays.sort(weights);
            for (int j = 0; j < criteria; j++) {
                mean[j] += weights[criteria - 1 - j] / draws;
            }
        }
        assertNear(
                Arrays.stream(expected.split(" ")).mapToDouble(Double::parseDouble).toArray(),
                Arrays.stream(mean).boxed().toList());
    }

    // T. Tervonen, R. Lahdelma 2007 (from memory, unverified): 9604 draws for 0.01 at 95 %.
    @Test
    void statedErrorIsThatOfTheNumberOfWeightings() {
        Robustness robustness =
                Ranking.of(Candidates.units(1), List.of(Candidates.of("A", 1))).robustness();
        double drawsForOnePercent =
                robustness.weightings() * Math.pow(robustness.shareError() / .01, 2);
        assertEquals(9604, drawsForOnePercent, 0.5);
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
