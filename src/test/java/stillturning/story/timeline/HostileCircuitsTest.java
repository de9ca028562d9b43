package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Cue;
import stillturning.model.EngineLogic;
import stillturning.model.Procedure;
import stillturning.model.Terminal;
import stillturning.model.failure.Failure;
import stillturning.parts.Part;
import stillturning.parts.Tag;
import stillturning.parts.element.Capacity;
import stillturning.parts.element.Cell.OpenCircuit;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Management;
import stillturning.parts.element.Management.Limit;
import stillturning.parts.element.Management.Reconnection;
import stillturning.parts.element.Management.Temperatures;
import stillturning.parts.element.Tolerance;
import stillturning.parts.element.curve.RestVoltage;
import stillturning.parts.source.Battery;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** Circuits that undo what they do: every story ends, and says who kept it going. */
@Timeout(60)
class HostileCircuitsTest {

    private static final Failure ARMED = Failure.levers("armed", Map.of("arm", "on"));

    /** A battery of this resistance with a computer; a bus behind a switch that is still open. */
    private static Bench weak(double ohms) {
        return new Bench()
                .part(Shelf.lead("battery", 2, ohms, 1))
                .join("battery", "minus", "ground", "stud")
                .closedSwitch("arm", "off")
                .bus("bus")
                .join("battery", "plus", "arm", "in")
                .join("arm", "out", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_POWER, 0.5, Bench.HARDY)
                .join("computer", "plus", "battery", "plus")
                .engine(new EngineLogic.One("computer"), true);
    }

    private static Bench relay(Bench bench, String id, double delay, String in, String coil) {
        bench.part(Shelf.contactor(id, delay)).join(id, "coil-minus", "ground", "stud");
        String[] feed = in.split("\\.", -1);
        String[] winding = coil.split("\\.", -1);
        return bench.join(feed[0], feed[1], id, "in")
                .join(winding[0], winding[1], id, "coil-plus")
                .load(id + "-load", DemandKind.CONSTANT_RESISTANCE, 200, Bench.HARDY)
                .join(id, "out", id + "-load", "plus");
    }

    private static Story armed(Bench bench) throws UntoldStory {
        return bench.timeline().tell(ARMED, Pilot.NEVER);
    }

    private static StoryEvent chatter(Story story) {
        List<StoryEvent> chatter = story.of(StoryEvent.Kind.CHATTER);
        assertTrue(!chatter.isEmpty(), story.happenings().toString());
        return chatter.get(0);
    }

    @Test
    void twoRelaysThatTakeEachOthersVoltageAreBothNamed() throws UntoldStory {
        Bench bench = weak(0.2);
        relay(bench, "left", 0.015, "bus.bar", "bus.bar");
        relay(bench, "right", 0.02, "bus.bar", "bus.bar");
        Story story = armed(bench);
        assertTrue(chatter(story).words().contains("left"), story.happenings().toString());
        assertTrue(chatter(story).words().contains("right"), story.happenings().toString());
        assertTrue(story.aftermath().working().contains("computer"));
    }

    @Test
    void aLoadThatItsOwnCurrentStarvesGoesOnDrawingAndDoesNotFlip() throws UntoldStory {
        Bench bench =
                weak(0.2)
                        .load(
                                "heater",
                                DemandKind.CONSTANT_POWER,
                                20,
                                new Tolerance(10, 10, 0.01, 0, 40, 1))
                        .join("heater", "plus", "bus", "bar");
        Story story = armed(bench);
        assertEquals(0, Telling.count(story, StoryEvent.Kind.CHATTER));
        assertEquals(0, Telling.count(story, StoryEvent.Kind.LOAD_RESTARTS));
        assertTrue(!story.aftermath().working().contains("heater"));
    }

    /** A pack of 0.05 ohm, a tenth of a kilogram, that alone feeds a load of 40 A. */
    private static Bench pack(Management management) {
        return weak(0.02)
                .part(
                        new Battery(
                                new Tag("pack", "pack", "bench", new Tag.Burden(0.1, 0)),
                                new OpenCircuit(RestVoltage.LITHIUM_IRON_PHOSPHATE, 1),
                                4,
                                new Capacity(100 * 3600, 1, 1),
                                0.05,
                                1,
                                Optional.of(management)))
                .join("pack", "minus", "ground", "stud")
                .closedSwitch("winch-switch", "off")
                .join("pack", "plus", "winch-switch", "in")
                .load("winch", DemandKind.CONSTANT_RESISTANCE, 40, Bench.HARDY)
                .join("winch-switch", "out", "winch", "plus");
    }

    private static Management management(
            double amps, Optional<Temperatures> watched, double pauseSeconds) {
        return new Management(
                new Limit(5, 0),
                new Limit(20, 0),
                new Limit(amps, 0),
                new Limit(Double.POSITIVE_INFINITY, 0),
                watched,
                new Reconnection(new Limit(13, 0), 20, pauseSeconds, Integer.MAX_VALUE));
    }

    private static Story winching(Bench bench) throws UntoldStory {
        return bench.timeline()
                .tell(Failure.levers("winch", Map.of("winch-switch", "on")), Pilot.NEVER);
    }

    @Test
    void aManagementThatTriesForEverIsNamedWithThePauseOfItsTries() throws UntoldStory {
        for (double pause : new double[] {0, 0.25}) {
            Story story = winching(pack(management(20, Optional.empty(), pause)));
            assertEquals("pack", chatter(story).part());
            String period = pause == 0 ? "all at one instant" : "every 0.250 s";
            assertTrue(chatter(story).words().contains(period), chatter(story).words());
            assertTrue(!story.aftermath().working().contains("winch"));
            assertTrue(story.aftermath().working().contains("computer"));
        }
    }

    @Test
    void aPackThatGoesHotAndCoolsWithoutEndIsNamedWithItsPeriod() throws UntoldStory {
        Temperatures watched =
                new Temperatures(new Limit(60, 0), new Limit(Double.NEGATIVE_INFINITY, 0), 59.5);
        Story story = winching(pack(management(1000, Optional.of(watched), 1)));
        assertEquals("pack", chatter(story).part());
        // with the 1000 J/(kg K) and 3600 s of the engine: 35 K above the zone, half a kelvin to
        // cool; about 58 W into 100 J/K to warm up again; it flips twice on the way
        double period = 3600 * Math.log(35.0 / 34.5) + 0.5 / 0.58;
        double told =
                Double.parseDouble(
                        chatter(story).words().replaceAll("(?s).*every ([0-9.]+) s.*", "$1"));
        assertEquals(period / 2, told, 0.05 * period);
    }

    @Test
    void twoAutomaticsThatUndoEachOtherActOnceEach() throws UntoldStory {
        Bench bench =
                weak(0.2)
                        .load("heater", DemandKind.CONSTANT_RESISTANCE, 20, Bench.HARDY)
                        .closedSwitch("heat", "on")
                        .join("bus", "bar", "heat", "in")
                        .join("heat", "out", "heater", "plus")
                        .cue("low", new Cue.LowVolts(new Terminal("battery", "plus"), 11, 0))
                        .cue("high", new Cue.HighVolts(new Terminal("bus", "bar"), 12, 0));
        for (String[] act : new String[][] {{"less", "low", "off"}, {"more", "high", "on"}}) {
            bench.procedure(
                    new Procedure(
                            act[0],
                            List.of(act[1]),
                            0,
                            Map.of("heat", act[2]),
                            List.of(),
                            new Procedure.Execution(Optional.of("computer"), 0)));
        }
        Story story = armed(bench);
        assertEquals(0, Telling.count(story, StoryEvent.Kind.CHATTER));
        assertEquals(
                List.of("heat off", "heat on"),
                story.of(StoryEvent.Kind.AUTOMATIC).stream().map(StoryEvent::words).toList());
    }

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    /** Relays, a pack, a converter and an alternator, fed and excited from anywhere. */
    private static Bench drawn(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Bench bench = weak(0.05 + 0.4 * random.nextDouble());
        List<String> nets = new ArrayList<>(List.of("bus.bar", "bus.bar"));
        int relays = 1 + random.nextInt(4);
        for (int n = 1; n <= relays; n++) {
            nets.add("relay-" + n + ".out");
        }
        double[] delays = {0, 0.001, 0.015, 0.2};
        for (int n = 1; n <= relays; n++) {
            relay(
                    bench,
                    "relay-" + n,
                    delays[random.nextInt(delays.length)],
                    nets.get(random.nextInt(Math.min(nets.size(), n + 1))),
                    nets.get(random.nextInt(nets.size())));
        }
        if (random.nextBoolean()) {
            bench.part(Shelf.lithium("pack", 1, 0.9, management(30, Optional.empty(), 0.1)))
                    .join("pack", "minus", "ground", "stud");
            to(bench, "pack", "plus", nets.get(random.nextInt(nets.size())));
        }
        if (random.nextBoolean()) {
            bench.part(Shelf.converter("converter", 20))
                    .join("converter", "minus", "ground", "stud");
            to(bench, "converter", "in", nets.get(random.nextInt(nets.size())));
            to(bench, "converter", "out", nets.get(random.nextInt(nets.size())));
        }
        if (random.nextBoolean()) {
            bench.part(Shelf.alternator("alternator", 14.2, 30, 14.2, Shelf.GIVES_UP))
                    .join("alternator", "case", "ground", "stud");
            to(bench, "alternator", "output", nets.get(random.nextInt(nets.size())));
            to(bench, "alternator", "field", nets.get(random.nextInt(nets.size())));
        }
        return bench;
    }

    private static void to(Bench bench, String part, String terminal, String net) {
        String[] other = net.split("\\.", -1);
        bench.join(part, terminal, other[0], other[1]);
    }

    private static Set<String> named(Bench bench, String words) {
        Set<String> named = new TreeSet<>();
        for (Part part : bench.candidate().parts()) {
            if (words.matches("(?s).*\\b" + part.id() + "\\b(?!-).*")) {
                named.add(part.id());
            }
        }
        return named;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whateverIsJoinedTheStoryEndsOrIsRefusedByName(long seed) {
        Bench bench = drawn(seed);
        try {
            Story story = bench.timeline().tell(ARMED, Setting.with(Pilot.NEVER), 7200);
            for (StoryEvent chatter : story.of(StoryEvent.Kind.CHATTER)) {
                Set<String> members = named(bench, chatter.words());
                assertTrue(members.contains(chatter.part()), "seed " + seed + ": " + chatter);
            }
        } catch (UntoldStory e) {
            assertTrue(
                    !named(bench, String.valueOf(e.getMessage())).isEmpty(),
                    "seed " + seed + ": " + e.getMessage());
        }
    }

    @Test
    void theLotHoldsCircuitsThatFlipAndOthers() throws UntoldStory {
        int flips = 0;
        int calm = 0;
        for (long seed : seeds().toArray()) {
            try {
                Story story = drawn(seed).timeline().tell(ARMED, Setting.with(Pilot.NEVER), 60);
                flips += Telling.count(story, StoryEvent.Kind.CHATTER) > 0 ? 1 : 0;
                calm += Telling.count(story, StoryEvent.Kind.CHATTER) > 0 ? 0 : 1;
            } catch (UntoldStory e) {
                flips++;
            }
        }
        assertTrue(flips > 10 && calm > 10, flips + " flip, " + calm + " do not");
    }
}
