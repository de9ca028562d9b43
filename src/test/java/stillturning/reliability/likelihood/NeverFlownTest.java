package stillturning.reliability.likelihood;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.model.Candidate.Hit;
import stillturning.model.EngineLogic;
import stillturning.model.failure.Failure;
import stillturning.parts.FailureMode;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.reliability.combined.CombinedResult;
import stillturning.reliability.combined.Event;
import stillturning.reliability.cutset.CutSets;

/**
 * A battery feeds the engine's computer over a master switch; a charger has a switch of its own.
 */
class NeverFlownTest {

    private static final Bench BENCH =
            new Bench()
                    .battery("battery", 20, .012, 1.2)
                    .closedSwitch("master", "on")
                    .closedSwitch("charge", "on")
                    .alternator("alternator", 45)
                    .load("computer", DemandKind.CONSTANT_POWER, 5, Bench.HARDY)
                    .join("battery", "plus", "master", "in")
                    .join("master", "out", "computer", "plus")
                    .join("alternator", "output", "computer", "plus")
                    .join("alternator", "field", "charge", "out")
                    .join("charge", "in", "computer", "plus")
                    .engine(new EngineLogic.One("computer"), true);

    private static final int MASTER = 0;
    private static final int CHARGE = 1;
    private static final int PILOT = 2;
    private static final int WIRE = 3;

    private static Event event(Event.EventKind kind, Failure failure) {
        return new Event(kind, failure.name(), failure, Optional.empty());
    }

    private static Event left(String lever) {
        return event(
                Event.EventKind.LEFT_SWITCH,
                Failure.levers(lever + " left off", Map.of(lever, "off")));
    }

    private static final List<Event> EVENTS =
            List.of(
                    left("master"),
                    left("charge"),
                    event(Event.EventKind.IDLE_PILOT, Failure.levers("nothing", Map.of())),
                    event(
                            Event.EventKind.FAILURE,
                            Failure.of(new Hit("battery", FailureMode.of("vanishes")))));

    private static boolean neverFlown(Integer... set) {
        CutSets none = new CutSets(2, List.of(), List.of(), List.of(), 0, true);
        CombinedResult joint = new CombinedResult(BENCH.candidate(), EVENTS, none, List.of(), 0);
        return new NeverFlown(BENCH.study(), joint).test(List.of(set));
    }

    @Test
    void nobodyTakesOffWithTheMasterLeftOffNotEvenAPilotWhoDoesNothing() {
        assertTrue(neverFlown(MASTER, CHARGE));
        assertTrue(neverFlown(MASTER, CHARGE, PILOT));
    }

    @Test
    void onBatteryAloneTheEngineRunsAndSoItIsFlown() {
        assertFalse(neverFlown(CHARGE));
        assertFalse(neverFlown(CHARGE, PILOT));
    }

    @Test
    void aFailureMayComeAfterTakeOff() {
        assertFalse(neverFlown(MASTER, WIRE));
        assertFalse(neverFlown(PILOT));
    }
}
