package stillturning.assess.ranking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.assess.ranking.WeightChange.Direction;

/** What is said to unseat the leader, against ranking again just before and just beyond. */
class UnseatingTest {

    private static final int COMPANIES = 1500;
    private static final double ASIDE = 1e-6;
    private static final int PLACES = 40;

    private record Company(List<Criterion> criteria, List<Alternative> alternatives) {

        /** Values of a coarse grid and weights of whole numbers, so that ties are common. */
        static Company of(SplittableRandom random) {
            int count = 2 + random.nextInt(3);
            List<Criterion> criteria = new ArrayList<>();
            for (int j = 0; j < count; j++) {
                criteria.add(Candidates.unit("c" + j, random.nextInt(4) + (j == 0 ? 1 : 0)));
            }
            List<Alternative> alternatives = new ArrayList<>();
            for (int i = 0; i < 2 + random.nextInt(4); i++) {
                double[] values = new double[count];
                for (int j = 0; j < count; j++) {
                    values[j] = random.nextInt(5) / 4.0;
                }
                alternatives.add(Candidates.of("n" + i, values));
            }
            return new Company(criteria, alternatives);
        }

        List<WeightChange> changes() {
            ScoreTable table = ScoreTable.of(criteria, alternatives);
            return Unseating.of(table, table.levels().get(0).get(0));
        }

        List<Standing> ranked() {
            return Ranking.standings(criteria, alternatives);
        }

        /** With another share of the weight on one criterion, the others in proportion. */
        List<Standing> ranked(int criterion, double share) {
            double all = criteria.stream().mapToDouble(Criterion::weight).sum();
            double rest = all - criteria.get(criterion).weight();
            List<Criterion> moved = new ArrayList<>();
            for (int j = 0; j < criteria.size(); j++) {
                double others =
                        rest > 0
                                ? criteria.get(j).weight() / rest
                                : 1.0 / Math.max(1, criteria.size() - 1);
                double weight = j == criterion ? share : (1 - share) * others;
                moved.add(Candidates.unit("c" + j, weight));
            }
            return Ranking.standings(moved, alternatives);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void justBeforeTheLeaderIsFirstAndJustBeyondTheNamedRivalIs(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int seen = 0;
        int tied = 0;
        for (int i = 0; i < COMPANIES; i++) {
            Company company = Company.of(random);
            String leader = company.ranked().get(0).name();
            double smaller = 0;
            for (WeightChange change : company.changes()) {
                assertTrue(change.size() >= smaller, () -> company + " " + change);
                smaller = change.size();
                seen++;
                tied += change.size() < ASIDE ? 1 : 0;
                assertDrawsLevelThere(company, change, leader);
            }
        }
        assertTrue(seen > COMPANIES && tied > COMPANIES / 20, seen + " seen, " + tied + " tied");
    }

    private static void assertDrawsLevelThere(Company company, WeightChange change, String leader) {
        int criterion = Integer.parseInt(change.criterion().substring(1));
        double step = change.direction() == Direction.RISES ? ASIDE : -ASIDE;
        List<Standing> beyond = company.ranked(criterion, change.to() + step);
        assertEquals(1, standing(beyond, change.newLeader()).rank(), () -> company + " " + change);
        assertNotEquals(1, standing(beyond, leader).rank(), () -> company + " " + change);
        double before = change.to() - step;
        if (change.size() > 2 * ASIDE) {
            assertEquals(1, standing(company.ranked(criterion, before), leader).rank());
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {5, 6})
    void betweenTheWeightNowAndWhereHeIsDrawnLevelTheLeaderIsFirst(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < COMPANIES / 10; i++) {
            Company company = Company.of(random);
            String leader = company.ranked().get(0).name();
            double all = company.criteria.stream().mapToDouble(Criterion::weight).sum();
            for (int j = 0; j < company.criteria.size(); j++) {
                double from = company.criteria.get(j).weight() / all;
                double free = free(company, "c" + j);
                for (int k = 0; k <= PLACES; k++) {
                    double share = k / (double) PLACES;
                    if (Math.abs(share - from) < free - ASIDE) {
                        assertEquals(1, standing(company.ranked(j, share), leader).rank());
                    }
                }
            }
        }
    }

    /** How far the weight may go either way before the leader is drawn level. */
    private static double free(Company company, String criterion) {
        Optional<WeightChange> change =
                company.changes().stream().filter(c -> c.criterion().equals(criterion)).findFirst();
        return change.map(WeightChange::size).orElse(2.0);
    }

    private static Standing standing(List<Standing> ranked, String name) {
        return ranked.stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
    }

    // Computed here: t = -d / (e - d) with e the difference on the criterion and d that on the
    // others; at a tie the level is the present weight itself.
    @Test
    void atATieTheLevelIsThePresentWeight() {
        Company tie =
                new Company(
                        Candidates.units(2),
                        List.of(Candidates.of("n0", 1, 0), Candidates.of("n1", 0, 1)));
        for (WeightChange change : tie.changes()) {
            assertEquals(.5, change.to(), 1e-12);
            assertEquals("n1", change.newLeader());
        }
        assertEquals(
                List.of(Direction.FALLS, Direction.RISES),
                tie.changes().stream().map(WeightChange::direction).toList());
    }

    @Test
    void aCriterionWithoutWeightUnseatsAsSoonAsItCounts() {
        Company tie =
                new Company(
                        List.of(
                                Candidates.unit("c0", 1),
                                Candidates.unit("c1", 0),
                                Candidates.unit("c2", 0)),
                        List.of(Candidates.of("n0", 1, .5, 0), Candidates.of("n1", 1, 0, 1)));
        WeightChange last =
                tie.changes().stream()
                        .filter(c -> c.criterion().equals("c2"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(0, last.to());
        assertEquals(Direction.RISES, last.direction());
        assertEquals("n1", last.newLeader());
    }

    /** Dominance by its definition, for each pair. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {7, 8})
    void dominanceIsAsByBruteForce(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < COMPANIES; i++) {
            Company company = Company.of(random);
            List<Standing> ranked = company.ranked();
            for (Alternative one : company.alternatives) {
                for (Alternative other : company.alternatives) {
                    assertEquals(
                            dominates(one.values(), other.values()),
                            standing(ranked, one.name()).dominates().contains(other.name()));
                }
            }
        }
    }

    private static boolean dominates(List<Double> one, List<Double> other) {
        boolean better = false;
        for (int j = 0; j < one.size(); j++) {
            if (one.get(j) < other.get(j)) {
                return false;
            }
            better |= one.get(j) > other.get(j);
        }
        return better;
    }
}
