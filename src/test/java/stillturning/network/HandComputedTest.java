package stillturning.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stillturning.network.Laws.branch;
import static stillturning.network.Laws.network;
import static stillturning.network.Laws.solved;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.ChargeOnly;
import stillturning.network.law.ConstantCurrent;
import stillturning.network.law.ConstantPower;
import stillturning.network.law.ConverterInput;
import stillturning.network.law.DiodeDrop;
import stillturning.network.law.LimitedConductor;
import stillturning.network.law.LimitedSource;
import stillturning.network.law.Open;
import stillturning.network.law.Resistive;
import stillturning.network.law.SourceBehindOhms;

/** Circuits whose answer a pencil finds. Unless a source is named, the value is computed here. */
class HandComputedTest {
    private static final double TIGHT = 1e-9;

    @Test
    void twoEqualResistancesInSeriesHalveTheVoltage() throws NoOperatingPoint {
        OperatingPoint point =
                solved(
                        network(
                                3,
                                branch(1, 0, new SourceBehindOhms(12.0, 1e-6)),
                                branch(1, 2, new Resistive(5.0)),
                                branch(2, 0, new Resistive(5.0))));
        assertEquals(6.0 / (1.0 + 1e-7), point.volts(2), TIGHT);
        assertEquals(12.0 / (10.0 + 1e-6), point.amps(1), TIGHT);
        assertEquals(-point.amps(1), point.amps(0), TIGHT);
    }

    /** Thevenin seen from the bridge resistance. */
    @Test
    void anUnbalancedBridgeCarriesTheCurrentOfItsDeterminant() throws NoOperatingPoint {
        OperatingPoint point =
                solved(
                        network(
                                4,
                                branch(1, 0, new SourceBehindOhms(12.0, 1e-9)),
                                branch(1, 2, new Resistive(1.0)),
                                branch(1, 3, new Resistive(4.0)),
                                branch(2, 0, new Resistive(2.0)),
                                branch(3, 0, new Resistive(3.0)),
                                branch(2, 3, new Resistive(5.0))));
        // open-circuit difference 12 (2/3 - 3/7) = 20/7 V; resistance seen 2/3 + 12/7 = 50/21 ohm
        double bridge = 20.0 / 7.0 / (50.0 / 21.0 + 5.0);
        assertEquals(bridge, point.amps(5), 1e-7);
        assertEquals(12.0, point.volts(1), 1e-7);
    }

    @Test
    void aBalancedBridgeCarriesNothingAcross() throws NoOperatingPoint {
        OperatingPoint point =
                solved(
                        network(
                                4,
                                branch(1, 0, new SourceBehindOhms(12.0, 0.01)),
                                branch(1, 2, new Resistive(1.0)),
                                branch(1, 3, new Resistive(2.0)),
                                branch(2, 0, new Resistive(3.0)),
                                branch(3, 0, new Resistive(6.0)),
                                branch(2, 3, new Resistive(5.0))));
        assertEquals(0.0, point.amps(5), TIGHT);
    }

    @Test
    void twoBatteriesInParallelShareByTheirResistances() throws NoOperatingPoint {
        OperatingPoint point =
                solved(
                        network(
                                2,
                                branch(1, 0, new SourceBehindOhms(12.8, 0.012)),
                                branch(1, 0, new SourceBehindOhms(12.2, 0.020)),
                                branch(1, 0, new Resistive(1.0))));
        // Millman: V = (12.8/0.012 + 12.2/0.020) / (1/0.012 + 1/0.020 + 1)
        double volts = (12.8 / 0.012 + 12.2 / 0.020) / (1 / 0.012 + 1 / 0.020 + 1.0);
        assertEquals(volts, point.volts(1), TIGHT);
        assertEquals((volts - 12.2) / 0.020, point.amps(1), 1e-7);
        assertTrue(point.amps(1) > 0.0, "the weaker battery is charged");
    }

    /**
     * Voltage drop of a run: AC 43.13-1B tables 11-7 and 11-8, p. 11-22, all at 20 A. Resistances
     * and lengths "read"; drops are the exact products, "calc" from read inputs (three rows of the
     * tables are printed rounded, one is a misprint: 0.366 for 0.4914).
     */
    @ParameterizedTest
    @CsvSource({
        "107, 0.00044, 0.9416",
        "90, 0.00028, 0.5040",
        "88, 0.00202, 3.5552",
        "100, 0.00306, 6.1200",
        "39, 0.00126, 0.9828",
        "19.5, 0.00126, 0.4914",
        "156, 0.00126, 3.9312",
        "273, 0.00126, 6.8796"
    })
    void aRunOfWireDropsItsLengthTimesResistance(double feet, double ohmsPerFoot, double drop)
            throws NoOperatingPoint {
        OperatingPoint point =
                solved(
                        network(
                                3,
                                branch(1, 0, new SourceBehindOhms(28.0, 0.001)),
                                branch(1, 2, new Resistive(feet * ohmsPerFoot)),
                                branch(2, 0, new ConstantCurrent(20.0, 1.0))));
        assertEquals(drop, point.volts(1) - point.volts(2), 1e-9);
    }

    /**
     * 12.8 V behind 12 mohm, diode (Is 1e-9 A, n kT/q of 25.864926 mV, no resistance to speak of),
     * 5 ohm: "computed here" by bisection on the one unknown current.
     */
    @Test
    void aDiodeInSeriesMeetsItsExponential() throws NoOperatingPoint {
        double saturation = 1e-9;
        double emission = 0.025864926;
        double ohms = 0.012 + 0.003 + 5.0;
        OperatingPoint point =
                solved(
                        network(
                                3,
                                branch(1, 0, new SourceBehindOhms(12.8, 0.012)),
                                branch(1, 2, new DiodeDrop(saturation, emission, 0.003)),
                                branch(2, 0, new Resistive(5.0))));
        double low = 0.0;
        double high = 12.8 / ohms;
        for (int n = 0; n < 200; n++) {
            double amps = 0.5 * (low + high);
            double left = 12.8 - amps * ohms - emission * Math.log1p(amps / saturation);
            low = left > 0.0 ? amps : low;
            high = left > 0.0 ? high : amps;
        }
        // the stated leak of 1 µS across the diode carries under 1 µA here
        assertEquals(low, point.amps(1), 1e-6);
    }

    /**
     * Thermal voltage 25.852 mV at 300 K and 59.53 mV a decade ("calc" from the exact SI constants,
     * themselves "memory, unverified").
     */
    @Test
    void tenTimesTheDiodeCurrentCostsSixtyMillivolts() {
        DiodeDrop diode = new DiodeDrop(1e-12, 1.380649e-23 * 300.0 / 1.602176634e-19, 1e-9);
        double tenth = voltsFor(diode, 0.1);
        double one = voltsFor(diode, 1.0);
        assertEquals(0.025852, diode.emissionVolts(), 5e-7);
        assertEquals(0.05953, one - tenth, 5e-6);
    }

    /**
     * Schottky of the 3 A, 40 V class: 0.525 V at 3.0 A and 0.950 V at 9.4 A at most, 66 mohm
     * between (two data sheets alike, "read"; the slope "calc").
     */
    @Test
    void aSchottkyFittedToItsDataSheetPassesBothPoints() {
        double emission = 1.05 * 0.025693;
        double ohms = (0.425 - emission * Math.log(9.4 / 3.0)) / 6.4;
        double saturation = 3.0 / Math.expm1((0.525 - 3.0 * ohms) / emission);
        DiodeDrop diode = new DiodeDrop(saturation, emission, ohms);
        assertEquals(0.525, voltsFor(diode, 3.0), 1e-4);
        assertEquals(0.950, voltsFor(diode, 9.4), 1e-4);
        double reverseAmps = -diode.ampsAt(-40.0);
        assertTrue(reverseAmps < 2e-3, "data sheet: at most 2 mA at 40 V, 25 °C");
    }

    private static double voltsFor(BranchLaw law, double amps) {
        double low = -1.0;
        double high = 5.0;
        for (int n = 0; n < 100; n++) {
            double volts = 0.5 * (low + high);
            low = law.ampsAt(volts) < amps ? volts : low;
            high = law.ampsAt(volts) < amps ? high : volts;
        }
        return low;
    }

    /** V = (E + sqrt(E² - 4 P R)) / 2, the higher of the two. */
    @ParameterizedTest
    @CsvSource({
        "12.8, 0.05, 60, 6",
        "12.8, 0.5, 60, 2",
        "28, 1.0, 150, 3",
        "12.8, 0.6826, 60, 1",
        "14.2, 0.001, 5, 9"
    })
    void aConstantPowerLoadSitsOnItsHigherVoltage(
            double emf, double ohms, double watts, double floor) throws NoOperatingPoint {
        OperatingPoint point =
                solved(
                        network(
                                3,
                                branch(1, 0, new SourceBehindOhms(emf, ohms / 2)),
                                branch(1, 2, new Resistive(ohms / 2)),
                                branch(2, 0, new ConstantPower(watts, floor))));
        double volts = 0.5 * (emf + Math.sqrt(emf * emf - 4.0 * watts * ohms));
        assertEquals(volts, point.volts(2), 1e-8);
    }

    /**
     * The lower root, 2.56 V here, balances but does not last: the smallest disturbance leaves it.
     */
    @Test
    void aStartOnTheUnstablePointDoesNotStayThere() throws NoOperatingPoint {
        int[] from = {1, 1};
        int[] to = {0, 0};
        BranchLaw[] laws = {new SourceBehindOhms(12.8, 0.4), new ConstantPower(65.536, 1.0)};
        NodalSolver solver = new NodalSolver(Topology.of(2, from, to), from, to, laws);
        double spread = Math.sqrt(12.8 * 12.8 - 4.0 * 65.536 * 0.4);
        solver.start(new double[] {0.0, 0.5 * (12.8 - spread)});
        solver.solve();
        assertEquals(0.5 * (12.8 + spread), solver.volts(1), 1e-9);
    }

    @Test
    void aDemandBeyondTheSourceSettlesOnTheResistanceBelowTheFloor() throws NoOperatingPoint {
        // the most 12.8 V behind 1 ohm can give is 41 W
        OperatingPoint point =
                solved(
                        network(
                                2,
                                branch(1, 0, new SourceBehindOhms(12.8, 1.0)),
                                branch(1, 0, new ConstantPower(60.0, 8.0))));
        double ohms = 8.0 * 8.0 / 60.0;
        assertEquals(12.8 * ohms / (1.0 + ohms), point.volts(1), 1e-9);
    }

    @Test
    void aBadGroundLiftsTheLoadAndItsNeighbour() throws NoOperatingPoint {
        OperatingPoint point =
                solved(
                        network(
                                3,
                                branch(1, 0, new SourceBehindOhms(12.0, 1e-6)),
                                branch(1, 2, new Resistive(2.0)),
                                branch(1, 2, new Resistive(4.0)),
                                branch(2, 0, new Resistive(0.5))));
        double parallel = 8.0 / 6.0;
        double lift = 12.0 * 0.5 / (parallel + 0.5 + 1e-6);
        assertEquals(lift, point.volts(2), TIGHT);
        assertEquals((point.volts(1) - lift) / 4.0, point.amps(2), TIGHT);
    }

    @Test
    void aLimitedSourceRegulatesWithDroopBelowItsLimit() throws NoOperatingPoint {
        OperatingPoint point =
                solved(
                        network(
                                2,
                                branch(1, 0, new LimitedSource(14.2, 0.01, 45.0)),
                                branch(1, 0, new Resistive(1.0))));
        assertEquals(14.2 / 1.01, point.volts(1), TIGHT);
    }

    @Test
    void aLimitedSourceAtItsLimitLeavesTheRestToTheBattery() throws NoOperatingPoint {
        OperatingPoint point =
                solved(
                        network(
                                2,
                                branch(1, 0, new LimitedSource(14.2, 0.01, 20.0)),
                                branch(1, 0, new SourceBehindOhms(12.8, 0.02)),
                                branch(1, 0, new ConstantCurrent(30.0, 8.0))));
        assertEquals(-20.0, point.amps(0), 1e-6);
        assertEquals(-10.0, point.amps(1), 1e-6);
        assertEquals(12.6, point.volts(1), 1e-7);
    }

    @Test
    void aLimitedSourceBlocksReverseCurrent() throws NoOperatingPoint {
        OperatingPoint point =
                solved(
                        network(
                                2,
                                branch(1, 0, new LimitedSource(12.0, 0.01, 20.0)),
                                branch(1, 0, new SourceBehindOhms(14.0, 0.02))));
        assertEquals(0.0, point.amps(0), 1e-8);
        assertEquals(14.0, point.volts(1), TIGHT);
    }

    @Test
    void ofTwoLimitedSourcesTheHigherCarriesTheLoadAlone() throws NoOperatingPoint {
        OperatingPoint point =
                solved(
                        network(
                                2,
                                branch(1, 0, new LimitedSource(14.4, 0.0001, 45.0)),
                                branch(1, 0, new LimitedSource(13.8, 0.0001, 20.0)),
                                branch(1, 0, new ConstantPower(300.0, 8.0))));
        assertEquals(14.4, point.volts(1), 3e-3);
        assertEquals(0.0, point.amps(1), 1e-8);
    }

    @Test
    void anEmptyBatteryTakesChargeAndGivesNone() throws NoOperatingPoint {
        OperatingPoint charging =
                solved(
                        network(
                                2,
                                branch(1, 0, new LimitedSource(14.0, 0.01, 45.0)),
                                branch(1, 0, new ChargeOnly(11.0, 0.09))));
        assertEquals(30.0, charging.amps(1), TIGHT);
        OperatingPoint idle =
                solved(
                        network(
                                2,
                                branch(1, 0, new ChargeOnly(11.0, 0.09)),
                                branch(1, 0, new Resistive(1.0))));
        assertEquals(0.0, idle.amps(1), 2e-8);
    }

    @Test
    void aSolidStateChannelHoldsAShortToItsLimit() throws NoOperatingPoint {
        OperatingPoint point =
                solved(
                        network(
                                3,
                                branch(1, 0, new SourceBehindOhms(12.8, 0.01)),
                                branch(1, 2, new LimitedConductor(0.005, 25.0)),
                                branch(2, 0, new Resistive(0.002))));
        assertEquals(25.0, point.amps(1), 1e-6);
        assertEquals(0.05, point.volts(2), 1e-8);
        assertEquals(12.55, point.volts(1), 1e-8);
    }

    @Test
    void aConverterDrawsItsOutputPowerOverItsEfficiency() throws NoOperatingPoint {
        // output: 12 V behind 10 mohm into 2 ohm; input from 28 V behind 0.1 ohm
        OperatingPoint point =
                solved(
                        network(
                                3,
                                branch(1, 0, new SourceBehindOhms(28.0, 0.1)),
                                branch(1, 0, new ConverterInput(2, 0.9, 3.0, 18.0)),
                                branch(2, 0, new LimitedSource(12.0, 0.01, 15.0)),
                                branch(2, 0, new Resistive(2.0))));
        double out = 12.0 * 2.0 / 2.01;
        double watts = 3.0 + out * out / 2.0 / 0.9;
        assertEquals(out, point.volts(2), TIGHT);
        assertEquals(0.5 * (28.0 + Math.sqrt(784.0 - 0.4 * watts)), point.volts(1), 1e-7);
    }

    @Test
    void aFloatingIslandKeepsItsOwnCurrents() throws NoOperatingPoint {
        OperatingPoint point =
                solved(
                        network(
                                5,
                                branch(1, 0, new SourceBehindOhms(12.0, 0.1)),
                                branch(1, 2, Open.CIRCUIT),
                                branch(3, 2, new SourceBehindOhms(6.0, 1.0)),
                                branch(3, 2, new Resistive(2.0))));
        assertEquals(2.0, point.amps(3), TIGHT);
        assertEquals(0.0, point.volts(2), TIGHT);
        assertEquals(4.0, point.volts(3), TIGHT);
        assertTrue(point.floating(2) && point.floating(3) && point.floating(4));
        assertFalse(point.floating(1));
        assertEquals(0.0, point.volts(4));
    }
}
