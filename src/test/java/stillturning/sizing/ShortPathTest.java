package stillturning.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.parts.element.Demand;
import stillturning.story.SteadyState;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.SteadyStates;

/** A short takes its current from the sources and gives it back; loads beside it do neither. */
class ShortPathTest {

    private static final Bench BENCH =
            new Bench()
                    .battery("battery", 20, 0.01, 1)
                    .battery("second", 10, 0.02, 1)
                    .bus("bus", "feed")
                    .wire("lead", 1, 0.002)
                    .wire("tie", 1, 0.004)
                    .wire("lamp-wire", 2, 0.02)
                    .wire("stub", 1, 0.005)
                    .load("engine-needs", Demand.DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                    .load("lamp", Demand.DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                    .join("battery", "plus", "lead", "a")
                    .join("lead", "b", "bus", "feed")
                    .join("second", "plus", "tie", "a")
                    .join("tie", "b", "bus", "feed")
                    .join("bus", "bar", "lamp-wire", "a")
                    .join("lamp-wire", "b", "lamp", "plus")
                    .join("bus", "bar", "stub", "a")
                    .join("stub", "b", "engine-needs", "plus");

    private static Set<String> onTheWay(String name) throws UntoldStory {
        Failure failure =
                FailureCatalogue.singlesOf(BENCH.candidate()).stream()
                        .filter(f -> f.name().equals(name))
                        .findFirst()
                        .orElseThrow();
        SteadyState at =
                new SteadyStates(
                                BENCH.study(),
                                BENCH.candidate(),
                                BENCH.study().goals().failurePhase())
                        .instant(failure);
        Set<String> intact =
                BENCH.candidate().circuit().placed().stream()
                        .map(p -> p.name())
                        .collect(Collectors.toSet());
        Set<String> shorting =
                BENCH.candidate().circuit(failure.hits()).placed().stream()
                        .map(p -> p.name())
                        .filter(
                                n ->
                                        !intact.contains(n)
                                                && Math.abs(at.amps().getOrDefault(n, 0.0)) > 100)
                        .filter(n -> !n.endsWith("end"))
                        .collect(Collectors.toSet());
        assertEquals(1, shorting.size(), shorting.toString());
        return ShortPath.of(BENCH.candidate().circuit(failure.hits()), at, shorting);
    }

    @Test
    void aShortOfTheBusFlowsThroughBothLeadsAndThroughNoLoad() throws UntoldStory {
        Set<String> way = onTheWay("bus: short to ground");
        assertTrue(way.contains("lead/wire") && way.contains("tie/wire"), way.toString());
        assertFalse(way.contains("lamp-wire/wire"), way.toString());
        assertFalse(way.stream().anyMatch(n -> n.startsWith("lamp/")), way.toString());
        assertFalse(way.contains("stub/wire"), way.toString());
    }
}
