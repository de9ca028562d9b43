package stillturning.report.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextWidthsTest {

    // DejaVu Sans 2.37, read from the font file: digits 636, W 989, i 278, Greek capital omega 764,
    // Cyrillic zhe 1077, arrow 838 thousandths of the size; bold digits 696
    @Test
    void widthsAreThoseOfTheFont() {
        assertEquals(6.36, TextWidths.of("7", 10, false), 1e-9);
        assertEquals(9.89 + 2.78, TextWidths.of("Wi", 10, false), 1e-9);
        assertEquals(7.64, TextWidths.of("Ω", 10, false), 1e-9);
        assertEquals(10.77, TextWidths.of("Ж", 10, false), 1e-9);
        assertEquals(8.38, TextWidths.of("→", 10, false), 1e-9);
        assertEquals(6.96, TextWidths.of("7", 10, true), 1e-9);
        assertEquals(0, TextWidths.of("", 10, true));
    }

    @Test
    void aSignWithoutAnEntryCountsAsWiderThanAnyWithOne() {
        assertTrue(TextWidths.of("主", 10, false) > 10);
        assertEquals(TextWidths.of("主", 10, false), TextWidths.of("😀", 10, false));
    }

    @Test
    void fittedTextIsNoWiderThanItsRoom() {
        for (String text : List.of("Fuel pump 2", "主母線主母線主母線", "aaaaaaaaaaaaaaaaaaaa", "😀😀😀")) {
            String fitted = TextFitting.fitted(text, 10, false, 40);
            assertTrue(TextWidths.of(fitted, 10, false) <= 40, fitted);
            assertTrue(fitted.endsWith("…") || fitted.equals(text));
        }
    }

    @Test
    void wrappingBreaksBetweenWordsAndCutsOnlyTheLastLine() {
        assertEquals(
                List.of("Engine", "computer"),
                TextFitting.wrapped("Engine computer", 10, false, 60, 2));
        assertEquals(
                List.of("Engine", "comput…"),
                TextFitting.wrapped("Engine computer number one", 10, false, 50, 2));
        assertEquals(List.of(), TextFitting.wrapped("  ", 10, false, 50, 2));
    }
}
