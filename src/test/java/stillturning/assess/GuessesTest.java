package stillturning.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import stillturning.assess.GuessVariation.Doubts;
import stillturning.assess.Guesses.GuessChange;
import stillturning.assess.findout.FindingOut;
import stillturning.assess.findout.Turn;
import stillturning.assess.findout.Worth;
import stillturning.assess.ranking.Acceptability;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Candidate;
import stillturning.model.Cue;
import stillturning.model.EngineLogic;
import stillturning.model.Requirement;
import stillturning.model.Study;
import stillturning.model.goal.CriterionName;
import stillturning.parts.element.Demand.DemandKind;

/** Two candidates alike but for their batteries; what matters can be worked out by hand. */
class GuessesTest {

    private static final Requirement HALF_AN_HOUR = new Requirement.EnduranceWithoutCharging(1800);

    private static Bench bench(double ampHours, double breakerAmps, double computerAmps) {
        return new Bench()
                .part(Shelf.lead("battery", ampHours, 0.02, 1))
                .join("battery", "minus", "ground", "stud")
                .part(Shelf.alternator("alternator", 14.2, 45, false))
                .join("alternator", "case", "ground", "stud")
                .bus("bus")
                .breaker("breaker", breakerAmps)
                .join("battery", "plus", "bus", "bar")
                .join("alternator", "output", "bus", "bar")
                .join("alternator", "field", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_CURRENT, computerAmps, Bench.HARDY)
                .join("bus", "bar", "breaker", "in")
                .join("breaker", "out", "computer", "plus")
                .engine(new EngineLogic.One("computer"), true)
                .cue("alternator light", new Cue.AlternatorOut("alternator"))
                .enough(600);
    }

    private static Study study(Bench large, Bench small) {
        Study study = large.study();
        Study.Goals goals = study.goals();
        return new Study(
                "two",
                study.heading(),
                study.aircraft(),
                new Study.Goals(
                        goals.failurePhase(),
                        goals.enoughSeconds(),
                        List.of(HALF_AN_HOUR),
                        List.of(new Study.Weight(CriterionName.ENDURANCE, 1)),
                        Optional.empty(),
                        List.of()),
                List.of(named("large", large), named("small", small)));
    }

    private static Candidate named(String id, Bench bench) {
        Candidate c = bench.candidate();
        return new Candidate(id, id, "", c.parts(), c.joins(), c.cockpit());
    }

    // the field of 4 ohm still takes 3 A: 13 A from 8 Ah are 37 minutes, from 7 Ah 32
    private static final Assessment BASIS = Assess.of(study(bench(8, 30, 10), bench(7, 30, 10)));

    private static final GuessVariation LARGE_BATTERY =
            new GuessVariation(
                    new Guess("large", "battery", "8 Ah"),
                    f -> Optional.of(study(bench(8 * f, 30, 10), bench(7, 30, 10))));
    private static final GuessVariation SMALL_BATTERY =
            new GuessVariation(
                    new Guess("small", "battery", "7 Ah"),
                    f -> Optional.of(study(bench(8, 30, 10), bench(7 * f, 30, 10))));
    private static final GuessVariation LARGE_BREAKER =
            new GuessVariation(
                    new Guess("large", "breaker", "30 A"),
                    f -> Optional.of(study(bench(8, 30 * f, 10), bench(7, 30, 10))));
    private static final GuessVariation COMPUTER =
            new GuessVariation(
                    new Guess("study", "computer", "10 A"),
                    f ->
                            f > 1
                                    ? Optional.empty()
                                    : Optional.of(
                                            study(bench(8, 30, 10 * f), bench(7, 30, 10 * f))));

    private static Guesses tried(GuessVariation... doubts) {
        return Assess.guesses(BASIS, new Doubts(List.of(doubts), Optional.empty()), done -> {});
    }

    @Test
    void aGuessThatUnseatsTheLeaderSaysWhoIsFirstThen() {
        Guesses.Weighty battery = tried(LARGE_BATTERY).matter().get(0);
        // 6.4 Ah are 29.5 minutes: less than half an hour, and a fifth less than before
        assertEquals(new GuessChange.Leader("small"), battery.ifLess().get(0));
        assertEquals(
                new GuessChange.Requirement("large", HALF_AN_HOUR.inWords(), false),
                battery.ifLess().get(1));
        GuessChange.Endurance endurance = (GuessChange.Endurance) battery.ifLess().get(2);
        assertEquals(0.8, endurance.toSeconds() / endurance.fromSeconds(), 0.01);
        assertEquals(1, battery.ifMore().size());
        assertTrue(battery.ifMore().get(0) instanceof GuessChange.Endurance);
    }

    @Test
    void aGuessInAnotherCandidateCanUnseatTheLeaderToo() {
        Guesses.Weighty battery = tried(SMALL_BATTERY).matter().get(0);
        assertEquals(List.of(new GuessChange.Leader("small")), battery.ifMore());
        assertEquals(
                List.of(new GuessChange.Requirement("small", HALF_AN_HOUR.inWords(), false)),
                battery.ifLess());
    }

    @Test
    void aGuessThatChangesNothingIsCountedAsSuch() {
        Guesses guesses = tried(LARGE_BREAKER);
        assertEquals(List.of(), guesses.matter());
        assertEquals(List.of(LARGE_BREAKER.guess()), guesses.indifferent());
        assertEquals(List.of(), guesses.untried());
    }

    @Test
    void aBreakerThatThenOpensByItselfMakesItsCandidateUnwell() {
        GuessVariation small =
                new GuessVariation(
                        new Guess("large", "breaker", "6 A"),
                        f -> Optional.of(study(bench(8, f < 1 ? 5 : 30, 10), bench(7, 30, 10))));
        List<GuessChange> changes = tried(small).matter().get(0).ifLess();
        assertTrue(changes.contains(new GuessChange.Unwell("large")), changes.toString());
    }

    @Test
    void aValueThatCannotBeIsNotTriedThatWay() {
        Guesses guesses = tried(COMPUTER);
        assertEquals(
                List.of(new Guesses.Untried(COMPUTER.guess(), Optional.of("1.2 times"))),
                guesses.untried());
        // 11 A instead of 13 A
        GuessChange.Endurance longer =
                (GuessChange.Endurance) guesses.matter().get(0).ifLess().get(0);
        assertEquals(13.0 / 11, longer.toSeconds() / longer.fromSeconds(), 0.01);
    }

    @Test
    void theGravestComesFirst() {
        List<Guess> order =
                tried(LARGE_BREAKER, COMPUTER, SMALL_BATTERY, LARGE_BATTERY).matter().stream()
                        .map(Guesses.Weighty::guess)
                        .toList();
        // the small battery turns its verdict or the leader in half of its range, the large one in
        // a
        // fifth; the computer turns nothing, it only changes how long the leader lasts
        assertEquals(
                List.of(SMALL_BATTERY.guess(), LARGE_BATTERY.guess(), COMPUTER.guess()), order);
    }

    /** Alike but for their batteries, the two draw level where the batteries do. */
    @Test
    void theFirstPlaceTurnsWhereBothBatteriesAreEqual() {
        Worth large = tried(LARGE_BATTERY).matter().get(0).worth();
        Turn first = large.turns().stream().filter(Turn::first).findFirst().orElseThrow();
        assertTrue(first.below());
        assertEquals(7.0 / 8, 0.8 + 0.4 * first.place(), 0.4 * FindingOut.NEAR);
        assertEquals((7.0 / 8 - 0.8) / 0.4, large.first(), large.shareError() + 1e-9);
        Worth small = tried(SMALL_BATTERY).matter().get(0).worth();
        Turn other = small.turns().stream().filter(Turn::first).findFirst().orElseThrow();
        assertEquals(8.0 / 7, 0.8 + 0.4 * other.place(), 0.4 * FindingOut.NEAR);
        assertEquals((1.2 - 8.0 / 7) / 0.4, small.first(), small.shareError() + 1e-9);
    }

    /** Ranked again in full on either side of each turn. */
    @Test
    void onEitherSideOfATurnTheWholeRankingSaysSo() {
        for (GuessVariation doubt : List.of(LARGE_BATTERY, SMALL_BATTERY)) {
            for (Turn turn : tried(doubt).matter().get(0).worth().turns()) {
                if (turn.first()) {
                    assertEquals("large", leader(doubt, turn.before()));
                    assertEquals("small", leader(doubt, turn.after()));
                }
            }
        }
    }

    private static String leader(GuessVariation doubt, double place) {
        double value = doubt.reach().orElseThrow().at(place);
        Study changed = doubt.times().at(value, Set.of()).orElseThrow();
        return Assess.of(changed).ranking().orElseThrow().leader().name();
    }

    /**
     * Batteries of 8 and 7 Ah, each a fifth to either side: the second is larger in the triangle
     * above the diagonal, of width (8.4 - 6.4) Ah in a rectangle of 3.2 by 2.8.
     */
    @Test
    void drawnAtOnceTheFirstPlaceFollowsTheAreaInWhichTheSmallBatteryIsLarger() {
        GuessVariation.ChangedGuesses together =
                (places, candidates) ->
                        Optional.of(
                                study(
                                        bench(8 * (0.8 + 0.4 * places.get(1)), 30, 10),
                                        bench(7 * (0.8 + 0.4 * places.get(0)), 30, 10)));
        Doubts doubts = new Doubts(List.of(SMALL_BATTERY, LARGE_BATTERY), Optional.of(together));
        Acceptability spread =
                Assess.guesses(BASIS, doubts.drawn(64), done -> {}).spread().orElseThrow();
        assertEquals(64, spread.samples());
        double exact = 2.0 * 2.0 / 2 / (3.2 * 2.8);
        Acceptability.Accepted small = spread.candidates().get(1);
        assertEquals("small", small.name());
        assertEquals(exact, small.first(), small.firstError());
        assertEquals(exact, small.confidence(), small.confidenceError());
    }

    @Test
    void manyGuessesAtOnceLeadToTheSameAnswer() {
        List<GuessVariation> all = List.of(LARGE_BREAKER, SMALL_BATTERY, LARGE_BATTERY);
        GuessVariation.ChangedGuesses together =
                (places, candidates) -> {
                    List<Double> factors = places.stream().map(p -> 0.8 + 0.4 * p).toList();
                    return Optional.of(
                            study(
                                    bench(8 * factors.get(2), 30 * factors.get(0), 10),
                                    bench(7 * factors.get(1), 30, 10)));
                };
        Guesses screened =
                Assess.guesses(BASIS, new Doubts(all, Optional.of(together)), done -> {});
        assertEquals(tried(LARGE_BREAKER, SMALL_BATTERY, LARGE_BATTERY), screened);
    }

    @Test
    void theResultDoesNotDependOnTheNumberOfThreads() throws Exception {
        GuessVariation[] doubts = {LARGE_BREAKER, COMPUTER, SMALL_BATTERY, LARGE_BATTERY};
        List<Guesses> found = new ArrayList<>();
        for (int threads : new int[] {1, 4}) {
            ForkJoinPool pool = new ForkJoinPool(threads);
            try {
                found.add(pool.submit(() -> tried(doubts)).get());
            } finally {
                pool.shutdown();
            }
        }
        assertEquals(found.get(0), found.get(1));
    }

    @Test
    void progressIsToldOfBothTrialsOfEachGuess() {
        List<String> told = Collections.synchronizedList(new ArrayList<>());
        Guesses unused =
                Assess.guesses(
                        BASIS,
                        new Doubts(List.of(LARGE_BATTERY, COMPUTER), Optional.empty()),
                        told::add);
        assertEquals(4, told.size());
        assertEquals(2, Collections.frequency(told, "battery"));
        assertEquals(1, unused.untried().size());
    }

    @Test
    void onlyCandidatesThatTheChangeReachesAreAssessedAgain() {
        Study changed = SMALL_BATTERY.times().at(0.8, Set.of()).orElseThrow();
        Assessment again = Assess.again(changed, BASIS);
        assertSame(BASIS.of("large").orElseThrow(), again.of("large").orElseThrow());
        Assessment all = Assess.again(COMPUTER.times().at(0.8, Set.of()).orElseThrow(), BASIS);
        assertNotSame(BASIS.of("large").orElseThrow(), all.of("large").orElseThrow());
        assertEquals(Assess.of(changed).ranking(), again.ranking());
    }

    @Test
    void aGuessAmongWordsIsTriedWithEachOfTheOthers() {
        Guess guess = new Guess("large", "battery class", "large");
        Map<String, Supplier<Optional<Study>>> others = new LinkedHashMap<>();
        others.put("tiny", () -> Optional.of(study(bench(2, 30, 10), bench(7, 30, 10))));
        others.put("same", () -> Optional.of(study(bench(8, 30, 10), bench(7, 30, 10))));
        GuessVariation doubt = new GuessVariation(guess, others);
        assertEquals(2, doubt.trials());
        List<String> told = Collections.synchronizedList(new ArrayList<>());
        Guesses guesses =
                Assess.guesses(BASIS, new Doubts(List.of(doubt), Optional.empty()), told::add);
        assertEquals(List.of(guess.name(), guess.name()), told);
        assertEquals(List.of(), guesses.untried());
        assertEquals(2, guesses.choices().size());
        assertEquals("tiny", guesses.choices().get(0).other());
        assertEquals(new GuessChange.Leader("small"), guesses.choices().get(0).changes().get(0));
        assertEquals(List.of(), guesses.choices().get(1).changes());
    }
}
