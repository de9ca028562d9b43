package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.EngineLogic;
import stillturning.model.failure.Failure;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Generator.Alone;
import stillturning.parts.element.Generator.WithoutBattery;
import stillturning.parts.joining.Connector;
import stillturning.parts.joining.GroundPoint;
import stillturning.parts.source.CapacitorBank;
import stillturning.parts.source.CapacitorBank.Rating;
import stillturning.story.Endurance.NotLimited;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/**
 * What steadies an alternator. That a battery does, and loads do not, is common practice; where the
 * limit lies is a guess, here its arithmetic.
 */
class SteadyingTest {

    private static final double AMPS = 45;
    private static final double SET_VOLTS = 14.2;

    private static final Alone UNSTEADY = new Alone(WithoutBattery.UNSTEADY, 0.5, 35, 0.4);

    /** Half of what its set point would drive its output through: 158 mohm. */
    private static final double MOST_OHMS = 0.5 * SET_VOLTS / AMPS;

    /** An alternator that feeds a computer, and its own field. */
    private static Bench alone() {
        return new Bench()
                .part(Shelf.alternator("alternator", SET_VOLTS, AMPS, 0, UNSTEADY))
                .join("alternator", "case", "ground", "stud")
                .bus("bus")
                .join("alternator", "output", "bus", "bar")
                .join("alternator", "field", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_POWER, 5, Bench.HARDY)
                .join("computer", "plus", "bus", "bar")
                .engine(new EngineLogic.One("computer"), true);
    }

    /** With a battery at the end of everything that a lead can consist of. */
    private static Bench wired() {
        return alone().part(Shelf.lead("battery", 20, 0.02, 0.8))
                .part(new GroundPoint(Bench.tag("nose-ground"), true, 1e-4))
                .part(new Connector(Bench.tag("connector"), 1, 1e-3))
                .part(Shelf.fuse("lead-fuse", 80))
                .contactor("master")
                .wire("battery-minus", 1, 0.002)
                .wire("battery-lead", 1, 0.002)
                .join("battery", "minus", "battery-minus", "a")
                .join("battery-minus", "b", "nose-ground", "stud")
                .join("battery", "plus", "connector", "1a")
                .join("connector", "1b", "lead-fuse", "in")
                .join("lead-fuse", "out", "battery-lead", "a")
                .join("battery-lead", "b", "master", "in")
                .join("master", "out", "bus", "bar")
                .join("battery-lead", "b", "master", "coil-plus")
                .join("master", "coil-minus", "ground", "stud");
    }

    private static Story told(Bench bench, String failure) throws UntoldStory {
        return Telling.unaided(bench, failure);
    }

    private static List<String> events(Story story) {
        return story.happenings().stream()
                .filter(event -> event.kind() != StoryEvent.Kind.FAILURE)
                .map(event -> event.seconds() + " " + event.part() + " " + event.words())
                .toList();
    }

    /** Each way to lose one battery is one state, on its minus side as on its plus side. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "battery-minus: open",
                "nose-ground: open",
                "battery-lead: open",
                "lead-fuse: opens for no reason",
                "connector: pin 1 open"
            })
    void everyWayToLoseABatteryIsTheSame(String failure) throws UntoldStory {
        Story disconnected = told(wired(), "battery: disconnects itself");
        assertEquals(1, Telling.count(disconnected, StoryEvent.Kind.LOAD_DUMP));
        assertEquals(1, Telling.count(disconnected, StoryEvent.Kind.SOURCE_UNSTEADY));
        Story story = told(wired(), failure);
        List<String> without =
                events(story).stream().filter(event -> !event.contains("master")).toList();
        assertEquals(
                events(disconnected).stream().filter(e -> !e.contains("master")).toList(), without);
        assertEquals(disconnected.engine().endurance(), story.engine().endurance());
    }

    @Test
    void aContactorThatOpensLosesTheBatteryToo() throws UntoldStory {
        Story story = told(wired(), "master: drops out");
        assertEquals(1, Telling.count(story, StoryEvent.Kind.LOAD_DUMP));
        assertEquals(1, Telling.count(story, StoryEvent.Kind.SOURCE_UNSTEADY));
    }

    private static Bench isolated() {
        Bench bench = alone();
        for (String id : List.of("one", "two")) {
            bench.part(Shelf.lead("battery-" + id, 20, 0.02, 0.8))
                    .diode("isolator-" + id)
                    .join("battery-" + id, "minus", "ground", "stud")
                    .join("bus", "bar", "isolator-" + id, "in")
                    .join("isolator-" + id, "out", "battery-" + id, "plus");
        }
        return bench;
    }

    @Test
    void aBatteryBehindADiodeSteadiesAndIsCharged() throws UntoldStory {
        Map<String, Double> amps = isolated().timeline().normal().sourceAmps();
        assertTrue(amps.getOrDefault("alternator", 0.0) > 5, amps.toString());
        assertTrue(amps.getOrDefault("battery-one", 0.0) < -0.5, amps.toString());
        assertInstanceOf(
                NotLimited.class, told(isolated(), "isolator-one: open").engine().endurance());
        Failure both =
                isolated()
                        .failure("isolator-one: open")
                        .and(isolated().failure("battery-two: disconnects itself"));
        Story lost = isolated().timeline().tell(both, Pilot.NEVER);
        assertEquals(1, Telling.count(lost, StoryEvent.Kind.SOURCE_UNSTEADY));
    }

    /** A diode that only lets the battery give cannot take anything up. */
    @Test
    void aBatteryThatADiodeLetsOnlyGiveSteadiesNothing() throws UntoldStory {
        Bench bench =
                alone().part(Shelf.lead("battery", 20, 0.02, 0.8))
                        .diode("diode")
                        .join("battery", "minus", "ground", "stud")
                        .join("battery", "plus", "diode", "in")
                        .join("diode", "out", "bus", "bar");
        Map<String, Double> amps = bench.timeline().normal().sourceAmps();
        assertEquals(0, amps.getOrDefault("alternator", Double.NaN), 1e-6);
        assertTrue(amps.getOrDefault("battery", 0.0) > 4);
    }

    @Test
    void aBatteryBehindAConverterSteadiesNothing() throws UntoldStory {
        Bench bench =
                alone().part(Shelf.lead("battery", 20, 0.02, 0.8))
                        .part(Shelf.converter("charger", 10))
                        .join("battery", "minus", "ground", "stud")
                        .join("bus", "bar", "charger", "in")
                        .join("charger", "minus", "ground", "stud")
                        .join("charger", "out", "battery", "plus");
        Map<String, Double> amps = bench.timeline().normal().sourceAmps();
        assertEquals(0, amps.getOrDefault("alternator", Double.NaN), 1e-6);
    }

    /**
     * The resistance of battery, wire and ground together, a hundredth below and above the limit.
     */
    @ParameterizedTest
    @CsvSource({"0.99, true", "1.01, false"})
    void aBatterySteadiesUpToAStatedResistance(double share, boolean steadied) throws UntoldStory {
        double wire = share * MOST_OHMS - 0.02 - 1e-4;
        Bench bench =
                alone().part(Shelf.lead("battery", 20, 0.02, 0.8))
                        .wire("wire", 1, wire)
                        .join("battery", "minus", "wire", "a")
                        .join("wire", "b", "ground", "stud")
                        .join("battery", "plus", "bus", "bar");
        double amps = bench.timeline().normal().sourceAmps().getOrDefault("alternator", 0.0);
        assertEquals(steadied, amps > 1);
    }

    /** 1 F moves by 45 V in a second and counts as 100 mohm for a tenth of it (a guess). */
    @ParameterizedTest
    @CsvSource({"1, true", "0.5, false"})
    void aLargeCapacitorSteadiesAndASmallOneDoesNot(double farads, boolean steadied)
            throws UntoldStory {
        Bench bench =
                wired().part(
                                new CapacitorBank(
                                        Bench.tag("bank"), new Rating(16, farads), 0.01, 1e-5))
                        .join("bank", "plus", "bus", "bar")
                        .join("bank", "minus", "ground", "stud");
        Story story = told(bench, "battery: disconnects itself");
        assertEquals(steadied ? 0 : 1, Telling.count(story, StoryEvent.Kind.SOURCE_UNSTEADY));
    }

    @Test
    void twoAlternatorsOnOneBatteryLoseItTogether() throws UntoldStory {
        Bench bench =
                wired().part(Shelf.alternator("standby", 13.8, 20, 0, UNSTEADY))
                        .join("standby", "case", "ground", "stud")
                        .join("standby", "output", "bus", "bar")
                        .join("standby", "field", "bus", "bar");
        Story story = told(bench, "nose-ground: open");
        assertEquals(2, Telling.count(story, StoryEvent.Kind.SOURCE_UNSTEADY));
    }

    /** The voltage that is told is one that the bus had, within the drop on the way to it. */
    @Test
    void theVoltageOfALoadDumpIsTheOneThatTheBusSees() throws UntoldStory {
        Bench bench =
                wired().load("heater", DemandKind.CONSTANT_RESISTANCE, 30, Bench.HARDY)
                        .join("heater", "plus", "bus", "bar")
                        .part(Shelf.lithium("starter-battery", 20, 0.3, Shelf.LENIENT))
                        .join("starter-battery", "plus", "battery-lead", "a")
                        .join("starter-battery", "minus", "ground", "stud");
        Story story = told(bench, "battery-lead: open");
        String words = story.of(StoryEvent.Kind.LOAD_DUMP).get(0).words();
        double volts = Double.parseDouble(words.replaceAll(".* jumps to ([0-9.]+) V .*", "$1"));
        // without the heater it would be 35 V; what the heater takes of 45 A holds it below
        assertTrue(volts < 25, words);
        assertEquals(volts, Telling.trace(story, "bus").highest(), 0.1);
    }
}
