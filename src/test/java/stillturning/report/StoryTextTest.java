package stillturning.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.assess.Appraisal;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.failure.Failure;
import stillturning.story.Balance;
import stillturning.story.Endurance;
import stillturning.story.Moment;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;

class StoryTextTest {

    private static final Appraisal ENGINE_BUS =
            ReportSamples.assessment().of("engine-bus").orElseThrow();

    private static final PrintedNames NAMES = new PrintedNames(ENGINE_BUS.candidate());

    private static Verdict diodeOpen() {
        return ENGINE_BUS.singles().stream()
                .filter(v -> v.failure().name().equals("engine-diode: open"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void tellsWhatHappensInOrderAndWhatComesOfIt() {
        Verdict verdict = diodeOpen();
        assertEquals(Outcome.STOPS_UNTIL_PILOT_ACTS, verdict.outcome());
        List<String> lines = StoryText.of(verdict, Pilot.PLANNED, Optional.empty(), NAMES);
        String text = String.join("\n", lines);
        assertEquals("engine-diode: open, pilot as planned", lines.get(0));
        List<String> inOrder =
                List.of(
                        "0 ms  1        engine-diode: open",
                        "coils, pump stop: no supply",
                        "engine stops",
                        "pilot can see engine quiet",
                        "> pilot, by standby feed: engine-feed on",
                        "engine runs again",
                        "outcome:",
                        "pilot sees:",
                        "he acts, from:",
                        "dark before the pilot acts:",
                        "engine runs, pilot as planned:",
                        "engine runs, pilot three times as slow:",
                        "engine runs, pilot does nothing:",
                        "restart, the air turning the propeller:",
                        "restart, the propeller standing still:",
                        "bus voltages, lowest to highest:");
        int at = 0;
        for (String words : inOrder) {
            int found = text.indexOf(words, at);
            assertTrue(found >= at, words + " is missing or out of order in\n" + text);
            at = found;
        }
    }

    @Test
    void whatIsDarkIsNotSaidToPrecedeAPilotWhoHasNothingToDo() {
        Verdict quiet =
                ENGINE_BUS.singles().stream()
                        .filter(v -> !v.planned().aftermath().actedPilot())
                        .findFirst()
                        .orElseThrow();
        String text =
                String.join("\n", StoryText.of(quiet, Pilot.PLANNED, Optional.empty(), NAMES));
        assertTrue(text.contains("dark after the first events:"), text);
    }

    @Test
    void linesFitATerminal() {
        for (Verdict verdict : ENGINE_BUS.singles()) {
            for (String line : StoryText.of(verdict, Pilot.PLANNED, Optional.empty(), NAMES)) {
                assertTrue(line.length() <= 100, line);
            }
        }
    }

    @Test
    void everyStoryWithAnyPilotCanBeTold() {
        for (Pilot pilot : Pilot.values()) {
            List<String> lines = StoryText.of(diodeOpen(), pilot, Optional.empty(), NAMES);
            assertEquals("engine-diode: open, pilot " + pilot.words(), lines.get(0));
            boolean acts = lines.stream().anyMatch(l -> l.contains(" > pilot, by "));
            assertEquals(pilot != Pilot.NEVER, acts, String.join("\n", lines));
        }
    }

    // common practice, no published source: how people write times
    @ParameterizedTest
    @CsvSource({
        "0, 0 ms",
        "0.0041, 4.1 ms",
        "0.0124, 12 ms",
        "0.9996, 1.0 s",
        "3.04, 3.0 s",
        "59.7, 1 min",
        "200, 3 min 20 s",
        "1775.02, 29 min 35 s",
        "4320, 1 h 12 min"
    })
    void timesReadAsPeopleWriteThem(double seconds, String expected) {
        assertEquals(expected, EventLines.time(seconds));
    }

    @Test
    void loadsThatStopTogetherShareALineAndLaterCausesStillPointAtIt() {
        List<EventLines.EventLine> lines =
                EventLines.of(
                        story(
                                new StoryEvent(0, Kind.FAILURE, "bus", "bus: short", -1),
                                new StoryEvent(
                                        0.02, Kind.LOAD_STOPS, "radio", "stops: no supply", 0),
                                new StoryEvent(
                                        0.02, Kind.LOAD_STOPS, "pump", "stops: no supply", 0),
                                new StoryEvent(
                                        0.02, Kind.LOAD_STOPS, "lamp", "stops: 3.5 V is low", 0),
                                new StoryEvent(90, Kind.BATTERY_EMPTY, "cell", "is empty", 2),
                                new StoryEvent(90.015, Kind.ENGINE_STOPS, "engine", "stops", 4)));
        assertEquals(4, lines.size());
        assertEquals("radio, pump stop: no supply; lamp stops: 3.5 V is low", lines.get(1).event());
        assertEquals(2, lines.get(2).because());
        assertEquals("1 min 30 s", lines.get(2).time());
        assertEquals("+15 ms", lines.get(3).time());
        assertEquals(3, lines.get(3).because());
    }

    private static Story story(StoryEvent... happenings) {
        return new Story(
                Failure.levers("test", Map.of()),
                Moment.heldIn("cruise"),
                Setting.with(Pilot.NEVER),
                List.of(happenings),
                new Story.EngineFate(new Endurance.Lasts(90), Optional.empty(), 90, 0, 1, false),
                new Story.Aftermath(Set.of(), Set.of(), false),
                new Story.Measurements(
                        List.of(),
                        List.of(),
                        List.of(),
                        new Balance(Map.of(), List.of(), 0),
                        Set.of()),
                100);
    }
}
