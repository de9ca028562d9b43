package stillturning.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.model.Installation.Nature;
import stillturning.model.wiring.MainLines;
import stillturning.model.wiring.PublishedLimits;
import stillturning.parts.Cable;
import stillturning.parts.element.Capacity;
import stillturning.parts.protection.ProtectorCurves;
import stillturning.sizing.Subject.Rated;
import stillturning.sizing.result.ProtectorSize.ProtectorKind;

class LimitsTest {

    // FAA AC 43.13-1B, table 11-4 (p. 11-17), read
    @ParameterizedTest
    @CsvSource({"LAMP, 8, 5", "INDUCTIVE, 4, 2", "RESISTIVE, 2, 1", "MOTOR, 3, 2"})
    void contactsAreDeratedByWhatTheySwitch(Nature nature, double at28, double at12) {
        assertEquals(at28, PublishedLimits.contactFactor(nature, 28));
        assertEquals(at12, PublishedLimits.contactFactor(nature, 12));
        assertEquals(
                at12, PublishedLimits.contactFactor(nature, 14), "the table has no 14 V column");
    }

    // the same table, worked: 5 A motor at 12 V 10 A, 1 A lamp at 28 V 8 A, 3 A heater at 12 V 3 A
    // (computed)
    @Test
    void theWorkedRatingsComeOut() {
        assertEquals(10, 5 * PublishedLimits.contactFactor(Nature.MOTOR, 12));
        assertEquals(8, 1 * PublishedLimits.contactFactor(Nature.LAMP, 28));
        assertEquals(3, 3 * PublishedLimits.contactFactor(Nature.RESISTIVE, 12));
    }

    // FAA AC 43.13-1B, table 11-3 (p. 11-15), read: gauge, breaker, fuse
    @ParameterizedTest
    @CsvSource({
        "22, 5, 5",
        "20, 7.5, 5",
        "18, 10, 10",
        "16, 15, 10",
        "14, 20, 15",
        "12, 30, 20",
        "10, 40, 30",
        "8, 50, 50",
        "6, 80, 70",
        "4, 100, 70",
        "2, 125, 100"
    })
    void protectorsAreHeldAgainstTheChart(String awg, double breaker, double fuse) {
        Cable cable = Cable.awg(awg).orElseThrow();
        assertEquals(breaker, rated(ProtectorKind.BREAKER).largestFor(cable).orElseThrow());
        assertEquals(breaker, rated(ProtectorKind.CHANNEL).largestFor(cable).orElseThrow());
        assertEquals(fuse, rated(ProtectorKind.FUSE).largestFor(cable).orElseThrow());
    }

    private static Rated rated(ProtectorKind kind) {
        return new Rated("x", kind, 5, ProtectorCurves.FAST_BREAKER);
    }

    // federal item record NSN 5925-00-226-0377, read: 5 A breaker, 400 % 0.10 s, 200 % 0.38 s at
    // the fast edge; so for a tenth of a second it lets through 20 A, for 0.38 s 10 A
    @Test
    void inrushIsHeldAgainstTheFastEdgeOfTheCurve() {
        assertEquals(20, rated(ProtectorKind.BREAKER).letsThroughAmps(0.0999), 0.02);
        assertEquals(10, rated(ProtectorKind.BREAKER).letsThroughAmps(0.3799), 0.01);
    }

    // Peukert's law in the rated-hour form (from memory): 100 Ah at 20 h and exponent 1.2 give 5 A
    // for 20 h, and 5 (240)^(1/1.2) A for five minutes (computed here)
    @Test
    void theFiveMinuteRateEmptiesTheBatteryInFiveMinutes() {
        Capacity capacity = new Capacity(360_000, 20, 1.2);
        double amps = MainLines.fiveMinuteAmps(capacity);
        assertEquals(5 * Math.pow(240, 1 / 1.2), amps, 1e-9);
        assertEquals(1 / 300.0, capacity.usedPerSecond(amps), 1e-11);
    }
}
