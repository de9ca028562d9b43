package stillturning.files.candidate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.files.candidate.CableSizes.Duty;
import stillturning.parts.Cable;
import stillturning.parts.Protection;
import stillturning.parts.Protection.Chart;
import stillturning.quantity.WireGauge;

class CableSizesTest {

    private static String thinnest(Duty duty) {
        return CableSizes.thinnest(duty).map(Cable::awg).orElse("none");
    }

    // AC 43.13-1B (read): paragraph 11-68 example 1, p. 11-26 (28 V, 50 ft with the return,
    // 20 A: No. 8), and rows of tables 11-7 and 11-8, p. 11-22
    @ParameterizedTest
    @CsvSource({"28, 50, 8", "28, 107, 6", "14, 90, 4", "28, 39, 10", "14, 19.5, 10"})
    void publishedExamplesOfTheVoltageDropAreMet(double volts, double feet, String awg) {
        Duty duty = new Duty(Optional.empty(), Optional.of(20.0), feet * 0.3048, volts);
        assertEquals(awg, thinnest(duty));
    }

    // AC 43.13-1B table 11-3, p. 11-15 (read)
    @ParameterizedTest
    @CsvSource({
        "true, 5, 22", "true, 7.5, 20", "true, 10, 18", "true, 15, 16", "true, 20, 14",
        "true, 30, 12", "true, 40, 10", "true, 50, 8", "true, 80, 6", "true, 100, 4",
        "true, 125, 2", "true, 126, none", "false, 5, 22", "false, 10, 18", "false, 15, 14",
        "false, 20, 12", "false, 30, 10", "false, 50, 8", "false, 70, 6", "false, 100, 2",
        "false, 150, 1", "false, 151, none"
    })
    void protectorsProtectTheSizesOfTheTable(boolean breaker, double amps, String awg) {
        Protection protection = new Protection(breaker ? Chart.BREAKER : Chart.FUSE, amps);
        assertEquals(awg, thinnest(new Duty(Optional.of(protection), Optional.empty(), 0, 14)));
    }

    // AC 43.13-1B table 11-9, p. 11-23, 150 °C wire (read)
    @ParameterizedTest
    @CsvSource({"4, 24", "5, 22", "9.1, 16", "26, 10", "26.1, 8", "310, 0000", "311, none"})
    void currentsNeedTheSizesOfTheTable(double amps, String awg) {
        assertEquals(awg, thinnest(new Duty(Optional.empty(), Optional.of(amps), 0, 14)));
    }

    @Test
    void everySizeOfTheTableIsFoundByItsGauge() {
        for (Cable size : Cable.SIZES) {
            assertEquals(Optional.of(size), Cable.of(CableSizes.gauge(size)));
        }
    }

    @Test
    void aMetricAreaIsRatedAsTheNextThinnerSizeAndKeepsItsOwnResistance() throws Exception {
        WireGauge gauge = WireGauge.parse("4 mm2");
        Cable size = Cable.of(gauge).orElseThrow();
        assertEquals("12", size.awg());
        assertEquals(
                size.ohmsPerMetre() * size.squareMetres() / 4e-6, size.ohmsPerMetre(gauge), 1e-15);
        assertEquals(Optional.empty(), Cable.of(WireGauge.parse("0.1 mm2")));
        assertEquals(Optional.empty(), Cable.of(WireGauge.awg(5)));
    }
}
