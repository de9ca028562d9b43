package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Cue;
import stillturning.model.EngineLogic;
import stillturning.model.Terminal;
import stillturning.model.failure.Failure;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Management;
import stillturning.parts.element.Tolerance;
import stillturning.parts.element.curve.RestVoltage;
import stillturning.parts.source.Battery;
import stillturning.story.Endurance.AtLeast;
import stillturning.story.Endurance.NotLimited;
import stillturning.story.Moment;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.Trace;
import stillturning.story.UntoldStory;

/** Batteries that disconnect, run empty, fill again, share. */
class BatteryStoryTest {

    private static final Failure NOTHING = Failure.levers("nothing", Map.of());

    private static Bench onBus(Bench bench, Battery battery, String bus) {
        return bench.part(battery)
                .join(battery.id(), "minus", "ground", "stud")
                .bus(bus)
                .join(battery.id(), "plus", bus, "bar");
    }

    /** A computer on a battery of its own that lasts longer than the story. */
    private static Bench aside() {
        return onBus(new Bench(), Shelf.lead("own", 100, 0.02, 1), "own-bus")
                .load("computer", DemandKind.CONSTANT_CURRENT, 0.5, Bench.HARDY)
                .join("computer", "plus", "own-bus", "bar")
                .engine(new EngineLogic.One("computer"), true);
    }

    private static Bench lithium(Management limits, double amps) {
        return onBus(new Bench(), Shelf.lithium("battery", 10, 1, limits), "bus")
                .load("computer", DemandKind.CONSTANT_CURRENT, amps, Bench.HARDY)
                .join("computer", "plus", "bus", "bar")
                .engine(new EngineLogic.One("computer"), false);
    }

    @Test
    void aManagementSystemDisconnectsAtItsUnderVoltageAfterItsDelay() throws UntoldStory {
        // 12.8 V at rest is 20 % of charge on the scale read; there 10 mohm have become 11.5, and
        // 5 A take 57.5 mV
        Management limits = Shelf.limits(12.8 - 0.0575, 20, 100, 2);
        Story story = lithium(limits, 5).timeline().tell(NOTHING, Pilot.NEVER);
        assertEquals(
                0.8 * 10 * 3600 / 5 + 2,
                Telling.when(story, StoryEvent.Kind.BATTERY_DISCONNECTS, "battery"),
                1e-3);
        assertEquals(0, Telling.count(story, StoryEvent.Kind.BATTERY_EMPTY));
        assertEquals(
                20 - 100 * 5 * 2 / 36_000.0, Telling.last(Telling.trace(story, "battery")), 1e-6);
    }

    @Test
    void aManagementSystemDisconnectsAtItsOverCurrent() throws UntoldStory {
        Story story =
                Telling.unaided(lithium(Shelf.limits(5, 20, 100, 0.01), 5), "bus: short to ground");
        assertEquals(
                0.01, Telling.when(story, StoryEvent.Kind.BATTERY_DISCONNECTS, "battery"), 1e-9);
    }

    @Test
    void aManagementSystemLeavesALowBatteryAloneWhileItCharges() throws UntoldStory {
        Management limits = Shelf.limits(12.5, 20, 100, 1);
        Bench bench =
                onBus(aside(), Shelf.lithium("battery", 10, 0.05, limits), "bus")
                        .part(Shelf.alternator("alternator", 14.2, 8, false))
                        .join("alternator", "case", "ground", "stud")
                        .join("alternator", "output", "bus", "bar")
                        .join("alternator", "field", "own-bus", "bar");
        Timeline timeline = bench.timeline();
        assertTrue(timeline.normal().busVolts().getOrDefault("bus", 99.0) < 12.5);
        Story story = timeline.tell(NOTHING, Pilot.NEVER);
        assertEquals(0, Telling.count(story, StoryEvent.Kind.BATTERY_DISCONNECTS));
    }

    private static Bench overloaded(double ampHours, double charge, Tolerance radio) {
        return onBus(aside(), Shelf.lead("battery", ampHours, 0.025, charge), "bus")
                .part(Shelf.alternator("alternator", 14.2, 11, false))
                .join("alternator", "case", "ground", "stud")
                .join("alternator", "output", "bus", "bar")
                .join("alternator", "field", "own-bus", "bar")
                .load("radio", DemandKind.CONSTANT_CURRENT, 5, radio)
                .load("heater", DemandKind.CONSTANT_CURRENT, 30, Bench.HARDY)
                .join("radio", "plus", "bus", "bar")
                .join("heater", "plus", "bus", "bar")
                .cue("low volts", new Cue.LowVolts(new Terminal("bus", "bar"), 9, 1))
                .procedure("shed", "low volts", 60, Map.of(), "heater");
    }

    @Test
    void anEmptyBatteryFillsAgainWhenASourceRemains() throws UntoldStory {
        Story story = overloaded(2, 0.05, Bench.HARDY).timeline().tell(NOTHING, Pilot.PLANNED);
        double empty = Telling.when(story, StoryEvent.Kind.BATTERY_EMPTY, "battery");
        assertEquals(0.05 * 2 * 3600 / (35 - 11), empty, 0.01);
        assertTrue(Telling.when(story, StoryEvent.Kind.LOAD_RESTARTS, "radio") > empty + 60);
        assertTrue(story.aftermath().working().contains("radio"));
        assertEquals(100, Telling.last(Telling.trace(story, "battery")), 1e-6);
    }

    @Test
    void theStoryGoesOnUntilChargingHasBroughtALoadBack() throws UntoldStory {
        // 6 A into 40 Ah: the bus stands at the battery's 10.5 V + 14.5 V q and 0.15 V (2 - 3 q),
        // and
        // has to reach the radio's 12.2 V
        Bench bench =
                overloaded(40, 0.004, new Tolerance(9, 12.2, 0.02, 0.5, 40, 1))
                        .part(Shelf.alternator("own-alternator", 14.2, 20, false))
                        .join("own-alternator", "case", "ground", "stud")
                        .join("own-alternator", "output", "own-bus", "bar")
                        .join("own-alternator", "field", "own-bus", "bar");
        Story story = bench.timeline().tell(NOTHING, Pilot.PLANNED);
        double shed = Telling.when(story, StoryEvent.Kind.PILOT, "shed");
        double charge = (12.2 - 10.5 - 0.3) / (14.5 - 0.45);
        double expected = shed + charge * 40 * 3600 / 6 + 0.5;
        assertEquals(
                expected,
                Telling.when(story, StoryEvent.Kind.LOAD_RESTARTS, "radio"),
                1e-3 * expected);
    }

    @Test
    void aBatteryThatBecomesFullWhileAnotherDrainsEndsNothing() throws UntoldStory {
        Bench bench =
                onBus(aside(), Shelf.lead("battery", 5, 0.02, 0.9), "bus")
                        .part(Shelf.alternator("alternator", 14.2, 30, false))
                        .join("alternator", "case", "ground", "stud")
                        .join("alternator", "output", "bus", "bar")
                        .join("alternator", "field", "bus", "bar");
        Story story = bench.timeline().tell(NOTHING, Pilot.NEVER);
        assertInstanceOf(AtLeast.class, story.engine().endurance());
        assertEquals(100, Telling.last(Telling.trace(story, "battery")), 1e-9);
    }

    @Test
    void twoBatteriesInParallelEqualiseWithinWhatTheEmptierTakesIn() throws UntoldStory {
        Bench bench =
                onBus(aside(), Shelf.lead("full", 20, 0.02, 1), "bus")
                        .part(Shelf.lead("half", 20, 0.02, 0.5))
                        .join("half", "minus", "ground", "stud")
                        .closedSwitch("tie", "off")
                        .join("half", "plus", "tie", "in")
                        .join("tie", "out", "bus", "bar");
        Timeline timeline =
                new Timeline(bench.study(), bench.candidate(), Moment.heldIn("cruise"), 60);
        Story story = timeline.tell(Failure.levers("tied", Map.of("tie", "on")), Pilot.NEVER);
        Trace full = Telling.trace(story, "full");
        Trace half = Telling.trace(story, "half");
        for (int i = 1; i < full.points().size(); i++) {
            Trace.TracePoint before = half.points().get(i - 1);
            Trace.TracePoint after = half.points().get(i);
            // nothing is made; what is lost turns to gas in the one that takes charge, from where
            // the drawn law begins, 12.45 V, on: 0.2 C of the 18,000 C that change over
            double together = full.points().get(i).value() + after.value();
            assertTrue(together <= 150 + 1e-6 && together > 149.9995, "together " + together);
            double share = (after.value() - before.value()) / 100;
            double seconds = after.seconds() - before.seconds();
            // the rated one-hour current while empty, less as it fills
            double accepts = (1.001 - before.value() / 100) / 3600;
            assertTrue(share <= accepts * seconds * (1 + 1e-6) + 1e-9, "at " + after.seconds());
        }
        assertEquals(75, Telling.last(full), 0.1);
        assertEquals(75, Telling.last(half), 0.1);
    }

    private static Bench flying(boolean needsBattery) {
        return new Bench()
                .part(Shelf.lead("battery", 20, 0.02, 1))
                .join("battery", "minus", "ground", "stud")
                .closedSwitch("master", "on")
                .bus("bus")
                .join("battery", "plus", "master", "in")
                .join("master", "out", "bus", "bar")
                .part(Shelf.alternator("alternator", 14.2, 45, needsBattery))
                .join("alternator", "case", "ground", "stud")
                .join("alternator", "output", "bus", "bar")
                .join("alternator", "field", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_POWER, 5, Bench.HARDY)
                .join("computer", "plus", "bus", "bar")
                .engine(new EngineLogic.One("computer"), true)
                .cue("dark", new Cue.LoadStops("computer"))
                .procedure("master on again", "dark", 3600, Map.of("master", "on"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"battery: disconnects itself", "master: stuck open"})
    void anAlternatorThatNeedsABatteryGivesUpWithoutOne(String failure) throws UntoldStory {
        Story story = Telling.unaided(flying(true), failure);
        assertEquals(0, Telling.when(story, StoryEvent.Kind.SOURCE_STOPS, "alternator"));
        assertTrue(!story.engine().runningAtEnd());
        assertInstanceOf(
                NotLimited.class, Telling.unaided(flying(false), failure).engine().endurance());
    }

    @Test
    void aBatteryBehindASwitchThatThePilotCouldCloseSteadiesNothing() throws UntoldStory {
        Story story =
                flying(true)
                        .timeline()
                        .tell(Failure.levers("master off", Map.of("master", "off")), Pilot.NEVER);
        assertEquals(0, Telling.when(story, StoryEvent.Kind.SOURCE_STOPS, "alternator"));
    }

    @Test
    void aShortedCellLeavesFiveSixthsOfTheVoltage() throws UntoldStory {
        Bench bench = onBus(aside(), Shelf.lead("battery", 20, 0.02, 1), "bus");
        Story story = Telling.unaided(bench, "battery: one cell shorted");
        assertEquals(
                RestVoltage.LEAD_ACID.voltsAt(1) * 5 / 6,
                Telling.last(Telling.trace(story, "bus")),
                1e-6);
    }

    @Test
    void aWornOutBatteryLastsAFifthAsLong() throws UntoldStory {
        Bench bench =
                onBus(new Bench(), Shelf.lead("battery", 20, 0.02, 1), "bus")
                        .load("computer", DemandKind.CONSTANT_CURRENT, 10, Bench.HARDY)
                        .join("computer", "plus", "bus", "bar")
                        .engine(new EngineLogic.One("computer"), false);
        Story story = Telling.unaided(bench, "battery: capacity lost");
        assertEquals(7200 / 5.0 + 0.32, story.engine().endurance().seconds(), 1e-3);
    }
}
