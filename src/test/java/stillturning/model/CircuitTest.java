package stillturning.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Candidate.Hit;
import stillturning.model.Circuit.Placed;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.parts.element.Demand;

class CircuitTest {

    private static Candidate candidate() {
        return new Bench()
                .part(Shelf.lead("battery", 20, 0.01, 1))
                .join("battery", "minus", "ground", "stud")
                .wire("feed-a", 1, 0.02)
                .wire("feed-b", 1, 0.02)
                .load(Shelf.twoInputs("computer", Demand.DemandKind.CONSTANT_POWER, 1))
                .join("battery", "plus", "feed-a", "a")
                .join("battery", "plus", "feed-b", "a")
                .join("feed-a", "b", "computer", "a")
                .join("feed-b", "b", "computer", "b")
                .candidate();
    }

    @Test
    void joinedTerminalsAreOneNetHoweverTheChainRuns() {
        Circuit circuit = candidate().circuit();
        assertEquals(circuit.net("feed-a", "a"), circuit.net("feed-b", "a"));
        assertEquals(circuit.net("battery", "plus"), circuit.net("feed-b", "a"));
        assertNotEquals(circuit.net("feed-a", "b"), circuit.net("feed-b", "b"));
        assertEquals(0, circuit.net("battery", "structure"));
    }

    @Test
    void aNetKeepsItsNumberInEveryFailedCircuit() {
        Candidate candidate = candidate();
        Circuit intact = candidate.circuit();
        for (Failure failure : FailureCatalogue.singlesOf(candidate)) {
            Circuit failed = candidate.circuit(failure.hits());
            intact.netOf()
                    .forEach(
                            (terminal, net) ->
                                    assertEquals(
                                            net, failed.netOf().get(terminal), failure.name()));
        }
    }

    @Test
    void aFailureLeavesEveryOtherPartAlone() {
        Candidate candidate = candidate();
        Circuit intact = candidate.circuit();
        for (Failure failure : FailureCatalogue.singlesOf(candidate)) {
            String part = failure.hits().get(0).part();
            assertEquals(
                    others(intact, part),
                    others(candidate.circuit(failure.hits()), part),
                    failure.name());
        }
    }

    @Test
    void aFailureInjectedTwiceGivesTheSameCircuit() {
        Candidate candidate = candidate();
        for (Failure failure : FailureCatalogue.singlesOf(candidate)) {
            Hit hit = failure.hits().get(0);
            assertEquals(
                    candidate.circuit(List.of(hit)),
                    candidate.circuit(List.of(hit, hit)),
                    failure.name());
        }
    }

    @Test
    void aHitOnAPartThatIsNotThereIsRefusedByName() {
        Candidate candidate = candidate();
        Hit hit = new Hit("radio", candidate.parts().get(0).failureModes().get(0));
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> candidate.circuit(List.of(hit)));
        assertTrue(String.valueOf(refusal.getMessage()).contains("radio"));
    }

    @Test
    void everyFailureOfEveryPartIsInTheCatalogueOnceUnderItsOwnName() {
        Candidate candidate = candidate();
        List<Failure> failures = FailureCatalogue.singlesOf(candidate);
        int modes = candidate.parts().stream().mapToInt(p -> p.failureModes().size()).sum();
        Set<String> names = new HashSet<>();
        failures.forEach(f -> names.add(f.name()));
        assertEquals(modes, failures.size());
        assertEquals(modes, names.size());
        assertTrue(FailureCatalogue.operatingCasesOf(candidate).isEmpty());
    }

    private static List<Placed> others(Circuit circuit, String part) {
        return circuit.placed().stream().filter(p -> !p.part().equals(part)).toList();
    }
}
