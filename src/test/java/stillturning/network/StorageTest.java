package stillturning.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A battery's law: arithmetic by hand, common practice, no published source. */
class StorageTest {

    @Test
    void givesCurrentThroughItsResistance() throws NoOperatingPoint {
        OperatingPoint point =
                OperatingPoints.of(
                        new Network(
                                2,
                                List.of(
                                        new Branch(
                                                1,
                                                0,
                                                new Storage(12, 0.5, 1, Double.POSITIVE_INFINITY)),
                                        new Branch(1, 0, new Resistive(5.5)))));
        assertEquals(-2, point.amps(0), 1e-9);
        assertEquals(11, point.volts(1), 1e-9);
    }

    @Test
    void takesInNoMoreThanItAccepts() throws NoOperatingPoint {
        OperatingPoint point = charging(new Storage(12, 0.1, 2, Double.POSITIVE_INFINITY));
        assertEquals(2, point.amps(0), 1e-6);
        assertEquals(14 - 2 * 0.1, point.volts(1), 1e-6);
    }

    @Test
    void belowItsLimitTakesInWhatItsResistanceLetsIn() throws NoOperatingPoint {
        OperatingPoint point = charging(new Storage(12, 0.1, 50, Double.POSITIVE_INFINITY));
        assertEquals(2 / 0.2, point.amps(0), 1e-6);
    }

    @Test
    void emptyItGivesNothingButIsChargedAgain() throws NoOperatingPoint {
        Storage empty = new Storage(10.5, 0.1, 2, 0);
        assertEquals(2, charging(empty).amps(0), 1e-6);
        assertTrue(Math.abs(empty.ampsAt(8)) < 1e-6);
        assertEquals(0, empty.emfVolts());
    }

    @Test
    void slopesAreTheDerivativeOfTheCurrent() {
        Storage battery = new Storage(12, 0.1, 2, 30);
        for (double volts : new double[] {5, 8.5, 9.5, 11.9, 12.1, 12.19, 12.3, 14}) {
            double slope = (battery.ampsAt(volts + 1e-6) - battery.ampsAt(volts - 1e-6)) / 2e-6;
            assertEquals(slope, battery.siemensAt(volts, battery.ampsAt(volts)), 1e-6);
        }
        assertEquals(9, battery.flatBelowVolts(), 1e-12);
        assertEquals(12.2, battery.flatAboveVolts(), 1e-12);
    }

    @Test
    void refusesNonsense() {
        assertThrows(IllegalArgumentException.class, () -> new Storage(12, 0, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Storage(12, 0.1, -1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Storage(12, 0.1, 1, Double.NaN));
        assertFalse(new Storage(12, 0.1, 1, 1).linear());
    }

    private static OperatingPoint charging(Storage battery) throws NoOperatingPoint {
        return OperatingPoints.of(
                new Network(
                        3,
                        List.of(
                                new Branch(1, 0, battery),
                                new Branch(2, 0, new SourceBehindOhms(14, 1e-9)),
                                new Branch(2, 1, new Resistive(0.1)))));
    }
}
