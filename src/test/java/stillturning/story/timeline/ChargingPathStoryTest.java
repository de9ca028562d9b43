package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.EngineLogic;
import stillturning.model.failure.Failure;
import stillturning.parts.Part;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.joining.ChargeResistor;
import stillturning.parts.joining.DiodeIsolator;
import stillturning.parts.joining.DiodeLaw;
import stillturning.parts.joining.Shunt;
import stillturning.parts.protection.LowVoltageDisconnect;
import stillturning.parts.protection.LowVoltageDisconnect.Thresholds;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** What lies between a source and its batteries, and between a battery and its loads. */
class ChargingPathStoryTest {

    private static final Failure NOTHING = Failure.levers("nothing", Map.of());

    private static Bench battery(Bench bench, String id, double charge) {
        return bench.part(Shelf.lead(id, 20, 0.02, charge))
                .join(id, "minus", "ground", "stud")
                .bus(id + "-bus")
                .join(id, "plus", id + "-bus", "bar");
    }

    private static Bench generating(Bench bench, String fieldBus) {
        return bench.part(Shelf.alternator("alternator", 14.2, 60, false))
                .join("alternator", "case", "ground", "stud")
                .join("alternator", "field", fieldBus, "bar");
    }

    /** A computer that the engine needs. */
    private static Bench computer(Bench bench, String part, String terminal) {
        return bench.load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .join("computer", "plus", part, terminal)
                .engine(new EngineLogic.One("computer"), true);
    }

    /** One alternator charges two batteries; the computer hangs on the right one. */
    private static Bench isolated() {
        Bench bench = battery(battery(new Bench(), "left", 0.8), "right", 0.8);
        return computer(generating(bench, "right-bus"), "right-bus", "bar")
                .part(new DiodeIsolator(Bench.tag("isolator"), new DiodeLaw(1e-5, 0.0275, 0.002)))
                .join("alternator", "output", "isolator", "in")
                .join("isolator", "out-1", "left-bus", "bar")
                .join("isolator", "out-2", "right-bus", "bar");
    }

    private static double amps(Bench bench, String source) throws UntoldStory {
        return bench.timeline().normal().sourceAmps().getOrDefault(source, Double.NaN);
    }

    @Test
    void anIsolatorChargesBothBatteries() throws UntoldStory {
        assertTrue(amps(isolated(), "left") < -1);
        assertTrue(amps(isolated(), "right") < -1);
    }

    @Test
    void aShortOnOneOutputOfAnIsolatorLeavesTheOtherBatteryAlone() throws UntoldStory {
        Story story = Telling.unaided(isolated(), "left-bus: short to ground");
        assertTrue(Telling.when(story, StoryEvent.Kind.LOAD_STOPS, "computer") > 3600);
    }

    @Test
    void anIsolatorWithoutInputChargesNeitherBattery() throws UntoldStory {
        Story story = Telling.unaided(isolated(), "isolator: input open");
        assertEquals(80, Telling.last(Telling.trace(story, "left")), 1e-6);
        assertEquals(1, Telling.count(story, StoryEvent.Kind.BATTERY_EMPTY));
        assertFalse(story.engine().runningAtEnd());
    }

    private static Bench behind(Part inLine) {
        Bench bench = battery(new Bench(), "battery", 1).part(inLine).bus("behind");
        return computer(bench, "behind", "bar")
                .join("battery-bus", "bar", inLine.id(), "in")
                .join(inLine.id(), "out", "behind", "bar");
    }

    @Test
    void anOpenShuntTakesWhatItMeasures() throws UntoldStory {
        Bench bench = behind(new Shunt(Bench.tag("shunt"), 50, 0.001));
        Story story = Telling.unaided(bench, "shunt: open");
        assertEquals(0.02, Telling.when(story, StoryEvent.Kind.LOAD_STOPS, "computer"), 1e-9);
    }

    @Test
    void aResistorLimitsWhatChargesABattery() throws UntoldStory {
        Bench bench = battery(battery(new Bench(), "main", 1), "second", 0.5);
        computer(generating(bench, "main-bus"), "main-bus", "bar")
                .join("alternator", "output", "main-bus", "bar")
                .part(new ChargeResistor(Bench.tag("resistor"), 1, 50))
                .join("main-bus", "bar", "resistor", "in")
                .join("resistor", "out", "second-bus", "bar");
        Map<String, Double> volts = bench.timeline().normal().busVolts();
        double across = volts.getOrDefault("main-bus", 0.0) - volts.getOrDefault("second-bus", 0.0);
        assertTrue(across > 1);
        assertEquals(-across / 1, amps(bench, "second"), 1e-6);
        assertEquals(
                50,
                Telling.last(Telling.trace(Telling.unaided(bench, "resistor: open"), "second")),
                1e-6);
    }

    /** A radio behind a disconnect; the computer straight on the battery. */
    private static Bench disconnecting() {
        Bench bench = battery(new Bench(), "battery", 1);
        return computer(bench, "battery-bus", "bar")
                .part(
                        new LowVoltageDisconnect(
                                Bench.tag("disconnect"), new Thresholds(11.5, 13, 10), 0.001))
                .join("disconnect", "in", "battery-bus", "bar")
                .join("disconnect", "minus", "ground", "stud")
                .load("radio", DemandKind.CONSTANT_CURRENT, 10, Bench.HARDY)
                .join("disconnect", "out", "radio", "plus");
    }

    @Test
    void aDisconnectLeavesTheRestOfTheBatteryToTheEngine() throws UntoldStory {
        Story works = disconnecting().timeline().tell(NOTHING, Pilot.NEVER);
        double opens = Telling.when(works, StoryEvent.Kind.CONTACTS_OPEN, "disconnect");
        assertEquals(0, Telling.count(works, StoryEvent.Kind.CONTACTS_CLOSE));
        assertEquals(opens + 0.02, Telling.when(works, StoryEvent.Kind.LOAD_STOPS, "radio"), 1e-6);
        Story fails = Telling.unaided(disconnecting(), "disconnect: does not open when it should");
        assertEquals(0, Telling.count(fails, StoryEvent.Kind.CONTACTS_OPEN));
        assertTrue(
                works.engine().endurance().seconds() > fails.engine().endurance().seconds() + 60);
    }
}
