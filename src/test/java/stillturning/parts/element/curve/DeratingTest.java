package stillturning.parts.element.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.parts.element.curve.Derating.Published.Point;
import stillturning.parts.protection.ProtectorCurves;

class DeratingTest {

    private static double share(TimeCurrentCurve curve, double celsius) {
        return curve.derating().share(celsius);
    }

    /** ISO 8820-3 type E, 40 A, transcribed class sheet, read in a second source. */
    @ParameterizedTest
    @CsvSource({"20, 40", "65, 34", "85, 30", "110, 25", "125, 22"})
    void aHighCurrentFuseCarriesWhatItsSheetSaysWhereItIsWarm(double celsius, double amps) {
        assertEquals(amps, 40 * share(ProtectorCurves.HIGH_CURRENT_FUSE, celsius), 1e-9);
    }

    /** Straight between the sheet's points, computed here: half way from 65 to 85 °C. */
    @Test
    void betweenPublishedTemperaturesTheWayIsStraight() {
        assertEquals(32, 40 * share(ProtectorCurves.HIGH_CURRENT_FUSE, 75), 1e-9);
    }

    @Test
    void beyondThePublishedTemperaturesTheNearestCounts() {
        assertEquals(22, 40 * share(ProtectorCurves.HIGH_CURRENT_FUSE, 180), 1e-9);
        assertEquals(40, 40 * share(ProtectorCurves.HIGH_CURRENT_FUSE, -30), 1e-9);
    }

    /**
     * Computed here by the first-order law sqrt((T - t) / (T - 25)); the temperatures T are from
     * memory, unverified (zinc) and a guess (bimetal), so only the law is held.
     */
    @Test
    void whatOpensHotCarriesTheRootOfWhatThePlaceLeaves() {
        assertEquals(
                Math.sqrt((419.5 - 85) / (419.5 - 25)),
                share(ProtectorCurves.BLADE_FUSE, 85),
                1e-12);
        assertEquals(
                Math.sqrt((180 - 70.0) / (180 - 25)),
                share(ProtectorCurves.FAST_BREAKER, 70),
                1e-12);
        assertTrue(share(ProtectorCurves.FAST_BREAKER, -40) > 1);
    }

    @Test
    void whereTheCurveWasPublishedTheRatingCounts() {
        for (TimeCurrentCurve curve :
                List.of(
                        ProtectorCurves.BLADE_FUSE,
                        ProtectorCurves.HIGH_CURRENT_FUSE,
                        ProtectorCurves.FAST_BREAKER,
                        ProtectorCurves.ELECTRONIC_TRIP)) {
            assertEquals(1, share(curve, 25), 1e-12);
        }
    }

    /** Common practice, no published source. */
    @Test
    void anElectronicTripDoesNotMindWhereItIs() {
        assertEquals(1, share(ProtectorCurves.ELECTRONIC_TRIP, 85));
    }

    @Test
    void aPlaceHotterThanTheOpeningTemperatureLeavesNextToNothing() {
        double left = share(ProtectorCurves.FAST_BREAKER, 300);
        assertTrue(left > 0 && left < 0.01, "" + left);
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Derating.OpensAt("x", 20));
        assertThrows(IllegalArgumentException.class, () -> new Point(20, 0));
        List<Point> falling = List.of(new Point(20, 1), new Point(10, 0.9));
        assertThrows(IllegalArgumentException.class, () -> new Derating.Published("x", falling));
    }
}
