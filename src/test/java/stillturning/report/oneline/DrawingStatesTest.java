package stillturning.report.oneline;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stillturning.bench.Thorough;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.report.drawing.MarkState;
import stillturning.report.drawing.diagram.DiagramLine;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.oneline.DrawingStates.ShownStates;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Snapshot;
import stillturning.story.StateBar.Activity;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;
import stillturning.story.WatchedStory;
import stillturning.story.timeline.Timeline;

/** What a drawing shows after failures, held against what the story says. */
class DrawingStatesTest {

    private static final Study SANDPIPER = study("sandpiper");
    private static final Failure NOTHING = Failure.levers("nothing", Map.of());

    private static Study study(String name) {
        return StudyReader.read(Path.of("architectures", name)).study().orElseThrow();
    }

    /** One failure of one candidate, played. */
    private record Played(DrawnCandidate drawn, WatchedStory watched, DrawingStates looks) {
        static Played of(Study study, String id, String failure, Pilot pilot) throws UntoldStory {
            Candidate candidate = study.candidate(id).orElseThrow();
            Failure played =
                    FailureCatalogue.singlesOf(candidate).stream()
                            .filter(f -> f.name().equals(failure))
                            .findFirst()
                            .orElseThrow();
            return of(study, candidate, played, pilot);
        }

        static Played of(Study study, Candidate candidate, Failure failure, Pilot pilot)
                throws UntoldStory {
            Timeline timeline = new Timeline(study, candidate);
            DrawnCandidate drawn = CandidateDrawing.drawn(candidate, study);
            return new Played(
                    drawn,
                    timeline.watch(failure, Setting.with(pilot)),
                    new DrawingStates(candidate, drawn, failure, timeline.before()));
        }

        ShownStates at(double seconds) {
            return looks.at(watched.at(seconds));
        }

        double when(StoryEvent.Kind kind, String part) {
            return watched.story().of(kind).stream()
                    .filter(h -> h.part().equals(part))
                    .findFirst()
                    .orElseThrow()
                    .seconds();
        }

        MarkState line(double seconds, String from, String to) {
            List<DiagramLine> lines = drawn.diagram().lines();
            for (int i = 0; i < lines.size(); i++) {
                if (lines.get(i).fromSymbol().equals(from) && lines.get(i).toSymbol().equals(to)) {
                    return requireNonNull(at(seconds).lines().get(i));
                }
            }
            throw new AssertionError("no line from " + from + " to " + to);
        }
    }

    private static Set<String> symbols(ShownStates shown, MarkState look) {
        return shown.symbols().entrySet().stream()
                .filter(e -> e.getValue() == look)
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }

    @Test
    void withNothingWrongOnlyWhatIsOffIsDark() throws UntoldStory {
        for (Candidate candidate : SANDPIPER.candidates()) {
            Timeline timeline = new Timeline(SANDPIPER, candidate);
            DrawnCandidate drawn = CandidateDrawing.drawn(candidate, SANDPIPER);
            Snapshot before = timeline.before();
            ShownStates shown = new DrawingStates(candidate, drawn, NOTHING, before).at(before);
            assertEquals(drawn.meanings().keySet(), shown.symbols().keySet());
            assertEquals(drawn.strands().size(), shown.lines().size());
            assertEquals(
                    Set.of(MarkState.LIVE, MarkState.DARK), Set.copyOf(shown.symbols().values()));
            timeline.normal()
                    .working()
                    .forEach(load -> assertEquals(MarkState.LIVE, shown.symbols().get(load), load));
            drawn.diagram()
                    .symbols()
                    .forEach(
                            s ->
                                    assertEquals(
                                            s.glyph(),
                                            shown.glyphs().getOrDefault(s.id(), s.glyph()),
                                            candidate.id() + ": " + s.id()));
        }
    }

    @Test
    void aShortedMainBusBlowsItsFuseAndTheEngineBusGoesOnFromTheBattery() throws UntoldStory {
        String id = "one-battery-engine-bus";
        Played played = Played.of(SANDPIPER, id, "main-bus: short to ground", Pilot.PLANNED);
        double blown = played.when(StoryEvent.Kind.PROTECTOR_OPENS, "bus-lead-fuse");
        ShownStates just = played.at(blown / 2);
        assertEquals(Glyph.FUSE, just.glyphs().get("bus-lead-fuse"));
        assertEquals(MarkState.DARK, just.symbols().get("engine-bus"));
        ShownStates after = played.at(blown);
        assertEquals(Set.of("main-bus", "bus-lead-fuse"), symbols(after, MarkState.FAILED));
        assertEquals(Glyph.FUSE_BLOWN, after.glyphs().get("bus-lead-fuse"));
        assertEquals(MarkState.DARK, after.symbols().get("alternator"));
        assertEquals(Glyph.SWITCH_OPEN, after.glyphs().get("standby-feed"));

        double moved = played.when(StoryEvent.Kind.PILOT, "engine-stopped");
        ShownStates fed = played.at(moved);
        assertEquals(Glyph.SWITCH_CLOSED, fed.glyphs().get("standby-feed"));
        for (String there : List.of("battery", "standby-feed", "engine-bus", "coils-a")) {
            assertEquals(MarkState.ON_BACKUP, fed.symbols().get(there), there);
        }
        assertEquals(MarkState.ON_BACKUP, played.line(moved, "engine-bus", "coils-a-breaker"));
        assertEquals(MarkState.DARK, fed.symbols().get("radio"));
        // its anode is as dead as the bus it hangs on
        assertEquals(MarkState.DARK, fed.symbols().get("feed-diode"));

        double drops = played.when(StoryEvent.Kind.CONTACTS_OPEN, "master-contactor");
        assertEquals(Glyph.CONTACTOR_CLOSED, fed.glyphs().get("master-contactor"));
        assertEquals(Glyph.CONTACTOR_OPEN, played.at(drops).glyphs().get("master-contactor"));
    }

    @Test
    void aRunawayAlternatorRaisesWhateverItFeeds() throws UntoldStory {
        Played played =
                Played.of(study("first-steps"), "one-bus", "alternator: over-voltage", Pilot.NEVER);
        double highest = 0;
        for (Snapshot frame : played.watched.frames()) {
            ShownStates shown = played.looks.at(frame);
            int bus = requireNonNull(played.drawn.meanings().get("main-bus")).nets().get(0);
            boolean above = frame.volts(bus) > 18;
            highest = Math.max(highest, frame.volts(bus));
            if (above) {
                assertEquals(MarkState.OVER_VOLTAGE, shown.symbols().get("main-bus"));
            }
        }
        assertTrue(highest > 18, highest + " V");
        assertFalse(symbols(played.at(0), MarkState.FAILED).contains("main-bus"));
        assertTrue(symbols(played.at(0), MarkState.FAILED).contains("alternator"));
    }

    @Thorough
    @Test
    void aLoadThatWorksIsNeverDarkAndOneThatDoesNotIsNeverLive() throws UntoldStory {
        Study study = study("first-steps");
        for (Candidate candidate : study.candidates()) {
            for (Failure failure : FailureCatalogue.singlesOf(candidate)) {
                for (Pilot pilot : Pilot.values()) {
                    Played played = Played.of(study, candidate, failure, pilot);
                    for (Snapshot frame : played.watched.frames()) {
                        ShownStates shown = played.looks.at(frame);
                        study.aircraft()
                                .loads()
                                .forEach(load -> holds(load.id(), frame, shown, failure));
                    }
                }
            }
        }
    }

    private static void holds(String load, Snapshot frame, ShownStates shown, Failure failure) {
        MarkState look = Optional.ofNullable(shown.symbols().get(load)).orElseThrow();
        String where = failure.name() + ": " + load + " at " + frame.seconds() + " s";
        boolean hit = failure.hits().stream().anyMatch(h -> h.part().equals(load));
        Activity doing = frame.doing(load);
        if (hit) {
            assertEquals(MarkState.FAILED, look, where);
        } else if (doing == Activity.STARVED) {
            assertEquals(MarkState.STARVED, look, where);
        } else if (doing == Activity.WORKS) {
            assertNotEquals(MarkState.DARK, look, where);
            assertNotEquals(MarkState.STARVED, look, where);
        } else {
            assertTrue(look == MarkState.DARK || look == MarkState.FAILED, where + " is " + look);
        }
    }

    @Test
    void inTheFirstMomentOfAShortWhatRidesThroughIsBelowItsMinimum() throws UntoldStory {
        Played played =
                Played.of(
                        study("first-steps"),
                        "one-bus",
                        "main-bus: short to ground",
                        Pilot.PLANNED);
        assertEquals(MarkState.STARVED, played.at(0).symbols().get("computer"));
        double stops = played.when(StoryEvent.Kind.LOAD_STOPS, "computer");
        assertEquals(MarkState.DARK, played.at(stops).symbols().get("computer"));
    }

    @Test
    void alternatorLostPutsAllThatWorksOnBackup() throws UntoldStory {
        Played played =
                Played.of(study("first-steps"), "one-bus", "alternator: no output", Pilot.NEVER);
        ShownStates shown = played.at(played.when(StoryEvent.Kind.CUE, "low-voltage"));
        for (String there : List.of("battery", "main-bus", "computer", "pump", "radio", "lights")) {
            assertEquals(MarkState.ON_BACKUP, shown.symbols().get(there), there);
        }
        assertEquals(Set.of("alternator", "alternator-field"), symbols(shown, MarkState.FAILED));
    }
}
