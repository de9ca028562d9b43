package stillturning.reliability.runup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Cockpit;
import stillturning.model.EngineLogic;
import stillturning.model.Reach;
import stillturning.model.Study;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Generator.Alone;
import stillturning.parts.element.Generator.WithoutBattery;
import stillturning.story.Pilot;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/**
 * Sets of moves on the ground: the one order that does no harm, or the reason why there is none.
 */
class MoveTrialsTest {

    private static final double HELD = 30;
    private static final List<String> BOTH = List.of("standby-feed", "master");

    /**
     * Main bus with battery and alternator behind a master; the engine's bus is fed from it by a
     * diode, and from the battery by a standby feed with its own diode, off in flight.
     */
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
                .closedSwitch("master", "on")
                .closedSwitch("field", "on")
                .closedSwitch("standby", "off")
                .diode("diode")
                .diode("standby-diode")
                .bus("bus")
                .bus("engine-bus")
                .join("battery", "minus", "ground", "stud")
                .join("battery", "plus", "master", "in")
                .join("master", "out", "bus", "bar")
                .join("alternator", "case", "ground", "stud")
                .join("alternator", "output", "bus", "bar")
                .join("bus", "bar", "field", "in")
                .join("field", "out", "alternator", "field")
                .join("bus", "bar", "diode", "in")
                .join("diode", "out", "engine-bus", "bar")
                .join("battery", "plus", "standby", "in")
                .join("standby", "out", "standby-diode", "in")
                .join("standby-diode", "out", "engine-bus", "bar")
                .load("computer", DemandKind.CONSTANT_CURRENT, 10, Bench.HARDY)
                .join("computer", "plus", "engine-bus", "bar")
                .engine(new EngineLogic.One("computer"), false);
    }

    private static Map<String, String> moves(String... pairs) {
        Map<String, String> moves = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            moves.put(pairs[i], pairs[i + 1]);
        }
        return moves;
    }

    private static Tried tried(Bench bench, Map<String, String> moves) throws UntoldStory {
        Candidate candidate = bench.candidate();
        Ground ground = new Ground(bench.study(), candidate);
        return new MoveTrials(candidate, ground, HELD).of(new LinkedHashSet<>(List.of(moves)));
    }

    /**
     * Of six orders two would do: the alternator before the master, the standby feed before the
     * master. Back: the master before both others, or the alternator loses its battery or the
     * engine its feed.
     */
    @Test
    void theOrderThatFeedsTheEngineAndKeepsTheAlternatorsBatteryIsFound() throws UntoldStory {
        Tried tried = tried(bench(), moves("master", "off", "field", "off", "standby", "on"));
        CheckMoves levers = tried.moves().get(0).levers();
        assertEquals(List.of("field", "standby", "master"), List.copyOf(levers.moves().keySet()));
        assertEquals(Map.of("master", "on", "standby", "off", "field", "on"), levers.back());
        assertEquals("master", levers.back().keySet().iterator().next());
        assertEquals(List.of(), tried.refused());
    }

    @Test
    void whereTheAlternatorLosesItsBatteryInEveryOrderTheReasonIsTold() throws UntoldStory {
        Tried tried = tried(bench(), moves("master", "off", "standby", "on"));
        assertEquals(List.of(), tried.moves());
        RefusedCheck.NoOrder why =
                assertInstanceOf(RefusedCheck.NoOrder.class, tried.refused().get(0).why());
        assertEquals(StoryEvent.Kind.LOAD_DUMP, why.harm().event().kind());
        assertEquals("master", why.harm().lever());
    }

    @Test
    void whatIsOutOfReachOrOfWhichNobodySaysItIsNotMoved() throws UntoldStory {
        Tried open = tried(bench(), moves("standby", "on"));
        assertEquals(1, open.moves().size());
        Tried ground = tried(bench().reach("standby", Reach.GROUND), moves("standby", "on"));
        assertEquals(1, ground.moves().size());
        Tried none = tried(bench().reach("standby", Reach.NONE), moves("standby", "on"));
        assertEquals(List.of(), none.moves());
        assertEquals(new RefusedCheck.OutOfReach(List.of("standby")), none.refused().get(0).why());
        Bench bench = bench();
        Cockpit said = bench.candidate().cockpit();
        Candidate unsaid =
                bench.candidate()
                        .with(
                                new Cockpit(
                                        said.flight(),
                                        said.masterOff(),
                                        said.starting(),
                                        said.cues(),
                                        said.procedures(),
                                        Map.of()));
        Tried nobody =
                new MoveTrials(unsaid, new Ground(bench.study(), unsaid), HELD)
                        .of(new LinkedHashSet<>(List.of(moves("standby", "on"))));
        assertEquals(List.of(), nobody.moves());
        assertEquals(1, nobody.refused().size());
    }

    /** What stops the engine is no check at all, so nobody asks in which order. */
    @Test
    void whatStopsTheEngineWhereItStandsIsNeitherOfferedNorExplained() throws UntoldStory {
        Tried tried = tried(bench(), moves("field", "off", "master", "off"));
        assertEquals(List.of(), tried.moves());
        assertEquals(List.of(), tried.refused());
    }

    /**
     * Every set of switches, drills and single breakers of which a card of the demo may be made,
     * one after the other as one long card: at the pace of the card and three times as slowly. What
     * a card asks for is played in the order in which it is printed.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "one-battery-engine-bus",
                "one-battery-main-bus",
                "solid-state",
                "solid-state-split-engine",
                "split-batteries",
                "split-batteries-lithium",
                "two-alternators"
            })
    void whatTheDemosCardsAreMadeOfDoesNoHarmOnTheWay(String id) throws UntoldStory {
        Study study = StudyReader.read(Path.of("architectures/sandpiper")).study().orElseThrow();
        Candidate candidate = study.candidate(id).orElseThrow();
        GroundTrials trials = new GroundTrials(study, candidate);
        Ground ground = new Ground(study, candidate);
        List<Map<String, String>> steps = new ArrayList<>();
        trials.ofLevers().and(trials.ofBreakers()).moves().forEach(m -> steps.addAll(m.steps()));
        assertFalse(steps.isEmpty());
        assertEquals(List.of(), ground.usual(steps, HELD).harm().stream().toList());
        assertEquals(List.of(), ground.slowly(steps, HELD).harm().stream().toList());
        assertEquals(3, Pilot.LATE.responseSeconds(1), "what slowly means");
    }

    @Test
    void theDemosMasterIsNeverOffBeforeItsStandbyFeedIsOn() throws UntoldStory {
        Study study = StudyReader.read(Path.of("architectures/sandpiper")).study().orElseThrow();
        Candidate candidate = study.candidate("one-battery-engine-bus").orElseThrow();
        Tried tried = new GroundTrials(study, candidate).ofLevers();
        List<CheckMoves> both =
                tried.moves().stream()
                        .map(SeenMoves::levers)
                        .filter(levers -> levers.moves().keySet().containsAll(BOTH))
                        .toList();
        assertFalse(both.isEmpty());
        for (CheckMoves levers : both) {
            List<String> there = List.copyOf(levers.moves().keySet());
            List<String> back = List.copyOf(levers.back().keySet());
            assertTrue(there.indexOf("standby-feed") < there.indexOf("master"), there.toString());
            assertTrue(back.indexOf("master") < back.indexOf("standby-feed"), back.toString());
        }
    }
}
