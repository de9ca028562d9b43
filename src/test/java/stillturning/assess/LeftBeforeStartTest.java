package stillturning.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.assess.verdict.LeftSwitch;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Engine;
import stillturning.model.EngineLogic;
import stillturning.model.LoadNeed;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/** A switch without which the starter turns nothing is not overlooked before the flight. */
class LeftBeforeStartTest {

    private static final LoadNeed.Use ALWAYS = new LoadNeed.Use(Set.of("start", "cruise"), 1);

    /** A computer on the battery itself; starter and radio behind the master. */
    private static Bench aircraft(Optional<String> starter) {
        return new Bench()
                .part(Shelf.lead("battery", 20, 0.01, 1))
                .join("battery", "minus", "ground", "stud")
                .closedSwitch("master", "on")
                .closedSwitch("avionics", "on")
                .join("battery", "plus", "master", "in")
                .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .join("computer", "plus", "battery", "plus")
                .load("starter", DemandKind.CONSTANT_CURRENT, 150, Bench.HARDY)
                .use("starter", new LoadNeed.Use(Set.of("start"), 1), 1)
                .join("starter", "plus", "master", "out")
                .join("avionics", "in", "master", "out")
                .load("radio", DemandKind.CONSTANT_CURRENT, 1, Bench.HARDY)
                .join("radio", "plus", "avionics", "out")
                .use("computer", ALWAYS, 9)
                .use("radio", ALWAYS, 1)
                .engine(
                        new Engine(
                                new EngineLogic.One("computer"),
                                0.3,
                                2,
                                true,
                                30,
                                new Engine.EngineStarting(starter, 0.5, 25)))
                .phases(new Phase("start", 10, 0), new Phase("cruise", 1800, 60));
    }

    private static LeftSwitch left(Bench bench, String lever) throws UntoldStory {
        Study study = bench.study();
        return new OtherConditions(study, Timeline.quick(study, bench.candidate()))
                .leftSwitches().stream()
                        .filter(left -> left.lever().equals(lever))
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    void theMasterShowsSinceTheStarterDoesNotTurn() throws UntoldStory {
        LeftSwitch master = left(aircraft(Optional.of("starter")), "master");
        assertTrue(master.shows());
        assertFalse(master.runsAtRest());
        assertEquals(Optional.empty(), master.outcome());
    }

    @Test
    void whatTheStartDoesNotNeedIsLookedAtInFlight() throws UntoldStory {
        assertTrue(left(aircraft(Optional.of("starter")), "avionics").runsAtRest());
    }

    @Test
    void withoutAStarterItIsLookedAtInFlight() throws UntoldStory {
        assertTrue(left(aircraft(Optional.empty()), "master").runsAtRest());
    }
}
