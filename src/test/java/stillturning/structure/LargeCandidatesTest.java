package stillturning.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stillturning.bench.Thorough;
import stillturning.model.EngineLogic;
import stillturning.parts.switching.Switch.Throw;
import stillturning.structure.StructureFindings.SinglePoint;

/** Deep and wide candidates: no recursion over what a person drew, and no long wait. */
class LargeCandidatesTest {

    private static final Duration LONG_WAIT = Duration.ofSeconds(60);

    @Thorough
    @Test
    void aChainOfFiveThousandPartsIsFiveThousandSinglePoints() {
        Rig rig = new Rig().battery("battery").load("pump", "plus").allOf("pump");
        rig.join("battery.minus", "pump.minus");
        String end = "battery.plus";
        for (int i = 0; i < 5000; i++) {
            rig.wire("w" + i).join(end, "w" + i + ".a");
            end = "w" + i + ".b";
        }
        rig.join(end, "pump.plus");
        StructureFindings found = assertTimeoutPreemptively(LONG_WAIT, rig::findings);
        assertEquals(5002, found.singlePoints().size());
        assertEquals(5001, found.loads().get(0).feed().shared().size());
        assertEquals(1, found.loads().get(0).feed().cut().size());
        assertEquals(1, found.independentLoops());
    }

    @Test
    void aLongLadderHasTwoWaysAndNoSinglePart() {
        PartGraph.Builder builder = new PartGraph.Builder();
        int from = builder.vertex();
        int upper = from;
        int lower = from;
        for (int rung = 0; rung < 2500; rung++) {
            int nextUpper = builder.vertex(2 * rung);
            int nextLower = builder.vertex(2 * rung + 1);
            builder.edge(upper, nextUpper);
            builder.edge(lower, nextLower);
            builder.edge(nextUpper, nextLower);
            upper = nextUpper;
            lower = nextLower;
        }
        int to = builder.vertex();
        builder.edge(upper, to);
        builder.edge(lower, to);
        PartGraph graph = builder.build();
        Separation found =
                assertTimeoutPreemptively(LONG_WAIT, () -> new Separator(graph).between(from, to));
        assertEquals(2, found.ways().size());
        assertEquals(2, found.cut().size());
        assertEquals(List.of(), found.shared());
    }

    @Test
    void aTypicalCandidateOfAHundredAndFiftyPartsLosesTheEngineByItsReturnAndItsConnector() {
        StructureFindings found = typical().findings();
        assertEquals(
                List.of(
                        new SinglePoint(
                                "airframe-ground",
                                "the returns of computer-a, computer-b, pump-a and pump-b"),
                        new SinglePoint(
                                "engine-ground",
                                "the returns of computer-a, computer-b, pump-a and pump-b"),
                        new SinglePoint(
                                "j1",
                                "all feeds of computer-a, computer-b, pump-a and pump-b pass it")),
                found.singlePoints());
        assertEquals(150, typical().candidate().parts().size());
    }

    /** Two batteries, an alternator, two buses with a tie, 23 loads with breaker and wires. */
    static Rig typical() {
        Rig rig =
                new Rig()
                        .battery("battery-a")
                        .battery("battery-b")
                        .alternator("alternator", false)
                        .bus("main", "stud-a", "stud-b")
                        .bus("engine", "stud-a", "stud-b")
                        .ground("airframe-ground")
                        .ground("engine-ground")
                        .connector("j1", 12)
                        .contactor("master")
                        .lever("master-switch", Throw.SINGLE, 1, "on")
                        .lever("tie", Throw.SINGLE, 1, "off")
                        .procedure("tie", Map.of("tie", "on"))
                        .diode("tie-diode");
        rig.join("battery-a.minus", "battery-b.minus", "alternator.case", "airframe-ground.stud")
                .join("battery-a.plus", "master.in", "master-switch.in")
                .join("master-switch.out", "master.coil-plus", "alternator.field")
                .join("master.coil-minus", "airframe-ground.stud")
                .join("master.out", "main.stud-a")
                .join("alternator.output", "main.stud-b")
                .join("battery-b.plus", "engine.stud-a", "tie.in")
                .join("tie.out", "main.bar")
                .join("main.bar", "tie-diode.in")
                .join("tie-diode.out", "engine.stud-b");
        addLoads(rig);
        return rig;
    }

    private static void addLoads(Rig rig) {
        List<String> engine = List.of("computer-a", "computer-b", "pump-a", "pump-b");
        for (int i = 0; i < 23; i++) {
            boolean critical = i < 4;
            String id = critical ? engine.get(i) : "load-" + i;
            String bus = i % 2 == 0 ? "engine" : "main";
            String at = "-" + id;
            rig.breaker("breaker" + at).wire("feed" + at).wire("out" + at).wire("return" + at);
            rig.lever("switch" + at, Throw.SINGLE, 1, "on").load(id, "plus");
            rig.join(bus + ".bar", "breaker" + at + ".in")
                    .join("breaker" + at + ".out", "feed" + at + ".a")
                    .join("feed" + at + ".b", "switch" + at + ".in")
                    .join("switch" + at + ".out", "out" + at + ".a")
                    .join(id + ".minus", "return" + at + ".a")
                    .join(
                            "return" + at + ".b",
                            (critical ? "engine" : "airframe") + "-ground.stud");
            if (critical) {
                rig.join("out" + at + ".b", "j1." + (i + 1) + "a");
                rig.join("j1." + (i + 1) + "b", id + ".plus");
            } else {
                rig.join("out" + at + ".b", id + ".plus");
            }
        }
        rig.needs(
                EngineLogic.allOf(
                        List.of(anyOf("computer-a", "computer-b"), anyOf("pump-a", "pump-b"))));
    }

    private static EngineLogic anyOf(String one, String other) {
        return EngineLogic.anyOf(List.of(new EngineLogic.One(one), new EngineLogic.One(other)));
    }
}
