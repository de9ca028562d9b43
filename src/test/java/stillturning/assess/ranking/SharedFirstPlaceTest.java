package stillturning.assess.ranking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stillturning.assess.ranking.Candidates.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Effort;

/**
 * Candidates whose order the weights do not decide share a rank, never behind one they dominate.
 */
class SharedFirstPlaceTest {

    /** Only the first criterion counts. */
    private static final List<Criterion> FIRST_ALONE = List.of(unit("cost", 1), unit("rest", 0));

    private static List<String> names(List<Standing> standings) {
        return standings.stream().map(Standing::name).toList();
    }

    @Test
    void theOneThatDominatesIsNamedFirstAndTheRankIsShared() {
        RankingResult result =
                Ranking.of(
                        FIRST_ALONE, List.of(Candidates.of("a", 1, 0), Candidates.of("b", 1, 1)));
        assertEquals(List.of("b", "a"), names(result.first()));
        assertEquals("b", result.leader().name());
        assertEquals(List.of("a"), result.leader().dominates());
    }

    @Test
    void aChainOfDominanceStandsInItsOrder() {
        RankingResult result =
                Ranking.of(
                        FIRST_ALONE,
                        List.of(
                                Candidates.of("a", 1, 0),
                                Candidates.of("b", 1, 0.5),
                                Candidates.of("c", 1, 1),
                                Candidates.of("d", 0, 1)));
        assertEquals(List.of("c", "b", "a"), names(result.first()));
        assertEquals(4, result.standing("d").rank());
    }

    @Test
    void withoutDominanceTheBetterByTheFirstCriterionIsNamedFirst() {
        List<Criterion> even = List.of(unit("one", 1), unit("other", 1));
        RankingResult result =
                Ranking.of(even, List.of(Candidates.of("a", 0, 1), Candidates.of("b", 1, 0)));
        assertEquals(List.of("b", "a"), names(result.first()));
    }

    @Test
    void whoIsAloneInFrontSharesNothing() {
        RankingResult result =
                Ranking.of(
                        FIRST_ALONE, List.of(Candidates.of("a", 1, 0), Candidates.of("b", 0.5, 1)));
        assertEquals(List.of("a"), names(result.first()));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 1000, 2000})
    void nobodyStandsBeforeOneWhoDominatesHim(long first) {
        for (long seed = first; seed < first + Effort.cases(60, 300); seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            List<Criterion> criteria = Candidates.randomCriteria(random);
            List<String> passed = new ArrayList<>();
            for (Standing standing :
                    Ranking.of(criteria, Candidates.random(random, criteria.size())).standings()) {
                passed.add(standing.name());
                assertTrue(
                        passed.containsAll(standing.dominatedBy()),
                        "seed " + seed + ": " + standing);
            }
        }
    }
}
