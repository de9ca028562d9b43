package stillturning.model.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.wiring.MetalLines.MetalLine;
import stillturning.parts.element.Demand.DemandKind;

class MetalLinesTest {

    /** Battery, fuse wire, switch and wire to a bus; from there a breaker and a wire to a load. */
    private static Candidate candidate() {
        return new Bench()
                .battery("battery", 20, 0.01, 1)
                .wire("lead", 1, 0.01)
                .closedSwitch("master", "on")
                .wire("lead-2", 1, 0.01)
                .bus("bus", "feed")
                .breaker("breaker", 5)
                .wire("wire", 1, 0.02)
                .breaker("breaker-2", 5)
                .wire("wire-2", 1, 0.02)
                .load("engine-needs", DemandKind.CONSTANT_CURRENT, 1, Bench.HARDY)
                .load("lamp", DemandKind.CONSTANT_CURRENT, 1, Bench.HARDY)
                .join("battery", "plus", "lead", "a")
                .join("lead", "b", "master", "in")
                .join("master", "out", "lead-2", "a")
                .join("lead-2", "b", "bus", "feed")
                .join("bus", "bar", "breaker", "in")
                .join("breaker", "out", "wire", "a")
                .join("wire", "b", "engine-needs", "plus")
                .join("bus", "bar", "breaker-2", "in")
                .join("breaker-2", "out", "wire-2", "a")
                .join("wire-2", "b", "lamp", "plus")
                .candidate();
    }

    private static List<String> parts(MetalLine line) {
        return line.links().stream().map(Circuit.Placed::part).toList();
    }

    @Test
    void aLineGoesFromWhereItBranchesToWhereItBranches() {
        Candidate candidate = candidate();
        MetalLines lines = new MetalLines(candidate, candidate.circuit());
        assertEquals(
                List.of("battery", "lead", "master", "lead-2", "bus"), parts(lines.of("lead-2")));
        assertEquals(lines.of("lead"), lines.of("lead-2"));
        assertEquals(List.of("breaker", "wire", "engine-needs"), parts(lines.of("wire")));
        assertEquals(1, lines.of("wire").protectors().count());
    }

    @Test
    void aLoadKnowsTheLineThatArrives() {
        Candidate candidate = candidate();
        Circuit circuit = candidate.circuit();
        MetalLines lines = new MetalLines(candidate, circuit);
        MetalLine arriving = lines.arrivingAt("lamp", circuit.net("lamp", "plus")).orElseThrow();
        assertEquals(lines.of("wire-2"), arriving);
        assertTrue(lines.arrivingAt("bus", circuit.net("bus", "bar")).isEmpty());
    }

    @Test
    void whatIsNoWireHasNoLine() {
        Candidate candidate = candidate();
        MetalLines lines = new MetalLines(candidate, candidate.circuit());
        assertThrows(IllegalArgumentException.class, () -> lines.of("breaker"));
    }
}
