package stillturning.assess.ranking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RankingPropertiesTest {
    private static final int ROUNDS = 8;

    private record Sample(List<Criterion> criteria, List<Alternative> alternatives) {
        static Sample of(SplittableRandom random) {
            List<Criterion> criteria = Candidates.randomCriteria(random);
            return new Sample(criteria, Candidates.random(random, criteria.size()));
        }

        RankingResult ranked() {
            return Ranking.of(criteria, alternatives);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aDominatedCandidateNeverStandsBeforeItsDominator(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < ROUNDS; round++) {
            RankingResult result = Sample.of(random).ranked();
            for (Standing standing : result.standings()) {
                for (String dominator : standing.dominatedBy()) {
                    assertTrue(
                            result.standing(dominator).rank() <= standing.rank(),
                            () -> dominator + " behind " + standing);
                    assertTrue(result.standing(dominator).dominates().contains(standing.name()));
                    assertTrue(firstShare(result, standing.name()) <= .5);
                }
            }
            assertFalse(result.efficient().isEmpty());
        }
    }

    private static double firstShare(RankingResult result, String name) {
        return result.robustness().shares().stream()
                .filter(shares -> shares.name().equals(name))
                .mapToDouble(shares -> shares.byRank().get(0))
                .sum();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void whoIsWorseEverywhereOnTheScaleIsNeverFirst(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < ROUNDS; round++) {
            int criteria = 1 + random.nextInt(4);
            double[] low = random.doubles(criteria, 0, .5).toArray();
            double[] high = low.clone();
            high[random.nextInt(criteria)] += .3;
            RankingResult result =
                    Ranking.of(
                            Candidates.units(criteria),
                            List.of(Candidates.of("low", low), Candidates.of("high", high)));
            assertEquals("high", result.leader().name());
            assertEquals(2, result.standing("low").rank());
            assertEquals(0, firstShare(result, "low"), 1e-3);
            assertTrue(result.unseatedBy().isEmpty());
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void inputOrderChangesNothing(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < ROUNDS; round++) {
            Sample sample = Sample.of(random);
            List<Alternative> shuffled = new ArrayList<>(sample.alternatives());
            Collections.shuffle(shuffled, new Random(seed));
            assertEquals(sample.ranked(), Ranking.of(sample.criteria(), shuffled));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void anotherUnitOrAnotherSumOfWeightsChangesNoRank(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < ROUNDS; round++) {
            Sample sample = Sample.of(random);
            RankingResult before = sample.ranked();
            RankingResult after =
                    Ranking.of(
                            sample.criteria().stream().map(c -> rescaled(c, 60, 3)).toList(),
                            sample.alternatives().stream().map(a -> rescaled(a, 60)).toList());
            assertEquals(ranks(before), ranks(after));
            assertEquals(before.robustness(), after.robustness());
        }
    }

    // Computed here: a scale k times as long with k times the weight (before normalising) values
    // the
    // same differences the same.
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aLongerScaleWithAsMuchMoreWeightKeepsTheOrder(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < ROUNDS; round++) {
            List<Criterion> criteria = new ArrayList<>(Candidates.units(3));
            List<Alternative> alternatives = new ArrayList<>();
            for (int i = 0; i < 5; i++) {
                alternatives.add(Candidates.of("n" + i, random.doubles(3).toArray()));
            }
            RankingResult before = Ranking.of(criteria, alternatives);
            criteria.set(1, new Criterion("c1", Sense.MORE_IS_BETTER, 4, Scale.straight(0, 4)));
            assertEquals(ranks(before), ranks(Ranking.of(criteria, alternatives)));
        }
    }

    private static List<String> ranks(RankingResult result) {
        return result.standings().stream().map(s -> s.rank() + " " + s.name()).toList();
    }

    private static Criterion rescaled(Criterion criterion, double factor, double weightFactor) {
        Scale ends = criterion.scale();
        Scale scale =
                new Scale(ends.worst() * factor, ends.halfway() * factor, ends.best() * factor);
        return new Criterion(
                criterion.name(), criterion.sense(), criterion.weight() * weightFactor, scale);
    }

    private static Alternative rescaled(Alternative alternative, double factor) {
        return new Alternative(
                alternative.name(),
                alternative.values().stream().map(value -> value * factor).toList(),
                alternative.gates());
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void rowsAndColumnsOfRankSharesSumToOne(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < ROUNDS; round++) {
            List<RankShares> shares = Sample.of(random).ranked().robustness().shares();
            for (int i = 0; i < shares.size(); i++) {
                int rank = i;
                assertEquals(1, shares.get(i).byRank().stream().mapToDouble(v -> v).sum(), 1e-9);
                assertEquals(1, shares.stream().mapToDouble(s -> s.byRank().get(rank)).sum(), 1e-9);
            }
        }
    }
}
