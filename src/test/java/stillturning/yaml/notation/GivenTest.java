package stillturning.yaml.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.quantity.Dimension;

/** A value with its range and its origin, in one text. */
class GivenTest {

    private static Given read(String text) {
        return Given.read(
                        text,
                        Dimension.CURRENT,
                        (offset, wrong, right) -> {
                            throw new AssertionError(offset + ": " + wrong + "; " + right);
                        })
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"5 A", "5 A ±10 %", "5 A ±1 A (guess)", "5 A ±500 mA (data sheet, curve 3)"})
    void readsBackAsItIsWritten(String text) {
        assertEquals(text, read(text).written());
        assertEquals(read(text), read(read(text).written()));
    }

    @Test
    void aRangeMayBeWrittenInPlainLetters() {
        assertEquals(read("5 A ±10 % (measured)"), read("5 A +- 10 % (measured)"));
        assertEquals(0.5, read("5 A +/-10 %").spread().orElseThrow().si(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({
        "5 A ±1 V, 7, is a voltage",
        "5 A ±10, 7, has no unit",
        "5 A ±, 5, nothing is written",
        "5 V ±1 A, 2, is a voltage",
    })
    void aMistakeIsToldWhereItStands(String text, int offset, String wrong) {
        List<String> told = new ArrayList<>();
        assertTrue(
                Given.read(text, Dimension.CURRENT, (at, what, right) -> told.add(at + ": " + what))
                        .isEmpty());
        assertEquals(1, told.size(), told::toString);
        assertTrue(
                told.get(0).startsWith(offset + ": ") && told.get(0).contains(wrong),
                told::toString);
    }
}
