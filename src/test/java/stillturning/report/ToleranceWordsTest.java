package stillturning.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.assess.Assess;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Selectivity;
import stillturning.assess.verdict.Selectivity.FailureExample;
import stillturning.assess.verdict.Selectivity.ProtectorPair;
import stillturning.assess.verdict.Verdict;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.EngineLogic;
import stillturning.model.failure.Failure;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.report.json.JsonReport;
import stillturning.story.Pilot;
import stillturning.story.UntoldStory;

/** What the protectors' tolerance leaves open, as people and programs read it. */
class ToleranceWordsTest {

    /** Two fuses in a row that are too close, and a heater that draws 120 % of the last. */
    private static Bench bench() {
        return new Bench()
                .part(Shelf.lead("battery", 40, 0.02, 1))
                .join("battery", "minus", "ground", "stud")
                .bus("stub")
                .part(Shelf.fuse("upstream", 8))
                .join("battery", "plus", "upstream", "in")
                .load("computer", DemandKind.CONSTANT_CURRENT, 0.01, Bench.HARDY)
                .join("computer", "plus", "upstream", "out")
                .part(Shelf.fuse("downstream", 5))
                .join("upstream", "out", "downstream", "in")
                .join("downstream", "out", "stub", "bar")
                .closedSwitch("switch", "off")
                .join("stub", "bar", "switch", "in")
                .load("heater", DemandKind.CONSTANT_CURRENT, 6, Bench.HARDY)
                .join("switch", "out", "heater", "plus")
                .engine(new EngineLogic.One("computer"), true);
    }

    private static Verdict verdict(Failure failure) throws UntoldStory {
        Bench bench = bench();
        return Assess.one(bench.study(), bench.candidate(), failure);
    }

    private static String told(Verdict verdict) {
        PrintedNames names = new PrintedNames(bench().candidate());
        return String.join(" ", StoryText.of(verdict, Pilot.PLANNED, Optional.empty(), names))
                .replaceAll(" +", " ");
    }

    @Test
    void aStoryNamesWhoMayBeFirstAndWhatThen() throws UntoldStory {
        Verdict verdict = verdict(bench().failure("stub: short to ground"));
        String text = told(verdict);
        assertTrue(text.contains("upstream may be first, after"), text);
        assertTrue(text.contains("where downstream takes up to"), text);
        assertTrue(text.contains("then: engine lost"), text);
    }

    @Test
    void aStorySaysThatAProtectorMayNeverOpen() throws UntoldStory {
        Verdict verdict = verdict(Failure.levers("heater on", Map.of("switch", "on")));
        String text = told(verdict);
        assertTrue(text.contains("downstream may never open"), text);
    }

    @Test
    void jsonHasTheSame() throws UntoldStory {
        String json = JsonReport.story(verdict(bench().failure("stub: short to ground")));
        assertTrue(json.contains("\"withinTolerance\" : {"), json);
        assertTrue(json.contains("\"instead\" : \"upstream\""), json);
    }

    @Test
    void thePageHasARowForEachPair() {
        FailureExample worst =
                new FailureExample(
                        "stub: short",
                        0.02,
                        Double.POSITIVE_INFINITY,
                        Outcome.ENGINE_LOST,
                        Outcome.NO_EFFECT);
        List<String> cells =
                ToleranceWords.table(
                                new Selectivity(
                                        List.of(new ProtectorPair("main", "branch", 3, worst))))
                        .rows()
                        .get(0)
                        .cells();
        assertEquals(
                List.of(
                        "main",
                        "branch",
                        "stub: short (of 3)",
                        "20 ms",
                        "never",
                        "engine lost",
                        "no effect"),
                cells);
    }
}
