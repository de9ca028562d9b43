package stillturning.assess.findout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stillturning.assess.ranking.Alternative;
import stillturning.assess.ranking.Criterion;
import stillturning.assess.ranking.GateVerdict;
import stillturning.assess.ranking.Ranking;
import stillturning.assess.ranking.Scale;
import stillturning.assess.ranking.Sense;
import stillturning.assess.ranking.Standing;
import stillturning.bench.Effort;

/**
 * The worth of knowing by R. A. Howard, Information value theory, IEEE Trans. SSC-2 (1966) 22-26
 * (from memory); the values of these problems follow by hand.
 */
class WorthTest {

    private static Worth worth(DoubleFunction<Look> at) {
        return FindingOut.of(place -> Optional.of(at.apply(place)), 0.5, at.apply(0.5));
    }

    private static Look look(double... worths) {
        return new Look(
                IntStream.range(0, worths.length).mapToObj(i -> worths[i]).toList(), List.of());
    }

    /** A is worth 10, B 4 or 14 with equal chance: (10 + 14) / 2 with knowledge, 10 without. */
    @Test
    void aRivalThatIsMuchBetterHalfOfTheTimeIsWorthAskingAbout() {
        Worth worth = worth(place -> look(10, place > 0.5 ? 14 : 4));
        assertEquals(2, worth.points(), worth.pointsError());
        assertTrue(worth.pointsError() < 0.05, () -> "error " + worth.pointsError());
        assertEquals(0.5, worth.first(), worth.shareError());
        assertTrue(worth.turns().get(0).first());
    }

    /** With B 4 or 9 the choice never changes. */
    @Test
    void whatNeverChangesTheChoiceIsWorthNothing() {
        assertEquals(Worth.NOTHING, worth(place -> look(10, place > 0.5 ? 9 : 4)));
    }

    /** The mean of the greater of 1/2 and x over 0 to 1 is 5/8; without knowing it is 1/2. */
    @Test
    void aStraightRivalIsWorthAnEighth() {
        Worth worth = worth(place -> look(0.5, place));
        assertEquals(0.125, worth.points(), worth.pointsError() + 1e-4);
        assertEquals(0.5, worth.turns().get(0).place(), FindingOut.NEAR);
    }

    /** The mean of x^2 over 0 to 1 is 1/3: bends are seen, and their error is told. */
    @Test
    void theErrorCoversABend() {
        Worth worth = worth(place -> look(0.3, place * place));
        double turn = Math.sqrt(0.3);
        double exact = 0.3 * turn + (1 - turn * turn * turn) / 3 - 1.0 / 3;
        assertEquals(exact, worth.points(), worth.pointsError());
        assertEquals(1 - turn, worth.first(), worth.shareError());
    }

    @Test
    void aVerdictAloneTurnsWithoutAChoice() {
        Worth worth =
                worth(
                        place ->
                                new Look(
                                        List.of(1.0, 0.0),
                                        List.of(place < 0.2 ? "missed" : "met")));
        assertEquals(0, worth.first());
        assertEquals(0.2, worth.any(), worth.shareError());
        assertEquals(0, worth.points());
        assertTrue(worth.turns().get(0).below());
    }

    @Test
    void anEndThatCannotBeIsMovedBackTowardsWhatIsLikely() {
        Worth worth =
                FindingOut.of(
                        place ->
                                place > 0.8
                                        ? Optional.empty()
                                        : Optional.of(look(0.5, place + 0.1)),
                        0.3,
                        look(0.5, 0.4));
        // from 0 to 0.65, half-way back from 1 to 0.3
        assertEquals((0.65 - 0.4) / 0.65, worth.first(), worth.shareError());
    }

    /**
     * A problem of three candidates and three criteria, one value a straight line of the number.
     */
    private static final class Problem {

        private final double[][] from;
        private final double[][] slope;
        private final double limit;

        private Problem(double[][] from, double[][] slope, double limit) {
            this.from = from;
            this.slope = slope;
            this.limit = limit;
        }

        static Problem drawn(SplittableRandom random) {
            double[][] from = new double[3][3];
            double[][] slope = new double[3][3];
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    from[i][j] = random.nextDouble();
                    slope[i][j] = random.nextInt(3) == 0 ? random.nextDouble(-0.6, 0.6) : 0;
                }
            }
            return new Problem(from, slope, random.nextDouble(-0.2, 0.3));
        }

        List<Standing> standings(double place) {
            List<Alternative> alternatives = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                List<Double> values = new ArrayList<>();
                for (int j = 0; j < 3; j++) {
                    values.add(from[i][j] + slope[i][j] * place);
                }
                boolean met = values.get(0) >= limit;
                alternatives.add(
                        new Alternative(
                                "c" + i, values, List.of(new GateVerdict("enough", met, ""))));
            }
            List<Criterion> criteria =
                    IntStream.range(0, 3)
                            .mapToObj(
                                    j ->
                                            new Criterion(
                                                    "k" + j,
                                                    Sense.MORE_IS_BETTER,
                                                    1 + j,
                                                    Scale.straight(0, 1)))
                            .toList();
            return Ranking.standings(criteria, alternatives);
        }

        Look look(double place) {
            List<Standing> standings = standings(place);
            List<Double> worths = new ArrayList<>();
            List<String> verdicts = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                String name = "c" + i;
                Standing one =
                        standings.stream()
                                .filter(s -> s.name().equals(name))
                                .findFirst()
                                .orElseThrow();
                worths.add(one.total() - one.missedGates().size());
                verdicts.add(name + one.missedGates().size());
            }
            return new Look(worths, verdicts);
        }

        String answer(double place) {
            return standings(place).get(0).name() + look(place).verdicts();
        }
    }

    /** Everything that is said of random problems, held against ranking again at 801 places. */
    @Test
    void randomProblemsAreAnsweredAsByRankingAgainEverywhere() {
        SplittableRandom random = new SplittableRandom(5);
        int turning = 0;
        for (int n = 0; n < 100; n++) {
            Problem problem = Problem.drawn(random);
            Worth worth = worth(problem::look);
            for (Turn turn : worth.turns()) {
                assertNotEquals(problem.answer(turn.before()), problem.answer(turn.after()));
                assertTrue(Math.abs(turn.after() - turn.before()) <= FindingOut.NEAR);
            }
            Everywhere all = Everywhere.of(problem);
            if (all.turns() <= worth.turns().size()) {
                assertEquals(all.first(), worth.first(), worth.shareError() + 3e-3);
                assertEquals(all.any(), worth.any(), worth.shareError() + 3e-3);
                assertEquals(all.points(), worth.points(), worth.pointsError() + 3e-3);
                turning += worth.turns().isEmpty() ? 0 : 1;
            }
        }
        assertTrue(turning > 20, "only " + turning + " problems turned");
    }

    /** The same by brute force. */
    private record Everywhere(double first, double any, double points, int turns) {

        private static final int PLACES = Effort.cases(401, 801);

        static Everywhere of(Problem problem) {
            String likely = problem.answer(0.5);
            String leader = problem.standings(0.5).get(0).name();
            double first = 0;
            double any = 0;
            double best = 0;
            double[] means = new double[3];
            int turns = 0;
            String before = problem.answer(0);
            for (int n = 0; n < PLACES; n++) {
                double place = n / (PLACES - 1.0);
                Look look = problem.look(place);
                String now = problem.standings(place).get(0).name();
                String answer = now + look.verdicts();
                first += now.equals(leader) ? 0 : 1;
                any += answer.equals(likely) ? 0 : 1;
                best += look.worths().stream().mapToDouble(w -> w).max().orElseThrow();
                for (int i = 0; i < 3; i++) {
                    means[i] += look.worths().get(i) / PLACES;
                }
                turns += answer.equals(before) ? 0 : 1;
                before = answer;
            }
            double fixed = Math.max(means[0], Math.max(means[1], means[2]));
            return new Everywhere(first / PLACES, any / PLACES, best / PLACES - fixed, turns);
        }
    }
}
