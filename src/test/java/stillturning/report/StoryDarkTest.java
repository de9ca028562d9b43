package stillturning.report;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import stillturning.assess.Assess;
import stillturning.assess.verdict.Verdict;
import stillturning.bench.Bench;
import stillturning.model.Cue;
import stillturning.model.EngineLogic;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Tolerance;
import stillturning.story.UntoldStory;

class StoryDarkTest {

    /** Stops below 9 V after 1 ms, and needs 0.5 s to come up again. */
    private static final Tolerance BOOTS = new Tolerance(9, 10, 0.001, 0.5, 40, 1);

    /** A pump whose short pulls the bus down until its breaker opens; the pilot then acts. */
    private static Bench bench() {
        return new Bench()
                .battery("battery", 20, 0.05, 1)
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .breaker("breaker", 5)
                .join("bus", "bar", "breaker", "in")
                .load("pump", DemandKind.CONSTANT_CURRENT, 2, Bench.HARDY)
                .join("breaker", "out", "pump", "plus")
                .load("display", DemandKind.CONSTANT_CURRENT, 1, BOOTS)
                .join("bus", "bar", "display", "plus")
                .load("computer", DemandKind.CONSTANT_CURRENT, 2, Bench.HARDY)
                .join("bus", "bar", "computer", "plus")
                .load("lights", DemandKind.CONSTANT_CURRENT, 3, Bench.HARDY)
                .join("bus", "bar", "lights", "plus")
                .cue("pump quiet", new Cue.LoadStops("pump"))
                .procedure("shed", "pump quiet", 20, Map.of(), "lights")
                .engine(new EngineLogic.One("computer"), true);
    }

    /** Who looked for his display for half a second will not be told that nothing was dark. */
    @Test
    void whatWasDarkAndCameBackBeforeThePilotActsIsTold() throws UntoldStory {
        Bench bench = bench();
        Verdict verdict =
                Assess.one(bench.study(), bench.candidate(), bench.failure("pump: input short"));
        assertTrue(verdict.planned().aftermath().actedPilot());
        String dark =
                StoryFacts.of(verdict).stream()
                        .filter(fact -> fact.label().equals("dark before the pilot acts"))
                        .findFirst()
                        .orElseThrow()
                        .value();
        assertTrue(dark.matches("pump, display \\(for 50\\d ms at 1\\.0 ms\\)"), dark);
    }
}
