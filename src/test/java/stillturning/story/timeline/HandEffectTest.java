package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Cue;
import stillturning.model.EngineLogic;
import stillturning.model.LoadNeed;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Tolerance;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** What a hand's moves do at once: nothing, or a motor that starts from rest. */
class HandEffectTest {

    private static final double INRUSH_SECONDS = 0.08;

    /** A pump fed by the main switch or the standby switch, from a battery of so many ohms. */
    private static Bench bench(double ohms, double inrushAmps) {
        Map<String, String> moves = new LinkedHashMap<>();
        moves.put("stub", "on");
        moves.put("standby", "on");
        return new Bench()
                .part(Shelf.lead("battery", 20, ohms, 1))
                .join("battery", "minus", "ground", "stud")
                .bus("bus")
                .bus("dead-end")
                .closedSwitch("main", "on")
                .closedSwitch("standby", "off")
                .closedSwitch("stub", "off")
                .join("battery", "plus", "main", "in")
                .join("battery", "plus", "standby", "in")
                .join("battery", "plus", "stub", "in")
                .join("stub", "out", "dead-end", "bar")
                .join("main", "out", "bus", "bar")
                .join("standby", "out", "bus", "bar")
                .load("pump", DemandKind.CONSTANT_CURRENT, 4, new Tolerance(6, 6.5, 0.1, 0, 40, 1))
                .use(
                        "pump",
                        new LoadNeed.Use(
                                Set.of("cruise"),
                                1,
                                true,
                                new LoadNeed.Inrush(inrushAmps, INRUSH_SECONDS)),
                        9)
                .join("pump", "plus", "bus", "bar")
                .load(
                        "computer",
                        DemandKind.CONSTANT_CURRENT,
                        1,
                        new Tolerance(9, 9.5, 0.01, 0, 40, 1))
                .join("computer", "plus", "battery", "plus")
                .engine(new EngineLogic.One("computer"), true)
                .cue("silence", new Cue.LoadStops("pump"))
                .procedure("other feed", "silence", 1, moves);
    }

    private static Story mainLost(double ohms, double inrushAmps) throws UntoldStory {
        return Telling.planned(bench(ohms, inrushAmps), "main: stuck open");
    }

    /** The stub goes live, and no current is different for it. */
    @Test
    void aMoveAfterWhichNoCurrentIsDifferentIsToldAsSuch() throws UntoldStory {
        List<String> acts =
                mainLost(0.02, 16).of(StoryEvent.Kind.PILOT).stream()
                        .map(StoryEvent::words)
                        .toList();
        assertEquals(List.of("stub on: no current changes", "standby on"), acts);
    }

    @Test
    void aPumpThatRunsAllTheTimeComesUpFromRestOnceItsSupplyIsBack() throws UntoldStory {
        Story story = mainLost(0.02, 16);
        double moved = story.of(StoryEvent.Kind.PILOT).get(1).seconds();
        double back = Telling.when(story, StoryEvent.Kind.LOAD_RESTARTS, "pump");
        assertEquals(INRUSH_SECONDS, back - moved, 1e-6);
        Story without = mainLost(0.02, 0);
        assertEquals(
                without.of(StoryEvent.Kind.PILOT).get(1).seconds(),
                Telling.when(without, StoryEvent.Kind.LOAD_RESTARTS, "pump"),
                1e-6);
    }

    /**
     * 12 V / 0.75 ohm of a winding at rest through 0.4 ohm leave 8 V; 5 A leave 10.8 V. By hand.
     */
    @Test
    void itsInrushMayStopAnotherThatItsRunningCurrentDoesNot() throws UntoldStory {
        assertTrue(stops(mainLost(0.4, 16), "computer"));
        assertTrue(!stops(mainLost(0.4, 0), "computer"));
    }

    /** Long before the battery is empty. */
    private static boolean stops(Story story, String load) {
        return story.of(StoryEvent.Kind.LOAD_STOPS).stream()
                .anyMatch(event -> event.part().equals(load) && event.seconds() < 60);
    }
}
