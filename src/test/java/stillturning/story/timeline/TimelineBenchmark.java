package stillturning.story.timeline;

import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Cue;
import stillturning.model.EngineLogic;
import stillturning.model.Terminal;
import stillturning.model.failure.Failure;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.story.NormalFlight;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.UntoldStory;

/** How fast stories are told on an aircraft of about a hundred parts. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class TimelineBenchmark {

    private static final int LOADS = 20;

    private final Bench bench = aircraft();
    private final Timeline timeline = timeline();
    private final Failure nothing = Failure.levers("nothing", Map.of());
    private final Failure fuseOpens = bench.failure("breaker-19: opens for no reason");
    private final Failure shorted = bench.failure("stub: short to ground");
    private final Failure chargingLost = bench.failure("alternator: regulator open");

    /** One battery, one alternator, a contactor, an engine bus behind a diode, twenty loads. */
    static Bench aircraft() {
        Bench bench =
                new Bench()
                        .battery("battery", 20, 0.012, 1.1)
                        .alternator("alternator", 45)
                        .part(Shelf.contactor("master", 0.015))
                        .bus("main-bus", "feed", "charge")
                        .bus("engine-bus", "direct")
                        .diode("diode")
                        .bus("stub")
                        .wire("stub-feed", 2, 0.03)
                        .breaker("stub-breaker", 5)
                        .join("battery", "plus", "master", "in")
                        .join("battery", "plus", "master", "coil-plus")
                        .join("master", "coil-minus", "ground", "stud")
                        .join("master", "out", "main-bus", "feed")
                        .join("alternator", "output", "main-bus", "charge")
                        .join("alternator", "field", "main-bus", "bar")
                        .join("main-bus", "bar", "diode", "in")
                        .join("diode", "out", "engine-bus", "bar")
                        .join("battery", "plus", "engine-bus", "direct")
                        .join("main-bus", "bar", "stub-breaker", "in")
                        .join("stub-breaker", "out", "stub-feed", "a")
                        .join("stub-feed", "b", "stub", "bar");
        for (int i = 0; i < LOADS; i++) {
            addLoad(bench, i);
        }
        return bench.engine(
                        EngineLogic.allOf(
                                java.util.List.of(
                                        new EngineLogic.One("load-0"),
                                        new EngineLogic.One("load-1"))),
                        true)
                .cue("alternator light", new Cue.AlternatorOut("alternator"))
                .cue("low volts", new Cue.LowVolts(new Terminal("main-bus", "bar"), 12.5, 10))
                .procedure("shed", "alternator light", 60, Map.of(), "load-18", "load-19");
    }

    private static void addLoad(Bench bench, int i) {
        String bus = i < 4 ? "engine-bus" : "main-bus";
        DemandKind kind = i % 3 == 2 ? DemandKind.CONSTANT_RESISTANCE : DemandKind.CONSTANT_POWER;
        bench.breaker("breaker-" + i, 5)
                .closedSwitch("switch-" + i, "on")
                .wire("wire-" + i, 2, 0.04)
                .load("load-" + i, kind, 0.5 + 0.1 * i, Bench.HARDY)
                .join(bus, "bar", "breaker-" + i, "in")
                .join("breaker-" + i, "out", "switch-" + i, "in")
                .join("switch-" + i, "out", "wire-" + i, "a")
                .join("wire-" + i, "b", "load-" + i, "plus");
    }

    private Timeline timeline() {
        try {
            return bench.timeline();
        } catch (UntoldStory e) {
            throw new IllegalStateException("the benchmark's aircraft does not fly", e);
        }
    }

    /** Wiring up and coming to rest. */
    @Benchmark
    public NormalFlight settles() throws UntoldStory {
        return bench.timeline().normal();
    }

    /** A story in which nothing fails: the price of wiring up. */
    @Benchmark
    public Story tellsOfNothing() throws UntoldStory {
        return timeline.tell(nothing, Pilot.NEVER);
    }

    /** A story that is over at once. */
    @Benchmark
    public Story tellsOfABreakerThatOpens() throws UntoldStory {
        return timeline.tell(fuseOpens, Pilot.PLANNED);
    }

    /** A race of protectors. */
    @Benchmark
    public Story tellsOfAShort() throws UntoldStory {
        return timeline.tell(shorted, Pilot.PLANNED);
    }

    /** Two hours until the battery is empty. */
    @Benchmark
    public Story tellsOfChargingLost() throws UntoldStory {
        return timeline.tell(chargingLost, Pilot.PLANNED);
    }
}
