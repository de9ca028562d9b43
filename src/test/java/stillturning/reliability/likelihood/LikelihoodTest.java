package stillturning.reliability.likelihood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stillturning.reliability.likelihood.HandMade.perFlight;
import static stillturning.reliability.likelihood.HandMade.perHour;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import stillturning.model.Chances.Per;
import stillturning.model.Chances.Rate;
import stillturning.model.failure.Cause.CauseKind;
import stillturning.reliability.chance.ChanceRange;
import stillturning.reliability.chance.ChanceRanges.RateContributor;
import stillturning.reliability.cutset.CutSets;
import stillturning.reliability.cutset.Healing;

/** What becomes of events, rates and a run-up card; expected values by the form of each event. */
class LikelihoodTest {

    private static final List<List<Integer>> PAIR = List.of(List.of(0, 1));

    private static HandMade pair() {
        return new HandMade().wire("one", perHour(1e-4)).wire("other", perHour(1e-5));
    }

    private static double average(ChanceEstimate estimated) {
        return estimated.point().average().value();
    }

    private static double within(double perHour, double hours) {
        return -Math.expm1(-perHour * hours);
    }

    @Test
    void whatTheCardRevealsCanOnlyHaveFailedInTheFlightItself() {
        LikelihoodResult likely = pair().revealed(1, 0).likely(PAIR);
        double checked = within(1e-4, 1) * within(1e-5, 1);
        assertEquals(checked, average(likely.checked()), 1e-9 * checked);
        assertEquals(4.998084e-8, average(likely.unchecked()), 5e-15);
        assertEquals(List.of(), likely.inspections());
    }

    @Test
    void whatTheWholeCardDoesNotConfirmStaysHidden() {
        LikelihoodResult likely = pair().unconfirmed(1, 0).likely(PAIR);
        assertEquals(4.998084e-8, average(likely.checked()), 5e-15);
        assertEquals(List.of(1), likely.inspections().stream().map(Inspection::event).toList());
    }

    @Test
    void aCauseOfWhichNobodySeesAnythingStays() {
        HandMade three =
                pair().wire("active", perHour(1e-4))
                        .hidden(0)
                        .hidden(1)
                        .cause(CauseKind.HOLE, "hole", Optional.of(perHour(1e-5)), 0, 1);
        assertEquals(4.998084e-8, average(three.likely(List.of(List.of(2, 3))).checked()), 5e-15);
        HandMade seen =
                pair().wire("active", perHour(1e-4))
                        .hidden(1)
                        .cause(CauseKind.HOLE, "hole", Optional.of(perHour(1e-5)), 0, 1);
        double once = within(1e-4, 1) * within(1e-5, 1);
        assertEquals(once, average(seen.likely(List.of(List.of(2, 3))).checked()), 1e-9 * once);
    }

    @Test
    void aCauseThatEndsTheEngineDoesNotStay() {
        HandMade both =
                pair().hidden(0)
                        .hidden(1)
                        .cause(CauseKind.HOLE, "h", Optional.of(perHour(1e-5)), 0, 1);
        double once = within(1e-5, 1);
        assertEquals(once, average(both.likely(List.of(List.of(2))).unchecked()), 1e-9 * once);
    }

    @Test
    void whatCountsByTheFlightGrowsFlightByFlightWhereItStays() {
        HandMade two =
                new HandMade()
                        .wire("one", perHour(1e-4))
                        .wire("other", perFlight(1e-5))
                        .flown(1, 100)
                        .hidden(1, 0);
        assertEquals(4.998084e-8, average(two.likely(PAIR).checked()), 5e-15);
        Inspection look =
                new HandMade()
                        .wire("one", perFlight(1e-4))
                        .wire("other", perHour(1e-5))
                        .flown(2, 1000)
                        .hidden(1, 0)
                        .likely(PAIR)
                        .inspections()
                        .get(0);
        // 2 * 1e-7 / (1e-4 / 2 * 1e-5)
        assertEquals(400 * 3600, look.everySeconds().orElseThrow(), 1e-3);
    }

    @Test
    void peopleCountByTheFlightAndStandAmongTheCauses() {
        LikelihoodResult likely =
                new HandMade().leftSwitch("a left off", perFlight(1e-3)).idlePilot().likely(PAIR);
        assertEquals(1e-5, average(likely.checked()), 1e-17);
        assertEquals(
                List.of("a left off", "pilot does nothing"),
                likely.causes().stream().map(Share::name).toList());
        assertEquals(List.of(), likely.parts());
    }

    @Test
    void allModesOfAPartCountAsOne() {
        LikelihoodResult likely =
                new HandMade()
                        .wire("one", perFlight(1e-3))
                        .mode("one", "chafes", perFlight(2e-3))
                        .wire("other", perFlight(1e-3))
                        .wire("idle", perFlight(1e-3))
                        .likely(List.of(List.of(0), List.of(1), List.of(2)));
        assertEquals(List.of("one", "other"), likely.parts().stream().map(Share::name).toList());
        assertEquals(.75, likely.parts().get(0).importance().fussellVeselySum(), 1e-12);
        assertEquals(List.of(0, 1), likely.parts().get(0).importance().events());
    }

    @Test
    void theEnginesOwnFailuresAreLeftOutButNotWhatTheyDoWithOthers() {
        LikelihoodResult likely =
                new HandMade()
                        .engineLoad(perFlight(1e-3))
                        .wire("one", perFlight(1e-4))
                        .likely(List.of(List.of(0), List.of(1)));
        assertEquals(List.of(List.of(0)), likely.engineOwn());
        assertEquals(List.of(List.of(1)), likely.sets());
        assertEquals(1e-4, average(likely.checked()), 1e-16);
        assertTrue(
                likely.supposed().stream()
                        .anyMatch(s -> s.startsWith("Left out: 1 set of the eng")),
                likely.supposed().toString());
    }

    private static HandMade two(String source, String otherSource) {
        return new HandMade()
                .wire("one", perHour(1e-6, 10, source))
                .wire("other", perHour(1e-6, 10, otherSource));
    }

    @Test
    void figuresOfOneSourceAreWrongTogether() {
        List<List<Integer>> singles = List.of(List.of(0), List.of(1));
        ChanceRange together = two("table", "table").likely(singles).checked().ranges().average();
        // two that are always equal have the spread of one
        assertEquals(2e-6, together.median(), .01e-6);
        assertEquals(2e-5, together.high95(), .02e-5);
        ChanceRange apart = two("table", "own").likely(singles).checked().ranges().average();
        assertTrue(apart.high95() < .9 * together.high95(), apart.toString());
        assertTrue(apart.low5() > 1.2 * together.low5(), apart.toString());
    }

    /** E[x²] = E[x]² exp(sigma²), lognormal, computed here: 7.0968 for a factor of 10. */
    @Test
    void leftSwitchesAndNeedlessDrillsAreOneGuess() {
        LikelihoodResult likely =
                new HandMade()
                        .leftSwitch("a left off", new Rate(1e-6, 10, Per.FLIGHT, "guess"))
                        .needlessDrill("master-off drill without need")
                        .likely(PAIR);
        double mean = 1e-6 * Math.exp(Math.log(7.0968) / 2);
        assertEquals(7.0968 * mean * mean, average(likely.checked()), 1e-3 * mean * mean);
        assertEquals(likely.worst().get(0).perFlight(), average(likely.checked()), 1e-20);
        assertEquals(1, likely.checked().ranges().contributors().size());
    }

    /** A pair of one source counts 7 times as often, so it is looked at 7 times as often. */
    @Test
    void anInspectionAllowsForWhatIsWrongTogether() {
        Inspection together = hiddenPair("table").inspections().get(0);
        Inspection apart = hiddenPair("own").inspections().get(0);
        assertEquals(
                7.0968,
                apart.everySeconds().orElseThrow() / together.everySeconds().orElseThrow(),
                1e-3);
    }

    private static LikelihoodResult hiddenPair(String otherSource) {
        return new HandMade()
                .wire("one", perHour(1e-5, 10, "table"))
                .wire("other", perHour(1e-5, 10, otherSource))
                .flown(1, 1_000_000)
                .hidden(1, 0)
                .likely(PAIR);
    }

    @Test
    void aSharedFigureIsKnownFromWhereItsUnitsAre() {
        List<RateContributor> contributors =
                two("table", "table")
                        .cause(
                                CauseKind.FIRMWARE,
                                "firmware pair",
                                Optional.of(perHour(1e-7, 10, "a tenth")),
                                0,
                                1)
                        .likely(List.of(List.of(2), List.of(0, 1)))
                        .checked()
                        .ranges()
                        .contributors();
        assertEquals(1, contributors.size());
        assertEquals(0, contributors.get(0).source());
        assertEquals(1, contributors.get(0).share(), 1e-9);
    }

    @Test
    void aWeakerUnitKeepsTheSameShareOfItsOwn() {
        LikelihoodResult likely =
                new HandMade()
                        .wire("weak", perFlight(1e-3))
                        .wire("strong", perFlight(4e-3))
                        .cause(CauseKind.ALIKE, "alike", Optional.of(perFlight(1e-3)), 0, 1)
                        .likely(List.of(List.of(0, 1)));
        assertEquals(.75e-3 * 3e-3, average(likely.checked()), 1e-15);
    }

    @Test
    void noIntervalIsLongerThanTheUsualInspection() {
        Inspection look = pair().hidden(1, 0).likely(PAIR).inspections().get(0);
        assertEquals(OptionalDouble.of(100 * 3600), look.everySeconds());
        assertEquals("the usual inspection every 100 h is often enough", look.words());
    }

    @Test
    void whatAFlightIsTooLongForIsLookedAtBeforeEachAndThatIsNotEnough() {
        Inspection look =
                new HandMade()
                        .wire("one", perHour(1e-2))
                        .wire("other", perHour(1e-4))
                        .hidden(1, 0)
                        .likely(PAIR)
                        .inspections()
                        .get(0);
        assertEquals(.2 * 3600, look.everySeconds().orElseThrow(), 1e-6);
        assertTrue(look.words().startsWith("before every flight, and even then it is likelier"));
    }

    /** Both unseen: either may come first, so the second comes at twice the rate. */
    @Test
    void aPartnerThatNobodySeesEitherHalvesTheInterval() {
        HandMade both =
                new HandMade()
                        .wire("one", perHour(1e-5))
                        .wire("other", perHour(1e-5))
                        .flown(1, 2500)
                        .hidden(0, 1)
                        .hidden(1, 0);
        for (Inspection look : both.likely(PAIR).inspections()) {
            assertEquals(1000 * 3600, look.everySeconds().orElseThrow(), 1e-3);
        }
    }

    @Test
    void whatNeverFailsAsksForNoInspection() {
        Inspection look =
                new HandMade()
                        .wire("one", perHour(0))
                        .wire("other", perHour(1e-4))
                        .hidden(1, 0)
                        .likely(PAIR)
                        .inspections()
                        .get(0);
        assertEquals(OptionalDouble.empty(), look.everySeconds());
    }

    @Test
    void everySideOnWhichItErrsIsSaid() {
        HandMade made = pair().hidden(0, 1).hidden(1, 0).idlePilot();
        CutSets sets =
                new CutSets(
                        3,
                        PAIR,
                        List.of(new Healing(List.of(0, 1), 2)),
                        List.of(List.of(0, 2), List.of(1, 2)),
                        4,
                        false);
        String supposed = String.join("\n", made.likely(made.joint(sets)).supposed());
        for (String said :
                List.of(
                        "phase cruise",
                        "Sets of more than 3 events are left out; the truth may be higher",
                        "The search was called off",
                        "what 2 sets would do; counted as ending the engine; the truth may be"
                                + " lower",
                        "undo (1 case) counts as if nothing undid it; the truth may be lower",
                        "inspection every 100 h",
                        "Without the run-up, 1 set of failures that nobody sees",
                        "certifies nothing")) {
            assertTrue(supposed.contains(said), said + " in\n" + supposed);
        }
    }

    /** On the cautious side: what cannot be told counts as what is known to end the engine. */
    @Test
    void aSetThatNobodyCanTellCountsAsOneThatEndsTheEngine() {
        HandMade made = pair().wire("third", perHour(1e-3));
        List<List<Integer>> both = List.of(List.of(0, 1), List.of(2));
        LikelihoodResult known = made.likely(both);
        LikelihoodResult doubted =
                made.likely(
                        made.joint(
                                new CutSets(
                                        2,
                                        List.of(List.of(0, 1)),
                                        List.of(),
                                        List.of(List.of(2), List.of(0, 2)),
                                        4,
                                        true)));
        assertEquals(average(known.checked()), average(doubted.checked()));
        assertEquals(both.size(), doubted.sets().size());
        assertTrue(average(doubted.checked()) > average(made.likely(PAIR).checked()));
    }

    @Test
    void nothingToGoWrongNeverComesAndSaysHowFarWasSearched() {
        LikelihoodResult likely = new HandMade().likely(List.of());
        assertEquals(0, average(likely.checked()));
        assertEquals(0, likely.unchecked().ranges().last().high95());
        assertEquals(List.of(), likely.worst());
        assertEquals(List.of(), likely.parts());
        assertTrue(likely.supposed().stream().anyMatch(s -> s.startsWith("No set counts")));
    }

    @Test
    void aFailureWithoutARateIsNamedAndNotTakenForZero() {
        HandMade made = pair().unknown("one", "melts", false);
        IllegalArgumentException thrown =
                assertThrows(IllegalArgumentException.class, () -> made.likely(PAIR));
        assertEquals(
                "bench: nobody says how often this happens: one, failure mode melts",
                thrown.getMessage());
    }

    @Test
    void aCauseWithoutARateIsNamed() {
        HandMade made = pair().cause(CauseKind.HOLE, "hole in the wall", Optional.empty(), 0, 1);
        IllegalArgumentException thrown =
                assertThrows(IllegalArgumentException.class, () -> made.likely(PAIR));
        assertEquals(
                "bench: nobody says how often this happens: common cause hole in the wall",
                thrown.getMessage());
    }

    @Test
    void aShareLargerThanTheWholeIsRefused() {
        HandMade made = pair().cause(CauseKind.ALIKE, "alike", Optional.of(perHour(1e-3)), 0, 1);
        IllegalArgumentException thrown =
                assertThrows(IllegalArgumentException.class, () -> made.likely(PAIR));
        assertTrue(String.valueOf(thrown.getMessage()).startsWith("alike happens at "));
    }

    @Test
    void oneThreadFindsTheSame() throws InterruptedException, ExecutionException {
        HandMade made = two("table", "own").hidden(1, 0).idlePilot();
        List<List<Integer>> sets = List.of(List.of(0, 1), List.of(1, 2));
        LikelihoodResult many = made.likely(sets);
        ForkJoinPool alone = new ForkJoinPool(1);
        try {
            assertEquals(many, alone.submit(() -> made.likely(sets)).get());
        } finally {
            alone.shutdown();
        }
    }
}
