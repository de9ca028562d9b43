package stillturning.assess.ranking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ReweightedTest {

    private static final int DRAWN = 25;

    @Test
    void otherWeightsRankAsIfTheyHadBeenThereFromTheStart() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < DRAWN; i++) {
            List<Criterion> criteria = Candidates.randomCriteria(random);
            List<Alternative> alternatives = new ArrayList<>();
            for (int k = 0; k < 2 + random.nextInt(5); k++) {
                double[] values = new double[criteria.size()];
                for (int j = 0; j < values.length; j++) {
                    values[j] =
                            random.nextInt(6) == 0 ? Double.POSITIVE_INFINITY : random.nextInt(5);
                }
                alternatives.add(Candidates.of("k" + k, values));
            }
            List<Double> weights = new ArrayList<>();
            List<Criterion> reweighted = new ArrayList<>();
            for (Criterion c : criteria) {
                weights.add(0.5 + random.nextInt(8));
                reweighted.add(
                        new Criterion(
                                c.name(), c.sense(), weights.get(weights.size() - 1), c.scale()));
            }

            RankingResult before = Ranking.of(criteria, alternatives);

            assertEquals(Ranking.of(reweighted, alternatives), Ranking.reweighted(before, weights));
        }
    }

    @Test
    void missedGatesStillComeFirst() {
        List<Alternative> alternatives =
                List.of(
                        Candidates.gated("rich", 1, false, true),
                        Candidates.gated("sound", 0, true, true));
        RankingResult before = Ranking.of(Candidates.units(1), alternatives);

        RankingResult after = Ranking.reweighted(before, List.of(7.0));

        assertEquals("sound", after.leader().name());
        assertEquals(before.standings(), after.standings());
    }

    @Test
    void eachCriterionNeedsAWeightAndOneMustCount() {
        RankingResult before = Ranking.of(Candidates.units(2), List.of(Candidates.of("a", 1, 0)));

        assertThrows(
                IllegalArgumentException.class, () -> Ranking.reweighted(before, List.of(1.0)));
        assertThrows(
                IllegalArgumentException.class,
                () -> Ranking.reweighted(before, List.of(0.0, 0.0)));
    }
}
