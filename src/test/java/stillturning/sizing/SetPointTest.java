package stillturning.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Installation;
import stillturning.parts.element.Demand;
import stillturning.parts.joining.Diode;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.story.UntoldStory;

/** What an alternator holds, against what hangs on it. */
class SetPointTest {

    private static final double RATING_AMPS = 20;

    /** An alternator on a bus with what the engine needs. */
    private static Bench held(double setVolts, double loadAmps) {
        return new Bench()
                .bus("bus")
                .part(Shelf.alternator("alternator", setVolts, RATING_AMPS, false))
                .join("alternator", "case", "ground", "stud")
                .join("alternator", "output", "bus", "bar")
                .join("alternator", "field", "bus", "bar")
                .load("engine-needs", Demand.DemandKind.CONSTANT_CURRENT, loadAmps, Bench.HARDY)
                .join("engine-needs", "plus", "bus", "bar");
    }

    private static Bench lead(double setVolts) {
        return held(setVolts, 5)
                .battery("battery", 20, 0.01, 1)
                .join("battery", "plus", "bus", "bar");
    }

    private static Bench lithium(double setVolts) {
        return held(setVolts, 5)
                .part(Shelf.lithium("battery", 10, 1, Shelf.LENIENT))
                .join("battery", "plus", "bus", "bar")
                .join("battery", "minus", "ground", "stud");
    }

    private static List<SizeFinding> of(Bench bench, Rule rule) throws UntoldStory {
        return Sizing.of(bench.study(), bench.candidate(), Installation.USUAL).findings().stream()
                .filter(f -> f.rule() == rule)
                .toList();
    }

    // the sheet of a valve-regulated battery of 12 V and 40 Ah, read: 14.7 to 15.0 V in cycles
    @ParameterizedTest
    @CsvSource({"14.4, 0", "15.0, 0", "15.1, 1", "15.6, 1"})
    void aLeadBatteryIsHeldAtNoMoreThanItsSheetChargesItWith(double setVolts, int told)
            throws UntoldStory {
        List<SizeFinding> found = of(lead(setVolts), Rule.OVERCHARGED);
        assertEquals(told, found.size());
        for (SizeFinding one : found) {
            assertEquals("battery", one.part());
            assertEquals(setVolts, one.found(), 1e-12);
            assertEquals(15, one.allowed(), 1e-12);
        }
    }

    // sheets of lithium iron phosphate, read: 3.65 V a cell, four of them in series
    @ParameterizedTest
    @CsvSource({"14.6, 0", "14.7, 1"})
    void aLithiumBatteryBearsLess(double setVolts, int told) throws UntoldStory {
        assertEquals(told, of(lithium(setVolts), Rule.OVERCHARGED).size());
    }

    /** What a diode lets through is less by what it drops. */
    @Test
    void aBatteryBehindADiodeIsNotHeldAtTheSetPoint() throws UntoldStory {
        Bench bench =
                held(15.3, 5)
                        .battery("battery", 20, 0.01, 1)
                        .part(new Diode(Bench.tag("diode"), 1e-5, 0.0275, 0.002))
                        .join("diode", "in", "bus", "bar")
                        .join("diode", "out", "battery", "plus");
        assertEquals(List.of(), of(bench, Rule.OVERCHARGED));
    }

    /** 16 V are common practice for 14 V; at the set point itself there is no room at all. */
    @ParameterizedTest
    @CsvSource({"16, 0", "14.5, 0", "14.4, 1", "14.0, 1"})
    void aGuardActsAboveWhatIsHeldAnyway(double tripVolts, int told) throws UntoldStory {
        Bench bench =
                lead(14.4)
                        .part(Shelf.guard("guard", tripVolts, 0.1))
                        .join("guard", "in", "bus", "bar")
                        .join("guard", "minus", "ground", "stud");
        List<SizeFinding> found = of(bench, Rule.GUARD_LOW);
        assertEquals(told, found.size());
        for (SizeFinding one : found) {
            assertEquals(tripVolts, one.found(), 1e-12);
            assertEquals(14.4, one.allowed(), 1e-12);
        }
    }

    // AC 43.13-1B section 11-36, read: continuous loads take no more than 80 % of the alternator
    @ParameterizedTest
    @CsvSource({"12, 0", "16.1, 1"})
    void continuousLoadsLeaveTheAlternatorSomeRoom(double loadAmps, int told) throws UntoldStory {
        Bench bench =
                held(14.2, loadAmps)
                        .battery("battery", 20, 0.01, 1)
                        .join("battery", "plus", "bus", "bar");
        List<SizeFinding> found = of(bench, Rule.ALTERNATOR_SHARE);
        assertEquals(told, found.size());
        for (SizeFinding one : found) {
            assertEquals(0.8 * RATING_AMPS, one.allowed(), 1e-9);
        }
    }
}
