package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.EngineLogic;
import stillturning.model.Reach;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Generator.Alone;
import stillturning.parts.element.Generator.WithoutBattery;
import stillturning.story.AdverseEffect;
import stillturning.story.MoveOrders;
import stillturning.story.Pilot;
import stillturning.story.Rehearsal;
import stillturning.story.Rehearsal.MovePace;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** Moves are made one after the other, in the order in which they are written. */
class MovesTest {

    private static final Failure NOTHING = Failure.levers("nothing", Map.of());

    /** A battery and an alternator, each behind a switch, on one bus with the engine's computer. */
    private static Bench bench() {
        return new Bench()
                .part(Shelf.lead("battery", 10, 0.02, 0.9))
                .part(
                        Shelf.alternator(
                                "alternator",
                                14.2,
                                40,
                                0,
                                new Alone(WithoutBattery.STEADY, 0.5, 35, 0.3)))
                .closedSwitch("main", "on")
                .closedSwitch("field", "on")
                .bus("bus")
                .join("battery", "minus", "ground", "stud")
                .join("battery", "plus", "main", "in")
                .join("main", "out", "bus", "bar")
                .join("alternator", "case", "ground", "stud")
                .join("alternator", "output", "bus", "bar")
                .join("bus", "bar", "field", "in")
                .join("field", "out", "alternator", "field")
                .load("computer", DemandKind.CONSTANT_CURRENT, 10, Bench.HARDY)
                .join("computer", "plus", "bus", "bar")
                .engine(new EngineLogic.One("computer"), false);
    }

    private static Map<String, String> moves(String... pairs) {
        Map<String, String> moves = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            moves.put(pairs[i], pairs[i + 1]);
        }
        return moves;
    }

    private static Story drill(Bench bench, Pilot pilot) throws UntoldStory {
        Failure drill = FailureCatalogue.operatingCasesOf(bench.candidate()).get(0);
        return bench.timeline().tell(drill, pilot);
    }

    private static List<Double> times(Story story) {
        return story.of(StoryEvent.Kind.PILOT).stream().map(StoryEvent::seconds).toList();
    }

    @Test
    void aDrillIsCarriedOutInItsOrderTwoSecondsAMoveAndThriceAsSlowlyByALatePilot()
            throws UntoldStory {
        Bench bench = bench().masterOff(moves("main", "off", "field", "off"));
        assertEquals(List.of(0.0, 2.0), times(drill(bench, Pilot.PLANNED)));
        assertEquals(List.of(0.0, 6.0), times(drill(bench, Pilot.LATE)));
        assertEquals(List.of(0.0, 2.0), times(drill(bench, Pilot.NEVER)));
    }

    /**
     * The battery taken off first leaves the alternator alone with its current; not so after it.
     */
    @Test
    void theOrderDecidesWhetherTheAlternatorLosesItsBattery() throws UntoldStory {
        Story torn = drill(bench().masterOff(moves("main", "off", "field", "off")), Pilot.PLANNED);
        Story soft = drill(bench().masterOff(moves("field", "off", "main", "off")), Pilot.PLANNED);
        assertEquals(1, torn.of(StoryEvent.Kind.LOAD_DUMP).size());
        assertEquals(List.of(), soft.of(StoryEvent.Kind.LOAD_DUMP));
        assertEquals(
                StoryEvent.Kind.LOAD_DUMP,
                AdverseEffect.of(torn, AdverseEffect.COCKPIT).get(0).kind());
    }

    @Test
    void whatIsOutOfReachInFlightIsNotMoved() throws UntoldStory {
        Bench bench =
                bench().masterOff(moves("field", "off", "main", "off")).reach("main", Reach.GROUND);
        Story story = drill(bench, Pilot.PLANNED);
        assertTrue(
                story.happenings().stream().anyMatch(h -> h.words().equals("cannot reach main")));
        assertEquals(List.of(), story.of(StoryEvent.Kind.CONTACTS_OPEN));
        assertTrue(story.engine().endurance().seconds() > 1000, "the battery is still joined");
    }

    @Test
    void aRehearsalNamesTheMoveThatDoesHarm() throws UntoldStory {
        Timeline timeline = bench().timeline();
        Rehearsal torn =
                timeline.rehearse(
                        NOTHING,
                        List.of(Map.of(), moves("main", "off", "field", "off")),
                        new MovePace(2, 30));
        AdverseEffect harm = torn.harm().orElseThrow();
        assertEquals(1, harm.step());
        assertEquals(1, harm.moves());
        assertEquals("main", harm.lever());
        assertEquals(StoryEvent.Kind.LOAD_DUMP, harm.event().kind());
        Rehearsal later =
                timeline.rehearse(
                        NOTHING,
                        List.of(moves("field", "off"), moves("main", "off")),
                        new MovePace(2, 30));
        assertEquals(StoryEvent.Kind.ENGINE_INTERRUPTED, later.harm().orElseThrow().event().kind());
        assertEquals(1, later.harm().orElseThrow().step());
        assertFalse(
                timeline.rehearse(NOTHING, List.of(moves("field", "off")), new MovePace(2, 30))
                        .harm()
                        .isPresent());
    }

    @Test
    void everyOrderIsTriedOnceAndWhatBeginsBadlyIsNotTriedAgain() throws UntoldStory {
        List<List<String>> tried = new ArrayList<>();
        Map<String, String> moves = moves("a", "off", "b", "off", "c", "off");
        // nothing may come before c
        Map<String, String> found =
                MoveOrders.first(
                                moves,
                                order -> {
                                    tried.add(List.copyOf(order.keySet()));
                                    return order.keySet().iterator().next().equals("c")
                                            ? Optional.empty()
                                            : Optional.of(1);
                                })
                        .orElseThrow();
        assertEquals(List.of("c", "a", "b"), List.copyOf(found.keySet()));
        assertEquals(
                List.of(List.of("a", "b", "c"), List.of("b", "a", "c"), List.of("c", "a", "b")),
                tried);
    }

    @Test
    void whereEveryOrderDoesHarmThereIsNone() throws UntoldStory {
        int[] count = {0};
        Map<String, String> moves = moves("a", "off", "b", "off", "c", "off");
        assertTrue(
                MoveOrders.first(
                                moves,
                                order -> {
                                    count[0]++;
                                    return Optional.of(3);
                                })
                        .isEmpty());
        assertEquals(6, count[0]);
    }
}
