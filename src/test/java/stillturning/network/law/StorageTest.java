package stillturning.network.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.network.Branch;
import stillturning.network.Network;
import stillturning.network.NoOperatingPoint;
import stillturning.network.OperatingPoint;
import stillturning.network.OperatingPoints;

/** A battery's law: arithmetic by hand, common practice, no published source. */
class StorageTest {

    private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

    @Test
    void givesCurrentThroughItsResistance() throws NoOperatingPoint {
        OperatingPoint point =
                OperatingPoints.of(
                        new Network(
                                2,
                                List.of(
                                        new Branch(
                                                1, 0, new Storage(12, 0.5, accepting(1), NO_LIMIT)),
                                        new Branch(1, 0, new Resistive(5.5)))));
        assertEquals(-2, point.amps(0), 1e-9);
        assertEquals(11, point.volts(1), 1e-9);
    }

    @Test
    void upToWhatItAcceptsOnlyItsResistanceCounts() throws NoOperatingPoint {
        OperatingPoint point = charging(new Storage(12, 0.1, accepting(50), NO_LIMIT));
        assertEquals(2 / 0.2, point.amps(0), 1e-6);
    }

    @Test
    void beyondThatItsHigherResistanceCountsForTheRest() throws NoOperatingPoint {
        // 14 V - 0.1 ohm I = 12 V + 0.1 ohm 2 A + 0.7 ohm (I - 2 A)
        OperatingPoint point = charging(new Storage(12, 0.1, accepting(2), NO_LIMIT));
        assertEquals((14 - 12 - 0.2 + 1.4) / 0.8, point.amps(0), 1e-6);
    }

    @Test
    void aboveItsGassingVoltageTheGasTakesACurrentOfItsOwn() throws NoOperatingPoint {
        Storage.Intake gassing = new Storage.Intake(2, 0.7, GasPath.straight(13, 0.1));
        Storage battery = new Storage(12, 0.1, gassing, NO_LIMIT);
        OperatingPoint point = charging(battery);
        double volts = point.volts(1);
        assertEquals(2 + (volts - 12.2) / 0.7 + (volts - 13) / 0.1, point.amps(0), 1e-6);
        assertEquals((volts - 13) / 0.1, battery.gassingAmps(volts), 1e-6);
    }

    @Test
    void aBatteryThatMayNotBeChargedTakesInNothing() throws NoOperatingPoint {
        OperatingPoint point = charging(new Storage(12, 0.1, Storage.Intake.NONE, NO_LIMIT));
        assertEquals(0, point.amps(0), 1e-6);
        assertEquals(14, point.volts(1), 1e-6);
    }

    @Test
    void emptyItGivesNothingButIsChargedAgain() throws NoOperatingPoint {
        Storage empty = new Storage(10.5, 0.1, accepting(20), 0);
        assertEquals((14 - 10.5) / 0.2, charging(empty).amps(0), 1e-6);
        assertTrue(Math.abs(empty.ampsAt(8)) < 1e-6);
        assertEquals(0, empty.emfVolts());
    }

    @Test
    void slopesAreTheDerivativeOfTheCurrent() {
        Storage battery =
                new Storage(12, 0.1, new Storage.Intake(2, 0.7, GasPath.straight(13, 0.4)), 30);
        double last = Double.NEGATIVE_INFINITY;
        for (double volts : new double[] {5, 8.5, 9.5, 11.9, 12.1, 12.19, 12.3, 12.9, 13.1, 20}) {
            double amps = battery.ampsAt(volts);
            double slope = (battery.ampsAt(volts + 1e-6) - battery.ampsAt(volts - 1e-6)) / 2e-6;
            assertEquals(slope, battery.siemensAt(volts, amps), 1e-6);
            assertTrue(amps > last, "monotone");
            last = amps;
        }
        assertEquals(9, battery.flatBelowVolts(), 1e-12);
        assertEquals(12.2, battery.flatAboveVolts(), 1e-12);
    }

    @Test
    void refusesNonsense() {
        Storage.Intake intake = accepting(1);
        assertThrows(IllegalArgumentException.class, () -> new Storage(12, 0, intake, 1));
        assertThrows(IllegalArgumentException.class, () -> accepting(-1));
        assertThrows(IllegalArgumentException.class, () -> new Storage.Intake(1, 0, GasPath.NEVER));
        assertThrows(IllegalArgumentException.class, () -> GasPath.straight(Double.NaN, 1));
        assertThrows(
                IllegalArgumentException.class, () -> new Storage(12, 0.1, intake, Double.NaN));
        assertFalse(new Storage(12, 0.1, intake, 1).linear());
    }

    /** Beyond this current 0.7 ohm count, and it never gasses. */
    private static Storage.Intake accepting(double amps) {
        return new Storage.Intake(amps, 0.7, GasPath.NEVER);
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
