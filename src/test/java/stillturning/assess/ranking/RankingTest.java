package stillturning.assess.ranking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class RankingTest {
    private static final double INFINITY = Double.POSITIVE_INFINITY;

    /**
     * Weights 100/60/40 come to .5, .3, .2 (swing weighting, from memory, unverified); totals
     * computed here.
     */
    private static RankingResult fourCandidates() {
        return Ranking.of(
                List.of(
                        Candidates.unit("x", 100),
                        Candidates.unit("y", 60),
                        Candidates.unit("z", 40)),
                List.of(
                        Candidates.of("A", 1, .2, .5),
                        Candidates.of("B", .4, .9, .6),
                        Candidates.of("C", .3, .8, .6),
                        Candidates.of("D", .6, .6, 1)));
    }

    private static List<String> names(RankingResult result) {
        return result.standings().stream().map(Standing::name).toList();
    }

    @Test
    void weightsAreSharesOfTheirSum() {
        List<Double> weights =
                fourCandidates().scales().stream().map(AppliedScale::weight).toList();
        assertEquals(List.of(.5, .3, .2), weights);
    }

    @Test
    void totalIsTheSumOfWeightTimesWorth() {
        RankingResult result = fourCandidates();
        assertEquals(List.of("D", "A", "B", "C"), names(result));
        double[] expected = {.68, .66, .59, .51};
        for (int i = 0; i < expected.length; i++) {
            Standing standing = result.standings().get(i);
            assertEquals(i + 1, standing.rank());
            assertEquals(expected[i], standing.total(), 1e-12);
            assertEquals(
                    expected[i],
                    standing.contributions().stream().mapToDouble(Contribution::points).sum(),
                    1e-12);
        }
    }

    @Test
    void whoIsWorseInNothingAndBetterInSomethingDominates() {
        RankingResult result = fourCandidates();
        assertEquals(List.of("B"), result.standing("C").dominatedBy());
        assertEquals(List.of("C"), result.standing("B").dominates());
        assertEquals(
                List.of("D", "A", "B"), result.efficient().stream().map(Standing::name).toList());
    }

    @Test
    void equalCandidatesDoNotDominateEachOtherAndShareARank() {
        RankingResult result =
                Ranking.of(
                        Candidates.units(2),
                        List.of(
                                Candidates.of("late", .5, .5),
                                Candidates.of("early", .5, .5),
                                Candidates.of("low", 0, 0)));
        assertEquals(List.of("early", "late", "low"), names(result));
        assertEquals(List.of(1, 1, 3), result.standings().stream().map(Standing::rank).toList());
        assertTrue(result.standing("early").efficient());
        assertTrue(result.standing("late").efficient());
    }

    @Test
    void sumsThatDifferOnlyByRoundingShareARank() {
        List<Criterion> criteria =
                List.of(
                        Candidates.unit("a", .1),
                        Candidates.unit("b", .2),
                        Candidates.unit("c", .3));
        RankingResult result =
                Ranking.of(
                        criteria,
                        List.of(Candidates.of("both", 1, 1, 0), Candidates.of("one", 0, 0, 1)));
        assertEquals(List.of(1, 1), result.standings().stream().map(Standing::rank).toList());
    }

    @Test
    void notLimitedIsWorthTheBestEndAndStillBetterThanIt() {
        List<Criterion> criteria =
                List.of(
                        new Criterion(
                                "endurance", Sense.MORE_IS_BETTER, 1, Scale.straight(0, 3600)));
        RankingResult result =
                Ranking.of(
                        criteria,
                        List.of(
                                Candidates.of("at the cap", 3600),
                                Candidates.of("not limited", INFINITY),
                                Candidates.of("beyond the cap", 7200),
                                Candidates.of("half", 1800)));
        assertEquals(1, result.standing("not limited").total());
        assertEquals(1, result.standing("at the cap").rank());
        assertEquals(.5, result.standing("half").total());
        assertEquals(
                List.of("beyond the cap", "not limited"),
                result.standing("at the cap").dominatedBy());
        assertEquals(List.of(), result.standing("not limited").dominatedBy());
    }

    @Test
    void aHalfwayValueBendsTheScale() {
        Scale scale = new Scale(1800, 2700, 7200);
        assertEquals(0, scale.worthOf(1800));
        assertEquals(.25, scale.worthOf(2250), 1e-12);
        assertEquals(.5, scale.worthOf(2700), 1e-12);
        assertEquals(.75, scale.worthOf(4950), 1e-12);
        assertEquals(1, scale.worthOf(7200), 1e-12);
        Scale falling = new Scale(20, 12, 10);
        assertEquals(.25, falling.worthOf(16), 1e-12);
        assertEquals(.75, falling.worthOf(11), 1e-12);
    }

    @Test
    void whatLiesBeyondAnEndCountsAsTheEnd() {
        Scale scale = Scale.straight(20, 10);
        assertEquals(1, scale.worthOf(3));
        assertEquals(Scale.ScalePlace.BEYOND_BEST, scale.placeOf(3));
        assertEquals(0, scale.worthOf(25));
        assertEquals(0, scale.worthOf(INFINITY));
        assertEquals(Scale.ScalePlace.BEYOND_WORST, scale.placeOf(INFINITY));
        assertEquals(Scale.ScalePlace.WITHIN, scale.placeOf(10));
        assertEquals(Scale.ScalePlace.WITHIN, scale.placeOf(20));
        assertThrows(IllegalArgumentException.class, () -> new Scale(0, 1, 1));
    }

    @Test
    void infinitelyMuchOfABadThingIsWorthNothing() {
        List<Criterion> criteria =
                List.of(
                        new Criterion(
                                "interruption", Sense.LESS_IS_BETTER, 1, Scale.straight(4, 0)));
        RankingResult result =
                Ranking.of(
                        criteria,
                        List.of(
                                Candidates.of("ends", 2),
                                Candidates.of("never ends", INFINITY),
                                Candidates.of("longer", 4)));
        assertEquals(List.of("ends", "longer", "never ends"), names(result));
        assertEquals(List.of(1, 2, 2), result.standings().stream().map(Standing::rank).toList());
        assertEquals(List.of("ends", "longer"), result.standing("never ends").dominatedBy());
    }

    @Test
    void fewerMissedGatesComeFirstWhateverTheValueAndNobodyIsHidden() {
        RankingResult result =
                Ranking.of(
                        Candidates.units(1),
                        List.of(
                                Candidates.gated("misses two", 1, false, false),
                                Candidates.gated("misses one", .9, false, true),
                                Candidates.gated("misses another", .95, true, false),
                                Candidates.gated("meets all", .1, true, true)));
        assertEquals(
                List.of("meets all", "misses another", "misses one", "misses two"), names(result));
        assertEquals(
                List.of("gate 0"),
                result.standing("misses one").missedGates().stream()
                        .map(GateVerdict::gate)
                        .toList());
        // better value, worse gate: neither dominates
        assertTrue(result.standing("misses two").efficient());
    }

    @Test
    void aMissedGateAloneIsEnoughToBeDominated() {
        RankingResult result =
                Ranking.of(
                        Candidates.units(1),
                        List.of(Candidates.gated("a", .5, true), Candidates.gated("b", .5, false)));
        assertEquals(List.of("a"), result.standing("b").dominatedBy());
    }

    /** Criteria in another order than their differences. */
    @Test
    void theLargestDifferenceStandsFirstWhereverItsCriterionDoes() {
        RankingResult result =
                Ranking.of(
                        Candidates.units(3),
                        List.of(Candidates.of("a", .5, .9, .7), Candidates.of("b", .4, .1, .4)));
        assertEquals(
                List.of("c1", "c2", "c0"),
                result.whyFirst().orElseThrow().better().stream()
                        .map(CriterionDifference::criterion)
                        .toList());
    }

    /** A value may come out as minus zero. */
    @Test
    void theTwoZerosAreOneValue() {
        for (Sense sense : Sense.values()) {
            assertEquals(0, sense.compare(-0.0, 0.0), sense.name());
            assertEquals(0, sense.compare(0.0, -0.0), sense.name());
        }
    }

    @Test
    void whyFirstLaysTheLeaderBesideTheRunnerUpLargestDifferenceFirst() {
        Comparison why = fourCandidates().whyFirst().orElseThrow();
        assertEquals("D", why.candidate());
        assertEquals("A", why.reference());
        assertEquals(.02, why.pointsAhead(), 1e-12);
        assertEquals(
                List.of("y", "z"),
                why.better().stream().map(CriterionDifference::criterion).toList());
        assertEquals(.12, why.better().get(0).points(), 1e-12);
        assertEquals(.10, why.better().get(1).points(), 1e-12);
        assertEquals(
                List.of("x"), why.worse().stream().map(CriterionDifference::criterion).toList());
        assertEquals(-.20, why.worse().get(0).points(), 1e-12);
        assertEquals(Comparison.Dominance.NEITHER, why.dominance());
    }

    @Test
    void whyNotLaysEverybodyElseBesideTheLeader() {
        List<Comparison> whyNot = fourCandidates().whyNot();
        assertEquals(List.of("A", "B", "C"), whyNot.stream().map(Comparison::candidate).toList());
        assertTrue(whyNot.stream().allMatch(c -> c.reference().equals("D")));
        assertTrue(whyNot.stream().allMatch(c -> c.pointsAhead() < 0));
    }

    @Test
    void comparisonNamesTheGatesThatOnlyOneMissesAndWhoDominates() {
        RankingResult result =
                Ranking.of(
                        Candidates.units(1),
                        List.of(
                                Candidates.gated("a", .5, true, false),
                                Candidates.gated("b", .4, false, false)));
        Comparison comparison = result.compare("b", "a");
        assertEquals(
                List.of("gate 0"),
                comparison.gatesMissed().stream().map(GateVerdict::gate).toList());
        assertEquals(List.of(), comparison.gatesReferenceMissed());
        assertEquals(Comparison.Dominance.DOMINATED, comparison.dominance());
        assertEquals(Comparison.Dominance.DOMINATES, result.compare("a", "b").dominance());
    }

    @Test
    void aSingleCandidateIsFirstWithNobodyToCompareItTo() {
        RankingResult result = Ranking.of(Candidates.units(1), List.of(Candidates.of("only", .5)));
        assertEquals("only", result.leader().name());
        assertTrue(result.whyFirst().isEmpty());
        assertEquals(List.of(), result.whyNot());
        assertEquals(List.of(1.0), result.robustness().shares().get(0).byRank());
    }

    @Test
    void mismatchedInputIsRefusedByName() {
        Alternative two = Candidates.of("two", 1, 2);
        assertRefused("two has 2 values for 1 criteria", Candidates.units(1), List.of(two));
        assertRefused("no candidate", Candidates.units(1), List.of());
        assertRefused("two candidates named two", Candidates.units(2), List.of(two, two));
        assertRefused(
                "no criterion has a weight above 0", List.of(), List.of(Candidates.of("none")));
        assertRefused(
                "two criteria named c",
                List.of(Candidates.unit("c", 1), Candidates.unit("c", 1)),
                List.of(two));
        assertRefused(
                "answers gates",
                Candidates.units(1),
                List.of(Candidates.gated("a", 1, true), Candidates.of("b", 1)));
        assertThrows(IllegalArgumentException.class, () -> Candidates.of("nan", Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Candidates.unit("c", -1));
        assertThrows(IllegalArgumentException.class, () -> Scale.straight(3, 3));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Criterion("c", Sense.LESS_IS_BETTER, 1, Scale.straight(0, 1)));
        assertThrows(IllegalArgumentException.class, () -> fourCandidates().standing("nobody"));
    }

    private static void assertRefused(
            String words, List<Criterion> criteria, List<Alternative> alternatives) {
        IllegalArgumentException refusal =
                assertThrows(
                        IllegalArgumentException.class, () -> Ranking.of(criteria, alternatives));
        String message = String.valueOf(refusal.getMessage());
        assertTrue(message.contains(words), message);
    }
}
