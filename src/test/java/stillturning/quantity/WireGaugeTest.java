package stillturning.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WireGaugeTest {

    // Diameter and area of solid round copper as printed in a university physics AWG table (read);
    // 2/0 as 00. Areas in circular mils.
    @ParameterizedTest(name = "AWG {0}")
    @CsvSource({
        "24, 404.0",
        "22, 642.4",
        "20, 1021.5",
        "18, 1624.3",
        "16, 2582.9",
        "14, 4106.8",
        "12, 6529",
        "10, 10381",
        "8, 16509",
        "6, 26250",
        "4, 41742",
        "2, 66373",
        "1, 83694",
        "0, 105530",
        "00, 133080"
    })
    void gaugesHaveTheTabulatedArea(String size, double circularMils) throws MalformedQuantity {
        double expected = Quantity.parse(circularMils + " cmil").si();
        // the table rounds to four figures
        assertEquals(1, WireGauge.parse("AWG " + size).squareMetres() / expected, 2e-4);
    }

    @Test
    void threeGaugesDoubleTheAreaAndSixTheDiameter() {
        // common AWG rule (read in a second source), good to half a per cent
        for (int number = -3; number <= 24; number++) {
            double thin = WireGauge.awg(number + 3).squareMetres();
            assertEquals(2, WireGauge.awg(number).squareMetres() / thin, 0.01);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "AWG 16, AWG 16",
        "AWG16, AWG 16",
        "16 AWG, AWG 16",
        "awg 16, AWG 16",
        "AWG 0, AWG 1/0",
        "AWG 00, AWG 2/0",
        "AWG 0000, AWG 4/0",
        "2/0 AWG, AWG 2/0",
        "4 mm2, 4 mm2",
        "4mm², 4mm2",
        "2583 cmil, 2583 cmil"
    })
    void spellingsOfOneGaugeAreTheSame(String text, String name) throws MalformedQuantity {
        assertEquals(name, WireGauge.parse(text).name());
        assertTrue(text.matches(WireGauge.PATTERN), text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "AWG 99",
                "AWG 31",
                "AWG 5/0",
                "AWG -2",
                "AWG 16.5",
                "AWG",
                "AWG ",
                "AWG 00000",
                "AWG 16 17",
                "16/0 AWG",
                "16",
                "#16",
                "2/0",
                "0 mm2",
                "-4 mm2",
                "0.04 mm2",
                "151 mm2",
                "4 mm",
                "4",
                "",
                "1e400 mm2",
                "NaN mm2"
            })
    void whatIsNoGaugeIsExplained(String text) {
        MalformedQuantity answer =
                assertThrows(MalformedQuantity.class, () -> WireGauge.parse(text));
        assertTrue(answer.right().matches(".*(AWG|mm2).*"), answer.getMessage());
    }

    @Test
    void fourSquareMillimetresLieNearestToGaugeEleven() throws MalformedQuantity {
        // AWG 11 is 4.17 mm2, AWG 12 is 3.31 mm2 by the formula (computed here)
        assertEquals(11, WireGauge.parse("4 mm2").nearestAwgNumber());
        assertEquals(OptionalInt.empty(), WireGauge.parse("4 mm2").awgNumber());
        assertEquals(OptionalInt.of(-1), WireGauge.parse("AWG 2/0").awgNumber());
    }

    @Test
    void sizesRunFromThinToThickAndKeepTheirNumbers() throws MalformedQuantity {
        List<WireGauge> sizes =
                IntStream.rangeClosed(-3, 30).map(n -> 27 - n).mapToObj(WireGauge::awg).toList();
        assertEquals(sizes, sizes.stream().sorted().toList());
        for (WireGauge size : sizes) {
            assertEquals(size, WireGauge.parse(size.name()));
            assertEquals(size, WireGauge.awg(size.awgNumber().orElseThrow()));
        }
        assertTrue(WireGauge.parse("4 mm2").compareTo(WireGauge.awg(12)) > 0);
        assertThrows(IllegalArgumentException.class, () -> WireGauge.awg(31));
        assertThrows(IllegalArgumentException.class, () -> new WireGauge(Double.NaN, "none"));
    }
}
