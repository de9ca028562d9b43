package stillturning.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.bench.Shelf;
import stillturning.network.law.DiodeDrop;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Rectifier;

class DiodeClassTest {

    private static Rectifier inputDiode() {
        return Shelf.twoInputs("computer", Demand.DemandKind.CONSTANT_POWER, 1).elements().stream()
                .filter(Rectifier.class::isInstance)
                .map(Rectifier.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static DiodeDrop law(Rectifier diode) {
        return new DiodeDrop(diode.saturationAmps(), diode.emissionVolts(), diode.ohms());
    }

    /**
     * Schottky 1N5820 class, largest forward drop at 25 °C: 0.475 V at 3.0 A, 0.850 V at 9.4 A
     * (data sheet, two makers alike, read).
     */
    @ParameterizedTest
    @CsvSource({"3.0, 0.475", "9.4, 0.850"})
    void theDiodesInsideALoadDropLessThanTheirClassAllows(double amps, double mostVolts) {
        assertTrue(law(inputDiode()).ampsAt(mostVolts) > amps);
        assertTrue(law(inputDiode()).ampsAt(0.25) < amps, "a drop of 0.25 V is no Schottky's");
    }

    /** The same class, largest reverse current 2.0 mA at 25 °C and rated voltage, read. */
    @Test
    void theDiodesInsideALoadLeakLessThanTheirClassAllows() {
        assertTrue(Math.abs(law(inputDiode()).ampsAt(-20)) < 2e-3);
    }

    /** kT/q at 300 K is 25.852 mV; a decade of current then is 59.53 mV (computed here). */
    @Test
    void anIdealDiodeNeedsSixtyMillivoltsADecade() {
        DiodeDrop ideal = new DiodeDrop(1e-12, 0.025852, 1e-9);
        double low = ideal.ampsAt(0.6);
        assertEquals(10, ideal.ampsAt(0.6 + 0.05953) / low, 2e-3);
    }
}
