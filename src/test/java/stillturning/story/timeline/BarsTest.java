package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Cue;
import stillturning.model.EngineLogic;
import stillturning.model.EngineLogic.AtLeast;
import stillturning.model.EngineLogic.One;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.story.Pilot;
import stillturning.story.StateBar;
import stillturning.story.StateBar.Activity;
import stillturning.story.StateBar.StateSpan;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** What the engine and its loads were doing, held against the events of the same story. */
class BarsTest {

    /** Either of two pumps is enough; one of them is shed once charging is lost. */
    private static Bench flying() {
        EngineLogic pumps = new AtLeast(1, List.of(new One("pump-1"), new One("pump-2")));
        return new Bench()
                .part(Shelf.lead("battery", 2, 0.02, 1))
                .join("battery", "minus", "ground", "stud")
                .part(Shelf.alternator("alternator", 14.2, 45, false))
                .join("alternator", "case", "ground", "stud")
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .join("alternator", "output", "bus", "bar")
                .join("alternator", "field", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .load("pump-1", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .load("pump-2", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .join("computer", "plus", "bus", "bar")
                .join("pump-1", "plus", "bus", "bar")
                .join("pump-2", "plus", "bus", "bar")
                .cue("alternator light", new Cue.AlternatorOut("alternator"))
                .procedure("shed", "alternator light", 60, Map.of(), "pump-2")
                .engine(new AtLeast(2, List.of(new One("computer"), pumps)), true);
    }

    private static StateBar bar(Story story, String name) {
        return story.bars().stream().filter(b -> b.name().equals(name)).findFirst().orElseThrow();
    }

    private static List<Activity> doings(Story story, String name) {
        return bar(story, name).spans().stream().map(StateSpan::doing).toList();
    }

    @Test
    void theEngineComesFirstThenTheLoadsOfItsLogicInOrder() throws UntoldStory {
        Story story = Telling.planned(flying(), "alternator: regulator open");
        assertEquals(
                List.of("engine", "computer", "pump-1", "pump-2"),
                story.bars().stream().map(StateBar::name).toList());
    }

    @ParameterizedTest
    @EnumSource(Pilot.class)
    void barsHaveNoGapsAndChangeAtTheEvents(Pilot pilot) throws UntoldStory {
        Bench bench = flying();
        Story story = bench.timeline().tell(bench.failure("alternator: regulator open"), pilot);
        for (StateBar bar : story.bars()) {
            double at = 0;
            for (StateSpan span : bar.spans()) {
                assertEquals(at, span.fromSeconds(), bar.toString());
                boolean last = span.fromSeconds() == story.endSeconds();
                assertTrue(last || span.toSeconds() > span.fromSeconds(), bar.toString());
                at = span.toSeconds();
            }
            assertEquals(story.endSeconds(), at, bar.toString());
        }
        double stops = Telling.when(story, StoryEvent.Kind.ENGINE_STOPS, "engine");
        double falters = Telling.when(story, StoryEvent.Kind.ENGINE_INTERRUPTED, "engine");
        List<StateSpan> engine = bar(story, "engine").spans();
        assertEquals(new StateSpan(0, falters, Activity.RUNS), engine.get(0));
        assertEquals(new StateSpan(falters, stops, Activity.FALTERS), engine.get(1));
    }

    @Test
    void aLoadStarvesForAsLongAsItRidesThrough() throws UntoldStory {
        Story story = Telling.planned(flying(), "alternator: regulator open");
        assertEquals(
                List.of(Activity.WORKS, Activity.STARVED), doings(story, "computer").subList(0, 2));
        double stops = Telling.when(story, StoryEvent.Kind.LOAD_STOPS, "computer");
        StateSpan starved = bar(story, "computer").spans().get(1);
        assertEquals(stops, starved.toSeconds());
        // 20 ms is its ride-through on the bench
        assertEquals(0.02, starved.toSeconds() - starved.fromSeconds(), 1e-9);
    }

    @Test
    void whatThePilotShedsIsSwitchedOffFromThenOn() throws UntoldStory {
        Story planned = Telling.planned(flying(), "alternator: regulator open");
        assertEquals(List.of(Activity.WORKS, Activity.SWITCHED_OFF), doings(planned, "pump-2"));
        assertEquals(60, bar(planned, "pump-2").spans().get(1).fromSeconds());
        Story unaided = Telling.unaided(flying(), "alternator: regulator open");
        assertFalse(doings(unaided, "pump-2").contains(Activity.SWITCHED_OFF));
    }
}
