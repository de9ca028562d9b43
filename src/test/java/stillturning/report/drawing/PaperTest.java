package stillturning.report.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PaperTest {

    /**
     * Relative luminance.
     *
     * @see "Web Content Accessibility Guidelines 2.1 (from memory, unverified)"
     */
    private static double luminance(String colour) {
        double sum = 0;
        double[] weights = {0.2126, 0.7152, 0.0722};
        for (int i = 0; i < 3; i++) {
            double share = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            double linear =
                    share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
            sum += weights[i] * linear;
        }
        return sum;
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void whatIsWrittenCanBeReadOnEitherPaper(Paper paper) {
        for (Colours ink : EnumSet.range(Colours.MUTED, Colours.VIOLET)) {
            assertTrue(contrast(paper.colour(ink.light), paper.ground()) >= 4.5, ink + " " + paper);
        }
        String text = paper.colour(Colours.STROKE.light);
        assertTrue(contrast(text, paper.ground()) >= 7, text);
        assertTrue(contrast(text, paper.colour(Colours.LIGHT_FILL.light)) >= 7, text);
        assertTrue(contrast(paper.ground(), paper.colour(Colours.SOLID_FILL.light)) >= 7);
    }

    @Test
    void lightPaperChangesNothing() {
        for (Colours ink : Colours.values()) {
            assertEquals(ink.light, Paper.LIGHT.colour(ink.light));
        }
        assertEquals(Stroke.NO_FILL, Paper.DARK.colour(Stroke.NO_FILL));
    }

    @Test
    void aStrangeColourIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Paper.DARK.colour("#123456"));
    }
}
