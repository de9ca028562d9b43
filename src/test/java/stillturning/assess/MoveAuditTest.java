package stillturning.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Cockpit;
import stillturning.model.Study;
import stillturning.model.failure.FailureCatalogue;
import stillturning.report.MoveTexts;
import stillturning.story.StoryEvent;

/** The written order of a drill is kept and played; a better one is told where there is one. */
class MoveAuditTest {

    private static final Study STUDY =
            StudyReader.read(Path.of("architectures/sandpiper")).study().orElseThrow();

    private static Map<String, String> moves(String... pairs) {
        Map<String, String> moves = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            moves.put(pairs[i], pairs[i + 1]);
        }
        return moves;
    }

    private static Optional<HarmfulMoves> drill(String id, Map<String, String> moves) {
        Candidate candidate = STUDY.candidate(id).orElseThrow();
        Cockpit said = candidate.cockpit();
        Cockpit other =
                new Cockpit(
                        said.flight(),
                        moves,
                        said.starting(),
                        said.cues(),
                        said.procedures(),
                        said.reach());
        return Assess.harmfulDrill(STUDY, candidate.with(other));
    }

    @Test
    void theDemosOwnDrillsDoNoHarmThatAnotherOrderSpares() {
        for (Candidate candidate : STUDY.candidates()) {
            assertEquals(Optional.empty(), Assess.harmfulDrill(STUDY, candidate), candidate.id());
        }
    }

    /** The battery taken off a charging alternator, and the master off before the standby feed. */
    @Test
    void aDrillThatTakesTheMasterFirstIsToldWithABetterOrder() {
        HarmfulMoves found =
                drill(
                                "one-battery-engine-bus",
                                moves(
                                        "master",
                                        "off",
                                        "standby-feed",
                                        "on",
                                        "alternator-switch",
                                        "off"))
                        .orElseThrow();
        assertEquals(FailureCatalogue.MASTER_OFF, found.what());
        assertEquals("master", found.written().keySet().iterator().next());
        List<String> better = List.copyOf(found.better().keySet());
        assertTrue(better.indexOf("standby-feed") < better.indexOf("master"), better.toString());
        String words =
                MoveTexts.findings(
                                STUDY.candidate("one-battery-engine-bus").orElseThrow(),
                                List.of(found))
                        .get(0);
        assertTrue(words.contains("(master off, then standby feed on, then "), words);
        assertTrue(words.contains("Better: standby feed on"), words);
    }

    /**
     * Where the engine hangs on the master, it stops in whatever order; the alternator need not.
     */
    @Test
    void whatEveryOrderDoesIsNotTheOrdersFault() {
        HarmfulMoves found =
                drill("one-battery-main-bus", moves("master", "off", "alternator-switch", "off"))
                        .orElseThrow();
        assertEquals(StoryEvent.Kind.LOAD_DUMP, found.harm().kind());
        assertEquals(List.of("alternator-switch", "master"), List.copyOf(found.better().keySet()));
    }
}
