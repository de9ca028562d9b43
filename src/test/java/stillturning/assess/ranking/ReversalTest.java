package stillturning.assess.ranking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** When a candidate joins or leaves, the others keep their order. */
class ReversalTest {

    private static final int COMPANIES = 1000;

    private static final Alternative P = Candidates.of("P", 8, 2);
    private static final Alternative Q = Candidates.of("Q", 4, 5);

    private static List<Criterion> criteria(Scale first, Scale second) {
        return List.of(
                new Criterion("one", Sense.MORE_IS_BETTER, 1, first),
                new Criterion("other", Sense.MORE_IS_BETTER, 1, second));
    }

    private static List<Double> totals(Scale first, Scale second, Alternative... company) {
        RankingResult result = Ranking.of(criteria(first, second), List.of(company));
        return List.of(result.standing("P").total(), result.standing("Q").total());
    }

    // Order of two turned by a third, when points run between the worst and the best of the
    // company:
    // the effect is V. Belton, T. Gear, Omega 11 (1983) 228-230 (from memory); the example and its
    // values are computed here.
    @Test
    void scalesBetweenTheWorstAndTheBestOfTheCompanyWouldLetAThirdTurnTheOrder() {
        assertEquals(List.of(.5, .5), totals(Scale.straight(4, 8), Scale.straight(2, 5), P, Q));
        Alternative poor = Candidates.of("R", 0, 0);
        List<Double> withPoor = totals(Scale.straight(0, 8), Scale.straight(0, 5), P, Q, poor);
        assertEquals(.70, withPoor.get(0), 1e-12);
        assertEquals(.75, withPoor.get(1), 1e-12);
        Alternative lopsided = Candidates.of("R", 8, -95);
        List<Double> withLopsided =
                totals(Scale.straight(4, 8), Scale.straight(-95, 5), P, Q, lopsided);
        assertEquals(.985, withLopsided.get(0), 1e-12);
        assertEquals(.50, withLopsided.get(1), 1e-12);
    }

    @Test
    void onStatedScalesTheThirdChangesNothing() {
        Scale ten = Scale.straight(0, 10);
        List<Double> alone = totals(ten, ten, P, Q);
        assertEquals(.50, alone.get(0), 1e-12);
        assertEquals(.45, alone.get(1), 1e-12);
        assertEquals(alone, totals(ten, ten, P, Q, Candidates.of("R", 0, 0)));
        assertEquals(alone, totals(ten, ten, P, Q, Candidates.of("R", 8, -95)));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void noCandidateThatJoinsOrLeavesChangesTheOrderOfTheOthers(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int compared = 0;
        for (int i = 0; i < COMPANIES; i++) {
            List<Criterion> criteria = Candidates.randomCriteria(random);
            List<Alternative> all = Candidates.random(random, criteria.size());
            List<Standing> before = standings(criteria, all);
            for (Alternative leaver : all) {
                List<Alternative> fewer = new ArrayList<>(all);
                fewer.remove(leaver);
                if (!fewer.isEmpty()) {
                    compared++;
                    assertSameOrder(before, standings(criteria, fewer), leaver.name());
                }
            }
        }
        assertTrue(compared > 2 * COMPANIES, "only " + compared + " were compared");
    }

    /** Without the shares of weightings, which cost time and are not looked at here. */
    private static List<Standing> standings(List<Criterion> criteria, List<Alternative> company) {
        return Ranking.standings(criteria, company);
    }

    private static void assertSameOrder(List<Standing> all, List<Standing> fewer, String left) {
        List<Standing> others = all.stream().filter(s -> !s.name().equals(left)).toList();
        for (int i = 0; i < fewer.size(); i++) {
            assertEquals(others.get(i).name(), fewer.get(i).name());
            assertEquals(others.get(i).total(), fewer.get(i).total());
        }
        for (int i = 1; i < fewer.size(); i++) {
            assertEquals(
                    others.get(i).rank() == others.get(i - 1).rank(),
                    fewer.get(i).rank() == fewer.get(i - 1).rank(),
                    "shared rank of " + fewer.get(i).name());
        }
    }
}
