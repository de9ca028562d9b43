package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Cue;
import stillturning.model.EngineLogic;
import stillturning.model.Returns;
import stillturning.model.Study;
import stillturning.model.Terminal;
import stillturning.model.failure.Failure;
import stillturning.network.NodalSolver;
import stillturning.network.Topology;
import stillturning.network.law.BranchLaw;
import stillturning.parts.Load;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Tolerance;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;
import stillturning.story.device.Device;
import stillturning.story.device.EventLog;
import stillturning.story.device.Situation;

/** Contacts and converters that undo what they do: one of them is named, nothing loops. */
class ChatterTest {

    /** A battery of 0.1 ohm with a computer on its bus. */
    private static Bench bench() {
        return new Bench()
                .part(Shelf.lead("battery", 40, 0.1, 1))
                .join("battery", "minus", "ground", "stud")
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_POWER, 0.5, Bench.HARDY)
                .join("computer", "plus", "bus", "bar")
                .engine(new EngineLogic.One("computer"), true);
    }

    @Test
    void aContactorFedFromTheBusThatItFeedsLetsGoOnceAndStaysOpen() throws UntoldStory {
        // a chafed wire behind a slow breaker pulls the bus below 3 V for longer than the
        // contactor's 15 ms
        Bench bench =
                new Bench()
                        .part(Shelf.lead("battery", 40, 0.1, 1))
                        .join("battery", "minus", "ground", "stud")
                        .part(Shelf.contactor("contactor", 0.015))
                        .bus("bus")
                        .breaker("breaker", 30)
                        .wire("wire", 1, 0.005)
                        .load("computer", DemandKind.CONSTANT_POWER, 0.5, Bench.HARDY)
                        .engine(new EngineLogic.One("computer"), true)
                        .join("battery", "plus", "contactor", "in")
                        .join("contactor", "out", "bus", "bar")
                        .join("contactor", "coil-plus", "bus", "bar")
                        .join("contactor", "coil-minus", "ground", "stud")
                        .join("bus", "bar", "breaker", "in")
                        .join("breaker", "out", "wire", "a")
                        .join("computer", "plus", "bus", "bar");
        Story story = Telling.unaided(bench, "wire: chafed to ground");
        assertEquals(0.015, Telling.when(story, StoryEvent.Kind.CONTACTS_OPEN, "contactor"), 1e-9);
        assertEquals(0, Telling.count(story, StoryEvent.Kind.CONTACTS_CLOSE));
        assertEquals(0, Telling.count(story, StoryEvent.Kind.CHATTER));
        assertEquals(0, Telling.count(story, StoryEvent.Kind.PROTECTOR_OPENS));
        assertTrue(!story.engine().runningAtEnd());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.015})
    void aContactorWhoseClosingKillsItsOwnCoilSupplyChattersAndIsNamed(double delay)
            throws UntoldStory {
        Bench bench =
                bench().part(Shelf.contactor("contactor", delay))
                        .closedSwitch("arm", "off")
                        .load("monster", DemandKind.CONSTANT_RESISTANCE, 600, Bench.HARDY)
                        .cue("low volts", new Cue.LowVolts(new Terminal("bus", "bar"), 9, 0.001))
                        .join("bus", "bar", "contactor", "in")
                        .join("contactor", "out", "monster", "plus")
                        .join("bus", "bar", "arm", "in")
                        .join("arm", "out", "contactor", "coil-plus")
                        .join("contactor", "coil-minus", "ground", "stud");
        Story story =
                bench.timeline().tell(Failure.levers("armed", Map.of("arm", "on")), Pilot.NEVER);
        assertEquals(1, Telling.count(story, StoryEvent.Kind.CHATTER));
        assertEquals("contactor", story.of(StoryEvent.Kind.CHATTER).get(0).part());
        assertEquals(0, Telling.count(story, StoryEvent.Kind.LOAD_DESTROYED));
        assertTrue(story.happenings().size() < 200, "told in " + story.happenings().size());
        // the computer only suffered: it works once the contactor has given up
        assertTrue(story.aftermath().working().contains("computer"));
        assertTrue(story.engine().endurance().seconds() > 3600);
    }

    @Test
    void aConverterThatItsSourceCannotStartIsNamed() throws UntoldStory {
        // 12.65 V behind 1 ohm give 40 W at most; the converter asks for 67 W
        Bench bench =
                bench().part(Shelf.lead("weak", 5, 1, 1))
                        .join("weak", "minus", "ground", "stud")
                        .part(Shelf.converter("converter", 20))
                        .closedSwitch("arm", "off")
                        .load("screen", DemandKind.CONSTANT_POWER, 5, Bench.HARDY)
                        .join("weak", "plus", "arm", "in")
                        .join("arm", "out", "converter", "in")
                        .join("converter", "minus", "ground", "stud")
                        .join("converter", "out", "screen", "plus");
        Story story =
                bench.timeline().tell(Failure.levers("armed", Map.of("arm", "on")), Pilot.NEVER);
        assertEquals(1, Telling.count(story, StoryEvent.Kind.CHATTER));
        assertEquals("converter", story.of(StoryEvent.Kind.CHATTER).get(0).part());
        assertTrue(!story.aftermath().working().contains("screen"));
        assertTrue(story.aftermath().working().contains("computer"));
    }

    @Test
    void aControllerWhoseChannelStarvesItsOwnLogicIsNamed() throws UntoldStory {
        Load monster =
                new Load(
                        Bench.tag("monster"),
                        new Demand(DemandKind.CONSTANT_RESISTANCE, 600, 12),
                        new Tolerance(0.5, 0.5, 1, 0, 40, 1),
                        java.util.List.of("plus"));
        Bench bench =
                bench().part(Shelf.controller("controller", 1, 200, false))
                        .lever("controller.1", "on")
                        .closedSwitch("arm", "off")
                        .load(monster)
                        .join("bus", "bar", "arm", "in")
                        .join("arm", "out", "controller", "supply")
                        .join("controller", "ground", "ground", "stud")
                        .join("controller", "out-1", "monster", "plus");
        Story story =
                bench.timeline().tell(Failure.levers("armed", Map.of("arm", "on")), Pilot.NEVER);
        assertEquals(1, Telling.count(story, StoryEvent.Kind.CHATTER));
        assertEquals("controller", story.of(StoryEvent.Kind.CHATTER).get(0).part());
        assertTrue(story.aftermath().working().contains("computer"));
    }

    /** A device that only counts what is done to it. */
    private static final class Flipper implements Device {
        private final int blameRank;
        private boolean gaveUp;

        Flipper(int blameRank) {
            this.blameRank = blameRank;
        }

        @Override
        public double margin() {
            return NOT_NOW;
        }

        @Override
        public void cross() {}

        @Override
        public void adopt(Device healthy) {}

        @Override
        public int blameRank() {
            return blameRank;
        }

        @Override
        public void giveUp() {
            gaveUp = true;
        }
    }

    private static Chatter chatter(Flipper... devices) {
        Study study = bench().study();
        NodalSolver solver =
                new NodalSolver(
                        Topology.of(1, new int[0], new int[0]),
                        new int[0],
                        new int[0],
                        new BranchLaw[0]);
        Situation now =
                new Situation(
                        solver,
                        Returns.ON_STRUCTURE,
                        study.aircraft(),
                        study.goals().failurePhase(),
                        Setting.with(Pilot.NEVER),
                        part -> "",
                        new EventLog());
        return new Chatter(new String[] {"radio/work", "relay/coil", "idle/coil"}, devices, now);
    }

    private static void flip(Chatter chatter, int device, int times) {
        for (int n = 0; n < times; n++) {
            chatter.flipped(device);
        }
    }

    @Test
    void theLoadThatFlipsMostOnlySuffersFromTheRelayThatFlipsLess() throws UntoldStory {
        Flipper radio = new Flipper(0);
        Flipper relay = new Flipper(3);
        Flipper idle = new Flipper(4);
        Chatter chatter = chatter(radio, relay, idle);
        flip(chatter, 2, 1);
        flip(chatter, 1, 15);
        flip(chatter, 0, 21);
        chatter.calm();
        assertTrue(relay.gaveUp);
        assertTrue(!radio.gaveUp && !idle.gaveUp);
    }

    @Test
    void whatFlipsWithoutAnythingThatCouldMakeItIsRefusedByName() {
        Chatter chatter = chatter(new Flipper(0), new Flipper(4), new Flipper(0));
        flip(chatter, 0, 21);
        UntoldStory refusal = assertThrows(UntoldStory.class, chatter::calm);
        assertTrue(String.valueOf(refusal.getMessage()).contains("radio/work"));
    }
}
