package stillturning.parts.element.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WireHeatingTest {

    private static WireHeating solid(double circularMils) {
        return new WireHeating(circularMils, 1);
    }

    /**
     * Onderdonk from 25 °C, solid copper AWG 8 to 0 and 0000: open engineering-tables page on AWG,
     * read; printed to two or three digits, worst 2.2 % off the formula.
     */
    @ParameterizedTest
    @CsvSource({
        "16509, 2400, 13500",
        "26250, 3800, 21000",
        "41742, 6100, 34000",
        "66373, 9700, 54000",
        "83694, 12000, 68000",
        "105530, 15500, 87000",
        "211600, 31000, 173000"
    })
    void copperMeltsInASecondAndIn32MillisecondsAtThePublishedCurrents(
            double circularMils, double oneSecondAmps, double shortAmps) {
        double energy = solid(circularMils).meltingEnergy(25);
        assertEquals(oneSecondAmps, Math.sqrt(energy), 0.022 * oneSecondAmps);
        assertEquals(shortAmps, Math.sqrt(energy / 0.032), 0.023 * shortAmps);
    }

    /** Preece for the same sizes, same page, read; printed rounded, worst 3 % at AWG 2. */
    @ParameterizedTest
    @CsvSource({
        "16509, 472, 0.001",
        "26250, 668, 0.001",
        "41742, 946, 0.001",
        "66373, 1300, 0.031",
        "83694, 1600, 0.005",
        "105530, 1900, 0.003"
    })
    void copperInAirJustMeltsAtThePublishedCurrents(
            double circularMils, double amps, double relative) {
        assertEquals(amps, solid(circularMils).meltingAmps(), relative * amps);
    }

    /** Preece's table of a pulsed-power data page, read: diameter in inches, current. */
    @ParameterizedTest
    @CsvSource({
        "0.0098, 10",
        "0.0156, 20",
        "0.0205, 30",
        "0.0288, 50",
        "0.0457, 100",
        "0.0725, 200",
        "0.0950, 300"
    })
    void thinWiresMeltAtPreecesCurrents(double inches, double amps) {
        assertEquals(amps, solid(inches * inches * 1e6).meltingAmps(), 0.007 * amps);
    }

    /**
     * Onderdonk, computed here for AWG 16 and 14 from 25 °C: 168.9 A for 5 s, and 400 A for 2.26 s;
     * a public worked example has a sign wrong and other figures.
     */
    @Test
    void onderdonkWithTheRightSign() {
        assertEquals(168.9, Math.sqrt(solid(2581).meltingEnergy(25) / 5), 0.1);
        assertEquals(2.26, solid(4106.8).meltingEnergy(25) / (400 * 400), 0.01);
    }

    /**
     * ICEA form (read in a second source): AWG 20 from 70 to 150 °C stands 66.8 A for a second
     * (computed here).
     */
    @Test
    void insulationStandsTheEnergyOfTheCableFormula() {
        assertEquals(66.8, Math.sqrt(solid(1216).insulationEnergy(70)), 0.05);
    }

    /** FAA AC 43.13-1B change 1, table 11-9, read: AWG 16, 150 °C wire, 11 A at 70 °C. */
    @Test
    void atTheTablesTemperatureInsulationStandsTheTablesCurrent() {
        WireHeating wire = new WireHeating(2426, 11);
        assertEquals(11, wire.insulationAmps(70), 1e-12);
        assertTrue(wire.insulationAmps(25) > 11 && wire.insulationAmps(110) < 11);
    }

    /** Far above Preece's current the joined form is Onderdonk's, at and below it never melts. */
    @Test
    void theTwoLawsAreTheEndsOfOne() {
        WireHeating wire = new WireHeating(2426, 11);
        double amps = 100 * wire.meltingAmps();
        double alone = wire.meltingEnergy(25) / (amps * amps);
        assertEquals(alone, wire.secondsToMelt(amps, 25), 1e-4 * alone);
        assertEquals(Double.POSITIVE_INFINITY, wire.secondsToMelt(wire.meltingAmps(), 25));
        assertTrue(Double.isFinite(wire.secondsToMelt(1.001 * wire.meltingAmps(), 25)));
    }

    @Test
    void aPlaceHotterThanTheInsulationLeavesAlmostNothing() {
        WireHeating wire = new WireHeating(2426, 11);
        assertTrue(wire.insulationAmps(200) > 0 && wire.insulationAmps(200) < 2);
        assertTrue(wire.insulationEnergy(200) > 0);
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new WireHeating(0, 1));
        assertThrows(IllegalArgumentException.class, () -> new WireHeating(1, 0));
    }
}
