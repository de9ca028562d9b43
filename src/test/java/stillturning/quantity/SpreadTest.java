package stillturning.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far off a quantity may be, as it is written behind it. */
class SpreadTest {

    @ParameterizedTest
    @CsvSource({
        "5.5 A, CURRENT, 10 %, 0.55",
        "20 Ah, CHARGE, 1 Ah, 3600",
        "20 Ah, CHARGE, 1800 C, 1800",
        "-4 V, VOLTAGE, 50 %, 2",
        "80 %, RATIO, 5 %, 0.05",
        "25 °C, TEMPERATURE, 5 K, 5",
        "25 °C, TEMPERATURE, 5 °C, 5",
    })
    void isAShareOrAnAmount(String value, Dimension dimension, String spread, double si)
            throws MalformedQuantity {
        Quantity around = Quantity.parse(value, dimension);
        assertEquals(si, Spread.parse(spread, around).si(), 1e-12 * si);
        String pattern = dimension.pattern() + Spread.pattern(dimension);
        for (String sign : new String[] {"±", "+-", " +/- "}) {
            assertTrue(Pattern.matches(pattern, value + sign + spread), value + sign + spread);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "5.5 A, CURRENT, 10",
        "5.5 A, CURRENT, 1 V",
        "5.5 A, CURRENT, 0 %",
        "5.5 A, CURRENT, -1 A",
        "25 °C, TEMPERATURE, 10 %",
        "25 °C, TEMPERATURE, 41 °F",
    })
    void isNeitherNothingNorAnotherThing(String value, Dimension dimension, String spread)
            throws MalformedQuantity {
        Quantity around = Quantity.parse(value, dimension);
        assertThrows(MalformedQuantity.class, () -> Spread.parse(spread, around));
    }

    @Test
    void isNeverNegative() {
        assertThrows(IllegalArgumentException.class, () -> new Spread(-1, "-1 A"));
    }
}
