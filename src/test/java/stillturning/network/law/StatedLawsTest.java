package stillturning.network.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.network.law.Storage.Intake;

/** What each law says of itself, held against its own currents. */
class StatedLawsTest {

    private static final double LEAKS = 1e-6;

    /** A battery that neither takes nor gives. */
    private static final Storage IDLE = new Storage(12.6, 0.01, Intake.NONE, 0);

    static List<BranchLaw> laws() {
        return List.of(
                Open.CIRCUIT,
                new Resistive(0.4),
                new SourceBehindOhms(12, 0.02),
                new LimitedSource(14.2, 0.01, 40),
                new LimitedSource(14.2, 0.01, 0),
                new ChargeOnly(11, 0.05),
                new ConstantPower(60, 8),
                new ConstantPower(0, 8),
                new ConstantCurrent(5, 8),
                new ConstantCurrent(0, 8),
                new DiodeDrop(1e-5, 0.0275, 0.002),
                new LimitedConductor(0.01, 20),
                new Storage(12.6, 0.01, new Intake(20, 0.2, GasPath.straight(14, 0.5)), 300),
                IDLE);
    }

    static Stream<BranchLaw> bent() {
        return laws().stream().filter(law -> !law.linear() && !law.equals(IDLE));
    }

    /** Where no corner lies between, each slope is that of a short chord. */
    @ParameterizedTest
    @MethodSource("laws")
    void slopesAreThoseOfTheCurve(BranchLaw law) {
        double half = 1e-6;
        for (double volts = -3.0137; volts < 20; volts += 0.0931) {
            double before = law.siemensAt(volts - half, law.ampsAt(volts - half));
            double beside = law.siemensAt(volts + half, law.ampsAt(volts + half));
            double within = 1e-3 * Math.abs(before) + LEAKS;
            if (Math.abs(beside - before) < within) {
                double chord = (law.ampsAt(volts + half) - law.ampsAt(volts - half)) / (2 * half);
                double stated = law.siemensAt(volts, law.ampsAt(volts));
                assertEquals(chord, stated, within, law + " at " + volts + " V");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("laws")
    void whatConductsCarriesSomethingSomewhere(BranchLaw law) {
        boolean carries = false;
        for (double volts = -3; volts < 20; volts += 0.5) {
            carries |= law.ampsAt(volts) != 0;
        }
        assertEquals(carries, law.conducts(), law.toString());
    }

    /** Beyond what it names, a law is as good as flat; within, it is not. */
    @ParameterizedTest
    @MethodSource("bent")
    void flattensWhereItSays(BranchLaw law) {
        double below = law.flatBelowVolts();
        if (Double.isFinite(below) && law.conducts()) {
            assertEquals(law.ampsAt(below - 0.5), law.ampsAt(below - 1), 2 * LEAKS, law.toString());
            assertNotEquals(law.ampsAt(below), law.ampsAt(below + 0.5), 0.1, law.toString());
        }
        double above = law.flatAboveVolts();
        if (law instanceof LimitedConductor || law instanceof LimitedSource) {
            assertEquals(law.ampsAt(above + 0.5), law.ampsAt(above + 1), 2 * LEAKS, law.toString());
            if (law.conducts()) {
                assertNotEquals(law.ampsAt(above), law.ampsAt(above - 0.1), 0.1, law.toString());
            }
        }
    }

    /** A search that starts where a law is at work needs few steps. */
    @ParameterizedTest
    @ValueSource(doubles = {12, 13.8, 28})
    void searchesStartWhereTheLawIsAtWork(double emfVolts) {
        DiodeDrop diode = new DiodeDrop(1e-5, 0.0275, 0.002);
        assertEquals(1, diode.ampsAt(diode.likelyVolts(emfVolts)), 0.01);
        LimitedSource alternator = new LimitedSource(14.2, 0.01, 40);
        assertEquals(-20, alternator.ampsAt(alternator.likelyVolts(emfVolts)), 1e-9);
        assertEquals(emfVolts, new ConstantCurrent(5, 8).likelyVolts(emfVolts));
        assertEquals(emfVolts, new ConstantPower(60, 8).likelyVolts(emfVolts));
        assertEquals(Math.max(13, emfVolts), new ChargeOnly(13, 0.05).likelyVolts(emfVolts));
    }

    /** What a diode carries says where it is; what it blocks says nothing. */
    @Test
    void aDiodeIsSoughtByItsCurrent() {
        DiodeDrop diode = new DiodeDrop(1e-5, 0.0275, 0.002);
        for (double amps : new double[] {1e-3, 0.5, 30}) {
            assertEquals(amps, diode.ampsAt(diode.nextVolts(7, amps)), 1e-5 + 1e-6 * amps);
        }
        assertEquals(-7, diode.nextVolts(-7, -1e-5));
    }

    @Test
    void onlyWhatTakesInChargeTakesUpACurrent() {
        assertTrue(new Resistive(1).takesUp());
        assertTrue(new ConstantCurrent(5, 8).takesUp());
        assertFalse(Open.CIRCUIT.takesUp());
        assertTrue(new Storage(12, 0.01, new Intake(1, 0.2, GasPath.NEVER), 9).takesUp());
        assertFalse(new Storage(12, 0.01, Intake.NONE, 9).takesUp());
    }

    @Test
    void intakesAreAlikeByTheirValues() {
        GasPath gas = GasPath.straight(14, 0.5);
        Intake one = new Intake(20, 0.2, gas);
        Intake same = new Intake(20, 0.2, gas);
        assertEquals(one, same);
        assertEquals(one.hashCode(), same.hashCode());
        assertNotEquals(one, new Intake(21, 0.2, gas));
        assertNotEquals(one, new Intake(20, 0.3, gas));
        assertNotEquals(one, new Intake(20, 0.2, GasPath.NEVER));
        assertNotEquals(one.hashCode(), new Intake(21, 0.2, gas).hashCode());
    }

    @Test
    void gasRisesWithTheVoltageOrIsRefused() {
        double[] volts = {14, 15, 16};
        GasPath path = new GasPath(volts, new double[] {0, 1, 4});
        assertEquals(0, path.ampsAt(13.9));
        assertEquals(0.5, path.ampsAt(14.5), 1e-12);
        assertEquals(2.5, path.ampsAt(15.5), 1e-12);
        assertEquals(7, path.ampsAt(17), 1e-12);
        assertEquals(3, path.siemensAt(15.5), 1e-12);
        for (double[] amps : List.of(new double[] {0, 2, 2}, new double[] {1, 2, 3})) {
            assertThrows(IllegalArgumentException.class, () -> new GasPath(volts, amps));
        }
        double[] amps = {0, 1, 4};
        for (double[] wrong : List.of(new double[] {14, 14, 16}, new double[] {14, 15})) {
            assertThrows(IllegalArgumentException.class, () -> new GasPath(wrong, amps));
        }
    }
}
