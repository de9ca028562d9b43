package stillturning.model.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.parts.Cable;

/** Bundles against a published example and against geometry. */
class BundlesTest {

    private static List<Cable> wires(int count, String awg) {
        return Collections.nCopies(count, Cable.awg(awg).orElseThrow());
    }

    /**
     * 24 wires of 2.0 mm make a bundle of 11.8 mm: 5.9 diameters (worked example of a maker of
     * sleeves, read, weak).
     */
    @Test
    void twentyFourEqualWiresMakeTheBundleOfThePublishedExample() {
        double wire = Cable.awg("18").orElseThrow().outsideMetres();
        assertEquals(11.8 / 2.0, Bundles.metres(wires(24, "18")) / wire, 0.03);
    }

    /**
     * Equal circles in the smallest circle around them: 2, 2.155, 3 and 4.864 diameters for 2, 3, 7
     * and 19 (geometry). Wires do not pack tighter than circles.
     */
    @ParameterizedTest
    @CsvSource({"1, 1", "2, 2", "3, 2.155", "7, 3", "19, 4.864"})
    void noBundleIsThinnerThanItsWiresPackedAsTightAsCanBe(int count, double diameters) {
        double wire = Cable.awg("20").orElseThrow().outsideMetres();
        double bundle = Bundles.metres(wires(count, "20")) / wire;
        assertTrue(bundle >= Math.min(diameters, count) - 1e-9, bundle + " diameters");
        assertTrue(bundle <= 1.15 * diameters, bundle + " diameters");
    }

    /** One thick wire beside thin ones: never less than the two thickest side by side. */
    @Test
    void twoThickWiresLieSideBySide() {
        Cable thick = Cable.awg("2").orElseThrow();
        Cable thin = Cable.awg("22").orElseThrow();
        assertEquals(2 * thick.outsideMetres(), Bundles.metres(List.of(thick, thick, thin)), 1e-3);
    }

    /** 3/8 in on each side (AC 43.13-1B change 1, 11-115, read). */
    @Test
    void aHoleWithoutGrommetLeavesThreeEighthsOfAnInchAllRound() {
        assertEquals(0.010 + 0.01905, Bundles.bareHoleMetres(0.010), 1e-9);
        assertTrue(Bundles.grommetMetres(0.010) >= 0.010);
        assertTrue(Bundles.holeMetres(0.010) > Bundles.grommetMetres(0.010));
    }

    /**
     * Outside of medium-weight ETFE wire: 0.045 in for AWG 24, 0.058 in for AWG 20, 0.077 in for
     * AWG 16 (from memory).
     */
    @ParameterizedTest
    @CsvSource({"24, 0.045", "20, 0.058", "16, 0.077"})
    void wiresAreAsThickAsTheTradeKnowsThem(String awg, double inches) {
        double outside = Cable.awg(awg).orElseThrow().outsideMetres() / 0.0254;
        assertEquals(1, outside / inches, 0.06, outside + " in");
    }

    @Test
    void noWiresAreNoBundle() {
        assertThrows(IllegalArgumentException.class, () -> Bundles.metres(List.of()));
    }
}
