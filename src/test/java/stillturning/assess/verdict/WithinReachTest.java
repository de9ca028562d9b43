package stillturning.assess.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.EngineLogic;
import stillturning.model.Reach;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Tolerance;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Setting.Act;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/**
 * What a pilot can do against a runaway that no guard stops. That an alternator without field gives
 * nothing, and that its battery must not be taken off while it gives, is common practice.
 */
class WithinReachTest {

    private static final String RUNAWAY = "alternator: over-voltage";

    /** Of a battery of 20 Ah: at 16.6 V it bears the 4 A of a runaway for a while. */
    private static Bench bench(double radioWithstands) {
        return bench(radioWithstands, 14.2, 15);
    }

    /**
     * @param fullFieldVolts 0 for magnets
     */
    private static Bench bench(double radioWithstands, double fullFieldVolts, double amps) {
        return new Bench()
                .part(Shelf.lead("battery", 20, 0.02, 1))
                .join("battery", "minus", "ground", "stud")
                .closedSwitch("battery-switch", "on")
                .join("battery", "plus", "battery-switch", "in")
                .part(Shelf.alternator("alternator", 14.2, amps, fullFieldVolts, Shelf.STEADY))
                .join("alternator", "case", "ground", "stud")
                .bus("bus")
                .join("battery-switch", "out", "bus", "bar")
                .join("alternator", "output", "bus", "bar")
                .closedSwitch("field-switch", "on")
                .join("bus", "bar", "field-switch", "in")
                .join("field-switch", "out", "alternator", "field")
                .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .join("computer", "plus", "bus", "bar")
                .load(
                        "radio",
                        DemandKind.CONSTANT_CURRENT,
                        1,
                        new Tolerance(9, 10, 0.02, 0.5, radioWithstands, 0.1))
                .join("radio", "plus", "bus", "bar")
                .engine(new EngineLogic.One("computer"), true);
    }

    private static Optional<Remark> remark(Bench bench) throws UntoldStory {
        return new Judge(bench.study(), bench.timeline())
                .judge(bench.failure(RUNAWAY)).remarks().stream()
                        .filter(remark -> remark.topic() == Remark.Topic.WITHIN_REACH)
                        .findFirst();
    }

    @Test
    void theFieldsSwitchIsFoundWithTheTimeThatItLeaves() throws UntoldStory {
        Bench bench = bench(18.5);
        String words = remark(bench).orElseThrow().words();
        assertTrue(words.startsWith("field-switch off within "), words);
        assertTrue(words.contains(" keeps battery, radio; done at once, the engine then"), words);
    }

    /** A regulator that passes all through does not ask whether it is supplied. */
    @Test
    void theSupplyOfTheRegulatorIsNoRemedyWhereMagnetsMakeTheField() throws UntoldStory {
        Bench magnets = bench(40, 0, 15);
        Setting switchedOff =
                Setting.with(Pilot.PLANNED).with(new Act(Map.of("field-switch", "off"), 10));
        Story story = magnets.timeline().tell(magnets.failure(RUNAWAY), switchedOff);
        assertEquals(List.of(), story.of(StoryEvent.Kind.SOURCE_STOPS));
        assertFalse(remark(magnets).map(Remark::words).orElse("").startsWith("field-switch off"));
    }

    /** The time is held against stories: a little before it all is kept, a little after it not. */
    @Test
    void theTimeIsTheLastAtWhichItHelps() throws UntoldStory {
        Bench bench = bench(18.5);
        String words = remark(bench).orElseThrow().words();
        Matcher time = Pattern.compile("within (\\d+) h (\\d+) min").matcher(words);
        assertTrue(time.find(), words);
        double seconds =
                3600 * Double.parseDouble(time.group(1)) + 60 * Double.parseDouble(time.group(2));
        assertEquals(0, lostWith(bench, 0.97 * seconds), "a little before");
        assertTrue(lostWith(bench, 1.03 * seconds) > 0, "a little after");
    }

    private static long lostWith(Bench bench, double fromSeconds) throws UntoldStory {
        Setting setting =
                Setting.with(Pilot.PLANNED)
                        .with(new Act(Map.of("field-switch", "off"), fromSeconds));
        Story story = bench.timeline().tell(bench.failure(RUNAWAY), setting);
        return story.happenings().stream()
                .filter(
                        event ->
                                event.kind() == StoryEvent.Kind.LOAD_DESTROYED
                                        || event.kind() == StoryEvent.Kind.BATTERY_DISCONNECTS)
                .count();
    }

    @Test
    void whatCannotBeReachedInTheSeatIsNotCountedOn() throws UntoldStory {
        Bench bench =
                bench(18.5)
                        .reach("field-switch", Reach.GROUND)
                        .reach("battery-switch", Reach.GROUND);
        assertEquals(
                "nothing within reach keeps battery, radio", remark(bench).orElseThrow().words());
    }

    /** Nine switches that change nothing make 72 pairs, one after the other. */
    @Test
    void aSearchThatWasCutOffSaysSo() throws UntoldStory {
        Bench bench =
                bench(18.5)
                        .reach("field-switch", Reach.GROUND)
                        .reach("battery-switch", Reach.GROUND);
        for (int i = 1; i <= 9; i++) {
            String idle = "idle-" + i;
            bench.closedSwitch(idle, "on")
                    .join("bus", "bar", idle, "in")
                    .load(idle + "-lamp", DemandKind.CONSTANT_CURRENT, 0.01, Bench.HARDY)
                    .join(idle + "-lamp", "plus", idle, "out");
        }
        assertEquals(
                "nothing within reach keeps battery, radio"
                        + "; of 72 pairs of switch moves, 60 were tried",
                remark(bench).orElseThrow().words());
    }

    /** To take the battery off a charging alternator is no remedy. */
    @Test
    void whatDestroysMoreIsNotOffered() throws UntoldStory {
        Bench bench = bench(18.5).reach("field-switch", Reach.GROUND);
        String words = remark(bench).orElseThrow().words();
        assertTrue(!words.contains("battery-switch off"), words);
    }

    /** With another alternator the engine runs on either way; only one takes the voltage away. */
    @Test
    void theBatteryIsNotTakenOffWhereTheRunawayCanBe() throws UntoldStory {
        Bench bench =
                bench(40, 14.2, 19)
                        .part(Shelf.alternator("spare", 13.9, 15, 13.9, Shelf.STEADY))
                        .join("spare", "case", "ground", "stud")
                        .join("spare", "output", "bus", "bar")
                        .join("spare", "field", "bus", "bar");
        String words = remark(bench).orElseThrow().words();
        assertTrue(words.startsWith("field-switch off within "), words);
        assertTrue(words.endsWith("done at once, the engine then runs on"), words);
    }

    @Test
    void whatGoesBeforeAHandCanMoveIsNotAmongWhatIsKept() throws UntoldStory {
        Bench bench = bench(15).reach("battery-switch", Reach.GROUND);
        String words = remark(bench).orElseThrow().words();
        assertTrue(words.startsWith("field-switch off within "), words);
        assertTrue(words.contains(" keeps battery; "), words);
    }

    /** A battery behind 1.5 times the resistance that is guessed to be the limit. */
    @Test
    void anOutcomeThatHangsOnTheMarginOfSteadyingSaysSo() throws UntoldStory {
        List<Remark> near = steadying(1.5);
        assertEquals(1, near.size(), near.toString());
        assertTrue(
                near.get(0).words().contains("twice the resistance behind which a battery"),
                near.toString());
        assertEquals(List.of(), steadying(4));
    }

    private static List<Remark> steadying(double share) throws UntoldStory {
        double most = 0.5 * 14.2 / 15;
        Bench bench =
                new Bench()
                        .part(Shelf.lead("battery", 20, 0.02, 1))
                        .join("battery", "minus", "ground", "stud")
                        .part(Shelf.alternator("alternator", 14.2, 15, true))
                        .join("alternator", "case", "ground", "stud")
                        .bus("bus")
                        .wire("near-wire", 1, 0.002)
                        .wire("far-wire", 1, share * most)
                        .join("battery", "plus", "near-wire", "a")
                        .join("near-wire", "b", "bus", "bar")
                        .join("battery", "plus", "far-wire", "a")
                        .join("far-wire", "b", "bus", "bar")
                        .join("alternator", "output", "bus", "bar")
                        .join("alternator", "field", "bus", "bar")
                        .load("computer", DemandKind.CONSTANT_CURRENT, 1, Bench.HARDY)
                        .join("computer", "plus", "bus", "bar")
                        .engine(new EngineLogic.One("computer"), true);
        return new Judge(bench.study(), bench.timeline())
                .judge(bench.failure("near-wire: open")).remarks().stream()
                        .filter(remark -> remark.topic() == Remark.Topic.STEADYING)
                        .toList();
    }
}
