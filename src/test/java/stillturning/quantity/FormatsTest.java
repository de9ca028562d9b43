package stillturning.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormatsTest {

    @ParameterizedTest
    @CsvSource({
        "12.345, 12.3 V",
        "0.085, 85.0 mV",
        "0, 0 V",
        "-0.5, -500 mV",
        "999.96, 1.00 kV",
        "0.00099999, 1.00 mV",
        "1e-9, 0.00100 uV",
        "NaN, NaN V",
        "13800000, 13.8 MV"
    })
    void threeDigitsStandWithTheFittingPrefix(double volts, String text) {
        assertEquals(text, Formats.volts(volts));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0.0 ms",
        "0.0024, 2.4 ms",
        "0.085, 85 ms",
        "0.9996, 1.0 s",
        "2.4, 2.4 s",
        "9.96, 10 s",
        "24.4, 24 s",
        "59.7, 1 min",
        "260, 4 min 20 s",
        "599.6, 10 min",
        "2460, 41 min",
        "3599, 1 h",
        "4320, 1 h 12 min",
        "360000, 100 h",
        "Infinity, Infinity s",
        "-1, -1.00 s"
    })
    void aDurationIsWrittenInItsLargestTwoUnits(double seconds, String text) {
        assertEquals(text, Formats.duration(seconds));
    }

    @ParameterizedTest
    @CsvSource({
        "0.0041999, 4.1 ms",
        "0.3, 300 ms",
        "0.9996, 999 ms",
        "9.96, 9.9 s",
        "59.7, 59 s",
        "599.6, 9 min 59 s",
        "1799.999, 29 min",
        "1800, 30 min",
        "2153.4, 35 min",
        "3599, 59 min",
        "4379, 1 h 12 min",
        "43200, 12 h",
        "Infinity, Infinity s"
    })
    void whatLastsIsNeverWrittenLongerThanItDoes(double seconds, String text) {
        assertEquals(text, Formats.lasting(seconds));
        assertEquals(text, Formats.duration(Formats.lastingSeconds(seconds)));
    }

    @Test
    void lengthsAndMassesFollowTheReadersSystem() {
        // 3 ft = 0.9144 m and 4.6 lb = 2.0865 kg by the exact definitions of 1959 (from memory)
        assertEquals("0.91 m", Formats.length(0.9144, UnitSystem.METRIC));
        assertEquals("3.00 ft", Formats.length(0.9144, UnitSystem.US));
        assertEquals("85 mm", Formats.length(0.085, UnitSystem.METRIC));
        assertEquals("4.0 in", Formats.length(0.1016, UnitSystem.US));
        assertEquals("2.09 kg", Formats.mass(2.08652, UnitSystem.METRIC));
        assertEquals("4.60 lb", Formats.mass(2.08652, UnitSystem.US));
        assertEquals("85 g", Formats.mass(0.085, UnitSystem.METRIC));
    }

    @Test
    void otherValuesAndAnyDefaultLocaleGiveTheSameText() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals("5.50 A", Formats.amps(5.5));
            assertEquals("12.0 mohm", Formats.ohms(0.012));
            assertEquals("1.20 kW", Formats.watts(1200));
            assertEquals("20.0 Ah", Formats.ampHours(72000));
            assertEquals("80 %", Formats.percent(0.8));
            assertEquals("-5 °C", Formats.celsius(-5.2));
            assertEquals("0", Formats.fixed(-0.2, 0));
            assertEquals("2.68", Formats.fixed(2.675, 2));
            assertEquals("1.0000 V", Formats.engineering(1.00004, "V", 5));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void manyThingsAreCountedWithAMarkBetweenThousands() {
        assertEquals("999", Formats.count(999));
        assertEquals("42,195", Formats.count(42195));
    }
}
