package stillturning.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Installation;
import stillturning.parts.element.Demand;
import stillturning.parts.joining.Diode;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.story.UntoldStory;

/** Which batteries an alternator charges: current flows one way through diodes. */
class AlternatorReachTest {

    /**
     * An alternator, a battery and what the engine needs on one bus; a second battery with a pump
     * on it.
     */
    private static Bench twoBatteries() {
        return new Bench()
                .part(Shelf.alternator("alternator", 14.2, 45, false))
                .battery("battery", 20, 0.01, 1)
                .battery("second", 1, 0.04, 1)
                .bus("bus", "feed")
                .load("engine-needs", Demand.DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .load("pump", Demand.DemandKind.CONSTANT_CURRENT, 3, Bench.HARDY)
                .join("alternator", "case", "ground", "stud")
                .join("alternator", "output", "bus", "bar")
                .join("alternator", "field", "bus", "bar")
                .join("battery", "plus", "bus", "feed")
                .join("engine-needs", "plus", "bus", "bar")
                .join("pump", "plus", "second", "plus");
    }

    private static List<Rule> ofSources(Bench bench) throws UntoldStory {
        return Sizing.of(bench.study(), bench.candidate(), Installation.USUAL).findings().stream()
                .map(SizeFinding::rule)
                .filter(
                        rule ->
                                rule.name().startsWith("ALTERNATOR")
                                        || rule.name().startsWith("CHARGE")
                                        || rule == Rule.EMPTIED)
                .toList();
    }

    private static Bench diode(Bench bench, String from, String to) {
        return bench.part(new Diode(Bench.tag("diode"), 1e-5, 0.0275, 0.002))
                .join("diode", "in", from, from.equals("bus") ? "bar" : "plus")
                .join("diode", "out", to, to.equals("bus") ? "bar" : "plus");
    }

    /** A computer is relieved through its own diodes, and nothing else. */
    @Test
    void aLoadsOwnDiodesChargeNothing() throws UntoldStory {
        Bench bench =
                twoBatteries()
                        .load(Shelf.twoInputs("computer", Demand.DemandKind.CONSTANT_CURRENT, 1))
                        .join("computer", "a", "bus", "bar")
                        .join("computer", "b", "second", "plus");
        assertEquals(List.of(Rule.EMPTIED), ofSources(bench));
    }

    @Test
    void aDiodeTowardsABatteryCharges() throws UntoldStory {
        assertEquals(List.of(), ofSources(diode(twoBatteries(), "bus", "second")));
    }

    @Test
    void aDiodeTheOtherWayRoundDoesNot() throws UntoldStory {
        assertEquals(List.of(Rule.EMPTIED), ofSources(diode(twoBatteries(), "second", "bus")));
    }
}
