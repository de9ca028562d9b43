package stillturning.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

    // Prefixes, min, h, Ah = A x h, Wh = W x h, °C = K - 273.15: SI Brochure, 9th edition (from
    // memory).
    // 1 ft = 0.3048 m, 1 in = 0.0254 m, 1 lb = 0.45359237 kg, 1 oz = lb / 16: international yard
    // and
    // pound agreement, 1959 (from memory). °F: 32 and 212 are the freezing and boiling point (from
    // memory).
    // Circular mil: 1 cmil = 5.067e-4 mm2 (computed here from a stranded-wire chart that was read).
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    1 V       | 1           | VOLTAGE
                    1 mV      | 0.001       | VOLTAGE
                    1 kV      | 1000        | VOLTAGE
                    1 A       | 1           | CURRENT
                    1 mA      | 0.001       | CURRENT
                    1 uA      | 0.000001    | CURRENT
                    1 µA      | 0.000001    | CURRENT
                    1 μA      | 0.000001    | CURRENT
                    1 kA      | 1000        | CURRENT
                    1 ohm     | 1           | RESISTANCE
                    1 Ω       | 1           | RESISTANCE
                    1 Ω       | 1           | RESISTANCE
                    1 mohm    | 0.001       | RESISTANCE
                    1 mΩ      | 0.001       | RESISTANCE
                    1 uohm    | 0.000001    | RESISTANCE
                    1 µΩ      | 0.000001    | RESISTANCE
                    1 μohm    | 0.000001    | RESISTANCE
                    1 kohm    | 1000        | RESISTANCE
                    1 kΩ      | 1000        | RESISTANCE
                    1 Mohm    | 1000000     | RESISTANCE
                    1 MΩ      | 1000000     | RESISTANCE
                    20 Ah     | 72000       | CHARGE
                    1 mAh     | 3.6         | CHARGE
                    1 C       | 1           | CHARGE
                    1 Wh      | 3600        | ENERGY
                    1 kWh     | 3600000     | ENERGY
                    1 J       | 1           | ENERGY
                    1 kJ      | 1000        | ENERGY
                    1 W       | 1           | POWER
                    1 mW      | 0.001       | POWER
                    1 kW      | 1000        | POWER
                    1 m       | 1           | LENGTH
                    1 mm      | 0.001       | LENGTH
                    1 cm      | 0.01        | LENGTH
                    1 km      | 1000        | LENGTH
                    1 ft      | 0.3048      | LENGTH
                    12 in     | 0.3048      | LENGTH
                    4 mm2     | 0.000004    | AREA
                    4 mm²     | 0.000004    | AREA
                    1 cm2     | 0.0001      | AREA
                    1 cm²     | 0.0001      | AREA
                    1 m2      | 1           | AREA
                    1 m²      | 1           | AREA
                    1 kg      | 1           | MASS
                    1 g       | 0.001       | MASS
                    1 lb      | 0.45359237  | MASS
                    16 oz     | 0.45359237  | MASS
                    1 s       | 1           | TIME
                    1 ms      | 0.001       | TIME
                    1 us      | 0.000001    | TIME
                    1 µs      | 0.000001    | TIME
                    1 μs      | 0.000001    | TIME
                    1 min     | 60          | TIME
                    1 h       | 3600        | TIME
                    -40 °C    | -40         | TEMPERATURE
                    -40 °F    | -40         | TEMPERATURE
                    32 degF   | 0           | TEMPERATURE
                    212 °F    | 100         | TEMPERATURE
                    25 degC   | 25          | TEMPERATURE
                    273.15 K  | 0           | TEMPERATURE
                    298.15 K  | 25          | TEMPERATURE
                    80 %      | 0.8         | RATIO
                    36 /h     | 0.01        | RATE
                    3600e-6 per hour | 0.000001 | RATE
                    2 /s      | 2           | RATE
                    2400 rpm  | 2400        | ROTATION
                    58 F      | 58          | CAPACITANCE
                    47 mF     | 0.047       | CAPACITANCE
                    470 uF    | 0.00047     | CAPACITANCE
                    470 µF    | 0.00047     | CAPACITANCE
                    50 A2s    | 50          | LET_THROUGH
                    50 A²s    | 50          | LET_THROUGH
                    """)
    void eachUnitHasItsExactFactor(String text, double si, Dimension dimension)
            throws MalformedQuantity {
        assertEquals(new Quantity(si, dimension, text), Quantity.parse(text));
        assertEquals(new Quantity(si, dimension, text), Quantity.parse(text, dimension));
    }

    @Test
    void theTableAboveNamesEveryDimensionAndNoSymbolTwice() {
        Set<String> seen = new HashSet<>();
        for (Dimension dimension : Dimension.values()) {
            assertEquals(dimension.customary(), dimension.units().get(0));
            dimension.units().forEach(symbol -> assertTrue(seen.add(symbol), symbol));
        }
    }

    @Test
    void aThousandCircularMilsAreHalfASquareMillimetre() throws MalformedQuantity {
        // 1 cmil = 5.067e-4 mm2 (computed here)
        assertEquals(0.5067e-6, Quantity.parse("1000 cmil").si(), 0.00005e-6);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "20Ah",
                "20 Ah",
                "20  Ah",
                " 20 Ah ",
                "+20 Ah",
                "20.0 Ah",
                "2e1 Ah",
                "2.0E+1 Ah",
                "020 Ah"
            })
    void spacesSignsAndExponentsDoNotMatter(String text) throws MalformedQuantity {
        assertEquals(72000, Quantity.parse(text, Dimension.CHARGE).si());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    20        | CURRENT     | 2 | "20" has no unit | add a unit: 20 A
                    0.8       | RATIO       | 3 | "0.8" has no unit | write 80 %
                    20 A h    | CHARGE      | 3 | "A h" is no unit | did you mean Ah? a charge is written in Ah, mAh, C
                    5 A A     | CURRENT     | 2 | "A A" is no unit | a current is written in A, mA, uA, kA
                    5 amps    | CURRENT     | 2 | "amps" is no unit | did you mean A? a current is written in A, mA, uA, kA
                    5 Volts   | VOLTAGE     | 2 | "Volts" is no unit | did you mean V? a voltage is written in V, mV, kV
                    5 MV      | VOLTAGE     | 2 | "MV" is no unit | did you mean mV? a voltage is written in V, mV, kV
                    20 C      | TEMPERATURE | 3 | "20 C" is a charge | did you mean °C? a temperature is written in °C, °F, K
                    5 V       | CURRENT     | 2 | "5 V" is a voltage | a current is written in A, mA, uA, kA
                    1,5 A     | CURRENT     | 1 | the number has a comma | write 1.5 A
                    .5 A      | CURRENT     | 0 | the number starts with a point | write 0.5 A
                    5. A      | CURRENT     | 1 | no digits follow the point | write 5 A
                    −5 °C     | TEMPERATURE | 0 | the minus sign is a dash | write -5 °C
                    NaN V     | VOLTAGE     | 0 | "NaN V" does not start with a number | write a number and a unit, such as 12.8 V
                    Infinity A | CURRENT    | 0 | "Infinity A" does not start with a number | write a number and a unit, such as 5 A
                    -Infinity A | CURRENT   | 0 | "-Infinity A" does not start with a number | write a number and a unit, such as 5 A
                    1e400 V   | VOLTAGE     | 0 | 1e400 is beyond what the program can count | write a number and a unit, such as 12.8 V
                    1e-400 V  | VOLTAGE     | 0 | 1e-400 is beyond what the program can count | write a number and a unit, such as 12.8 V
                    1e99999999999 V | VOLTAGE | 0 | 1e99999999999 is beyond what the program can count | write a number and a unit, such as 12.8 V
                    0x10 V    | VOLTAGE     | 1 | "x10 V" is no unit | a voltage is written in V, mV, kV
                    1_000 V   | VOLTAGE     | 1 | "_000 V" is no unit | a voltage is written in V, mV, kV
                    5 V;      | VOLTAGE     | 2 | "V;" is no unit | a voltage is written in V, mV, kV
                    V         | VOLTAGE     | 0 | "V" does not start with a number | write a number and a unit, such as 12.8 V
                    5\u00a0V  | VOLTAGE     | 1 | the gap is the character U+00A0 | put an ordinary space
                    ''        | CHARGE      | 0 | nothing is written | write a number and a unit, such as 20 Ah
                    '   '     | CHARGE      | 3 | nothing is written | write a number and a unit, such as 20 Ah
                    """)
    void aMalformedTextIsExplained(
            String text, Dimension wanted, int offset, String wrong, String right) {
        MalformedQuantity answer =
                assertThrows(MalformedQuantity.class, () -> Quantity.parse(text, wanted));
        assertEquals(wrong, answer.wrong());
        assertEquals(right, answer.right());
        assertEquals(offset, answer.offset());
        assertEquals(wrong + "; " + right, answer.getMessage());
    }

    @Test
    void arabicIndicDigitsAndEndlessTextsAreRefused() {
        assertThrows(MalformedQuantity.class, () -> Quantity.parse("\u0665 A"));
        assertThrows(MalformedQuantity.class, () -> Quantity.parse("9".repeat(1_000_000) + " A"));
        assertThrows(MalformedQuantity.class, () -> Quantity.parse(" ".repeat(1_000_000)));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void whatIsWrittenReadsBackToTheSameBits(long seed) throws MalformedQuantity {
        SplittableRandom random = new SplittableRandom(seed);
        Dimension[] dimensions = Dimension.values();
        for (int i = 0; i < 2_500; i++) {
            Dimension dimension = dimensions[random.nextInt(dimensions.length)];
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-12, 13));
            if (!dimension.holds(value)) {
                continue;
            }
            Quantity made = Quantity.of(value, dimension);
            Quantity read = Quantity.parse(made.written(), dimension);
            assertEquals(value, read.si(), 0.0, () -> "seed " + seed + ": " + made);
            if (i % 50 == 0) {
                assertTrue(made.written().matches(dimension.pattern()), made.written());
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "1e-15 ohm, RESISTANCE, no light aircraft has a resistance of 1e-15 ohm",
        "1e300 Ah, CHARGE, no light aircraft has a charge of 1e300 Ah",
        "-1e308 V, VOLTAGE, no light aircraft has a voltage of -1e308 V",
        "1e-9 m, LENGTH, no light aircraft has a length of 1e-9 m",
        "1e9 A, CURRENT, no light aircraft has a current of 1e9 A",
        "1e308 kg, MASS, no light aircraft has a mass of 1e308 kg",
        "1e999 kg, MASS, 1e999 is beyond what the program can count"
    })
    void whatNoAircraftHasIsRefusedWithTheRange(String text, Dimension dimension, String wrong) {
        MalformedQuantity refused =
                assertThrows(MalformedQuantity.class, () -> Quantity.parse(text, dimension));
        assertEquals(wrong, refused.wrong());
        assertTrue(refused.right().startsWith("write "), refused.right());
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void theUsualValueOfEachDimensionAndZeroAreWellInsideItsRange(Dimension dimension) {
        double usual = dimension.example().si();
        assertTrue(dimension.holds(usual * 10) && dimension.holds(usual / 10));
        assertTrue(dimension.holds(0));
        assertFalse(dimension.holds(Double.MAX_VALUE) || dimension.holds(Double.NaN));
    }

    @Test
    void roundValuesAreWrittenRound() {
        assertEquals("64 ohm", Quantity.of(64, Dimension.RESISTANCE).written());
        assertEquals("12 mohm", Quantity.of(0.012, Dimension.RESISTANCE).written());
        assertEquals("20 Ah", Quantity.of(72000, Dimension.CHARGE).written());
        assertEquals("80 %", Quantity.of(0.8, Dimension.RATIO).written());
        assertEquals("0 V", Quantity.of(-0.0, Dimension.VOLTAGE).written());
        assertEquals("0.1 m", Quantity.of(0.1, Dimension.LENGTH).written());
        assertThrows(
                IllegalArgumentException.class, () -> Quantity.of(Double.NaN, Dimension.CHARGE));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void randomTextIsEitherReadOrExplained(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        String letters = "0123456789+-.eE ,AVhmWkg%/°CµΩ(\u0000\u2028\ud83d";
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(12); n > 0; n--) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            try {
                assertTrue(Double.isFinite(Quantity.parse(text.toString()).si()));
            } catch (MalformedQuantity explained) {
                assertTrue(explained.offset() <= text.length(), () -> "seed " + seed + ": " + text);
            }
        }
    }
}
