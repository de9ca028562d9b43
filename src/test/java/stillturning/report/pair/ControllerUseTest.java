package stillturning.report.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Procedure;
import stillturning.model.Procedure.Execution;
import stillturning.model.Study;

/** What the demo's two controllers do, against what its files say. */
class ControllerUseTest {

    private static final Study STUDY =
            StudyReader.read(Path.of("architectures/sandpiper")).study().orElseThrow();

    private static final List<String> ENGINE = STUDY.aircraft().engine().logic().loads();

    @Test
    void oneThatServesTheAirframeAloneIsBypassedByTheEngine() {
        ControllerUse use = only(candidate("solid-state-split-engine"));
        assertEquals(
                Set.of(
                        "alternator",
                        "radio",
                        "transponder",
                        "flight-display",
                        "engine-monitor",
                        "lights",
                        "bilge-pump",
                        "gear-pump",
                        "pitot-heat"),
                Set.copyOf(use.served()));
        assertEquals(9, use.served().size(), "each once");
        assertEquals(ENGINE, use.bypassing());
        assertEquals(Set.of("alternator", "radio"), Set.copyOf(use.onByDefault()));
        assertEquals(List.of("gear-pump"), use.byRating().get(30.0));
        assertTrue(use.switchedInFlight().contains("lights"), "shed by hand");
        assertTrue(use.switchedInFlight().contains("alternator"), "its field is switched off");
    }

    @Test
    void oneForAllIsBypassedByNothing() {
        assertEquals(List.of(), only(candidate("solid-state")).bypassing());
    }

    @Test
    void aLayoutOfBreakersHasNone() {
        assertEquals(List.of(), ControllerUse.of(candidate("split-batteries"), ENGINE));
    }

    @Test
    void whatNobodyHasItDoIsUnusedAndWhatItDoesByItselfIsListed() {
        Candidate drawn = candidate("solid-state-split-engine");
        assertEquals(List.of(), only(drawn).shedByItself());
        assertEquals(List.of(), only(drawn).watched());
        Procedure byHand = drawn.cockpit().procedures().get(0);
        Procedure byItself =
                new Procedure(
                        byHand.name(),
                        byHand.when(),
                        byHand.responseSeconds(),
                        byHand.moves(),
                        byHand.sheds(),
                        new Execution(Optional.of("controller"), 0));
        Candidate automatic = drawn.with(drawn.cockpit().with(List.of(byItself)));
        assertEquals(Set.copyOf(byHand.sheds()), Set.copyOf(only(automatic).shedByItself()));
    }

    private static ControllerUse only(Candidate candidate) {
        List<ControllerUse> all = ControllerUse.of(candidate, ENGINE);
        assertEquals(1, all.size());
        return all.get(0);
    }

    private static Candidate candidate(String id) {
        return STUDY.candidate(id).orElseThrow();
    }
}
