package stillturning.report.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.assess.Guess;
import stillturning.assess.Guesses;
import stillturning.assess.Guesses.GuessChange;
import stillturning.assess.Guesses.Untried;
import stillturning.assess.Guesses.Weighty;
import stillturning.assess.findout.OpenInterval;
import stillturning.assess.findout.Turn;
import stillturning.assess.findout.Worth;
import stillturning.report.ReportSamples;
import stillturning.report.table.TerminalColour;

class GuessTextsTest {

    private static final Guess CAPACITY =
            new Guess("one-bus.yaml", "parts.battery.capacity", "12 Ah");
    private static final Guess CHARGE = new Guess("one-bus.yaml", "parts.battery.charge", "95 %");
    private static final Guess PUMP = new Guess("study.yaml", "loads.pump.draws", "5.5 A");

    private static final OpenInterval AMP_HOURS =
            new OpenInterval(9.6, 12, 14.4, v -> Math.round(10 * v) / 10. + " Ah");

    /** Another first in the lower quarter of the range. */
    private static final Worth WORTH =
            new Worth(0.25, 0.25, 0.002, 0.0123, 0.001, List.of(new Turn(0.252, 0.248, true)));

    private static Guesses guesses(
            List<Weighty> matter, List<Guess> indifferent, List<Untried> untried) {
        return new Guesses(matter, indifferent, untried, List.of(), List.of(), Optional.empty());
    }

    private static GuessTexts texts(Guesses guesses) {
        return new GuessTexts(ReportSamples.assessment(), guesses);
    }

    @Test
    void aRowSaysWhatEitherChangeBrings() {
        Weighty weighty =
                new Weighty(
                        CAPACITY,
                        List.of(
                                new GuessChange.Leader("one-bus"),
                                new GuessChange.Unwell("one-bus"),
                                new GuessChange.Requirement("one-bus", "lives long", false),
                                new GuessChange.Requirement("engine-bus", "lives long", false),
                                new GuessChange.Endurance("engine-bus", 3000, 1799.9)),
                        List.of(),
                        AMP_HOURS,
                        WORTH);
        GuessTexts.GuessTextRow row =
                texts(guesses(List.of(weighty), List.of(), List.of())).rows().get(0);
        assertEquals(
                "below 10.8 Ah: \"One bus for all\" is first; \"One bus for all\" is unwell with"
                        + " nothing wrong; each of \"One bus for all\", \"A bus for the engine\" misses"
                        + " \"lives long\"; endurance 29 min instead of 50 min",
                row.ifLess());
        assertEquals("-", row.ifMore());
        assertEquals("25 %", row.chance());
        assertEquals("0.012", row.worth());
    }

    @Test
    void whatWasNotTriedIsNotSaidToChangeNothing() {
        Weighty weighty =
                new Weighty(
                        CHARGE,
                        List.of(new GuessChange.Leader("one-bus")),
                        List.of(),
                        new OpenInterval(76, 95, 114, v -> v + " %"),
                        Worth.NOTHING);
        Guesses guesses =
                guesses(
                        List.of(weighty),
                        List.of(PUMP),
                        List.of(new Untried(CHARGE, Optional.of("114.0 %"))));
        assertEquals("not tried", texts(guesses).rows().get(0).ifMore());
        assertEquals(
                List.of(
                        "The other guess changes none of this, anywhere between the ends of its"
                                + " range.",
                        "Not tried, because no study can have that: parts.battery.charge,"
                                + " one-bus.yaml 114.0 %."),
                texts(guesses).rest());
    }

    @Test
    void whereNoGuessMattersThatIsSaid() {
        Guesses guesses = guesses(List.of(), List.of(CAPACITY, PUMP), List.of());
        assertEquals(
                List.of(
                        "None of the 2 guesses changes any of this, anywhere between the ends of"
                                + " its range."),
                texts(guesses).rest());
        assertEquals(List.of(), texts(guesses).table(TerminalColour.NONE));
        assertEquals(
                List.of("There is no guess to try."),
                texts(guesses(List.of(), List.of(), List.of())).rest());
    }

    @Test
    void theTableFitsATerminal() {
        Weighty weighty =
                new Weighty(
                        CAPACITY,
                        List.of(
                                new GuessChange.Uncomputed(
                                        "one-bus", "no operating point ".repeat(9))),
                        List.of(new GuessChange.Requirement("one-bus", "r ".repeat(90), true)),
                        AMP_HOURS,
                        WORTH);
        List<String> lines =
                texts(guesses(List.of(weighty), List.of(), List.of())).table(TerminalColour.NONE);
        assertTrue(lines.stream().allMatch(l -> l.length() <= 100), String.join("\n", lines));
        assertTrue(String.join("\n", lines).contains("meets"), String.join("\n", lines));
    }

    @Test
    void anotherWordIsToldInASentenceOfItsOwn() {
        Guess breakers = new Guess("study.yaml", "classes.breaker", "ordinary");
        Guesses guesses =
                new Guesses(
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(
                                new Guesses.GuessedWord(breakers, "fast", List.of()),
                                new Guesses.GuessedWord(
                                        breakers,
                                        "slow",
                                        List.of(new GuessChange.Leader("one-bus")))),
                        List.of(),
                        Optional.empty());
        assertEquals(
                List.of(
                        "If classes.breaker, study.yaml, is fast and not ordinary: none of this"
                                + " changes.",
                        "If classes.breaker, study.yaml, is slow and not ordinary: \"One bus for"
                                + " all\" is first."),
                texts(guesses).rest());
    }
}
