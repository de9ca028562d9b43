package stillturning.timeline;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Bench;
import stillturning.element.Capacity;
import stillturning.element.Cell.OpenCircuit;
import stillturning.element.Demand;
import stillturning.element.RestVoltage;
import stillturning.element.Tolerance;
import stillturning.failure.Failure;
import stillturning.model.EngineLogic;
import stillturning.parts.Battery;
import stillturning.parts.Load;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.UntoldStory;

/**
 * Endurance in random systems of batteries, diodes, wires and loads that nothing sheds or trips.
 */
class RandomEnduranceTest {

    private static final Tolerance LOAD = new Tolerance(9, 9.5, 0.02, 0.5, 40, 1);

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    /** Everything that is drawn by lot, drawn in one order whatever becomes of it. */
    private record Lot(long seed, double capacityShare, boolean oneMore) {

        double endurance() throws UntoldStory {
            SplittableRandom random = new SplittableRandom(seed);
            Bench bench = new Bench();
            int batteries = 1 + random.nextInt(2);
            int buses = 1 + random.nextInt(3);
            for (int bus = 0; bus < buses; bus++) {
                bench.bus("bus-" + bus);
                if (bus > 0) {
                    bench.wire("tie-" + bus, 1, 0.005 + 0.05 * random.nextDouble())
                            .join("bus-" + random.nextInt(bus), "bar", "tie-" + bus, "a")
                            .join("bus-" + bus, "bar", "tie-" + bus, "b");
                }
            }
            for (int b = 0; b < batteries; b++) {
                battery(bench, b, random);
                bench.diode("diode-" + b)
                        .join("battery-" + b, "plus", "diode-" + b, "in")
                        .join("diode-" + b, "out", "bus-" + random.nextInt(buses), "bar");
            }
            int loads = 1 + random.nextInt(5);
            for (int l = 0; l < loads; l++) {
                load(bench, "load-" + l, buses, random);
            }
            if (oneMore) {
                load(bench, "one-more", buses, random);
            }
            bench.engine(new EngineLogic.One("load-0"), false);
            Story story = bench.timeline().tell(Failure.levers("nothing", Map.of()), Pilot.NEVER);
            return story.engine().endurance().seconds();
        }

        private static <T> T drawn(List<T> choices, SplittableRandom random) {
            return choices.get(random.nextInt(choices.size()));
        }

        private void battery(Bench bench, int number, SplittableRandom random) {
            double coulombs = 3600 * (2 + 10 * random.nextDouble());
            RestVoltage curve = drawn(List.of(RestVoltage.values()), random);
            double exponent = 1 + 0.3 * random.nextDouble();
            double ohms = 0.005 + 0.02 * random.nextDouble();
            double charge = 0.3 + 0.7 * random.nextDouble();
            bench.part(
                            new Battery(
                                    Bench.tag("battery-" + number),
                                    new OpenCircuit(curve, 1),
                                    6,
                                    new Capacity(coulombs * capacityShare, 20, exponent),
                                    ohms,
                                    charge,
                                    Optional.empty()))
                    .join("battery-" + number, "minus", "ground", "stud");
        }

        private static void load(Bench bench, String id, int buses, SplittableRandom random) {
            Demand.Kind kind = drawn(List.of(Demand.Kind.values()), random);
            Demand demand = new Demand(kind, 1 + 5 * random.nextDouble(), 12);
            bench.load(new Load(Bench.tag(id), demand, LOAD, List.of("plus")))
                    .join(id, "plus", "bus-" + random.nextInt(buses), "bar");
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void endsNoLaterWithOneMoreLoad(long seed) throws UntoldStory {
        double without = new Lot(seed, 1, false).endurance();
        double with = new Lot(seed, 1, true).endurance();
        assertTrue(with <= without * (1 + 1e-9), "seed " + seed + ": " + without + " " + with);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void endsNoLaterWithLessCapacity(long seed) throws UntoldStory {
        double last = 0;
        for (double share : new double[] {0.5, 0.8, 0.999, 1}) {
            double endurance = new Lot(seed, share, true).endurance();
            assertTrue(
                    endurance >= last * (1 - 1e-9),
                    "seed " + seed + " share " + share + ": " + endurance + " after " + last);
            last = endurance;
        }
    }
}
