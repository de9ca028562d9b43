package stillturning.network;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import stillturning.network.law.SourceBehindOhms;

/** Points on a way along which a battery runs down: found from where the last ones point to. */
class DriftingLawsTest {

    private static final int NETS = 60;
    private static final int BATTERY = 0;

    /** In the order in which the stages of a step and a search for an event ask. */
    private static final double[] PLACES = {0.5, 0.75, 1, 0.25, 1, 0.9, 0.95};

    @Test
    void aPointOfTheWayIsTheOneThatIsFoundFromNothing() throws NoOperatingPoint {
        NodalSolver solver = AircraftNetwork.of(NETS).solver();
        solver.solve();
        for (int step = 0; step < 5; step++) {
            solver.setOut(step > 0);
            for (double place : PLACES) {
                double volts = 12.8 - 0.2 * (step + place);
                solver.law(BATTERY, new SourceBehindOhms(volts, 0.012));
                solver.solve(place);
                assertSamePoint(fromNothing(volts), solver);
            }
            solver.law(BATTERY, new SourceBehindOhms(12.8 - 0.2 * (step + 1), 0.012));
            solver.solve(1);
        }
    }

    @Test
    void onAWayThatBendsLittleOneStepIsEnough() throws NoOperatingPoint {
        NodalSolver solver = AircraftNetwork.of(NETS).solver();
        solver.solve();
        solver.setOut(false);
        int most = 0;
        for (int n = 1; n < 20; n++) {
            solver.law(BATTERY, new SourceBehindOhms(12.8 - 0.002 * n, 0.012));
            solver.solve(n);
            most = n < 3 ? 0 : Math.max(most, solver.iterations());
        }
        assertEquals(1, most);
    }

    @Test
    void whatWasForetoldOfAnotherWayDoesNoHarm() throws NoOperatingPoint {
        NodalSolver solver = AircraftNetwork.of(NETS).solver();
        solver.solve();
        solver.setOut(false);
        solver.law(BATTERY, new SourceBehindOhms(12.6, 0.012));
        solver.solve(1);
        solver.setOut(true);
        solver.law(BATTERY, new SourceBehindOhms(11.0, 0.012));
        solver.solve(1);
        assertSamePoint(fromNothing(11.0), solver);
        assertTrue(solver.worstKclAmps() < Newton.PROMISED_AMPS);
    }

    @Test
    void aWayGoesOnFromItsLastPointAndFromNoOther() {
        WayAhead ahead = new WayAhead(2);
        ahead.begin(new double[] {12, 0}, false);
        ahead.found(new double[] {11, 0}, 1);
        double[] there = {7, 0};
        ahead.begin(new double[] {11, 0}, true);
        ahead.foretell(there, 0, 1);
        assertArrayEquals(new double[] {10, 0}, there, 1e-12);
        // at the other of two points that a network may have, the curve of the first says nothing
        ahead.begin(new double[] {9, 0}, true);
        there[0] = 7;
        ahead.foretell(there, 0, 1);
        assertArrayEquals(new double[] {7, 0}, there, 0);
    }

    private static NodalSolver fromNothing(double volts) throws NoOperatingPoint {
        NodalSolver fresh = AircraftNetwork.of(NETS).solver();
        fresh.law(BATTERY, new SourceBehindOhms(volts, 0.012));
        fresh.solve();
        return fresh;
    }

    private static void assertSamePoint(NodalSolver expected, NodalSolver solver) {
        for (int net = 0; net < NETS; net++) {
            assertEquals(expected.volts(net), solver.volts(net), 1e-8, "net " + net);
        }
    }
}
