package stillturning.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Small changes of a text, what is shown of a long one, and what of it nobody sees. */
class SpliceTest {

    @ParameterizedTest
    @CsvSource({
        "abcdef, abXdef, 2, c, X",
        "abcdef, abdef, 2, c, ''",
        "abcdef, abccdef, 3, '', c",
        "aaa, aaaa, 3, '', a",
        "abc, abc, 3, '', ''",
        "abc, xyz, 0, abc, xyz",
        "ab, aab, 1, '', a",
        "abcabc, abc, 3, abc, ''"
    })
    void theSmallestChangeIsFound(
            String before, String after, int at, String removed, String inserted) {
        Splice splice = Splice.between(before, after);
        assertEquals(new Splice(at, removed, inserted), splice);
        assertEquals(after, splice.appliedTo(before));
        assertEquals(before, splice.inverse().appliedTo(after));
    }

    @Test
    void whatIsNotThereIsNotReplaced() {
        Splice splice = new Splice(2, "c", "X");
        assertEquals("abX", splice.appliedTo("abc"));
        assertThrows(IllegalArgumentException.class, () -> splice.appliedTo("abd"));
        assertThrows(IllegalArgumentException.class, () -> splice.appliedTo("ab"));
        assertThrows(
                IllegalArgumentException.class, () -> new Splice(-1, "", "x").appliedTo("abc"));
    }

    @Test
    void aLongTextIsCutBetweenCharacters() {
        assertEquals("x".repeat(60), Excerpt.of("x".repeat(60)));
        assertEquals("x".repeat(60) + "...", Excerpt.of("x".repeat(61)));
        String pair = "\ud83d\udd0b";
        assertEquals("x".repeat(59) + "...", Excerpt.of("x".repeat(59) + pair + "y"));
        assertEquals("x".repeat(58) + pair + "...", Excerpt.of("x".repeat(58) + pair + "y"));
    }

    // UAX 9 (from memory): the marks that turn the direction of what follows
    @ParameterizedTest
    @ValueSource(
            ints = {
                0, 0x1b, 0x7f, 0x85, 0x61c, 0x200e, 0x200f, 0x202a, 0x202e, 0x2066, 0x2069, 0xfeff
            })
    void whatNobodySeesIsFound(int codePoint) {
        String value = "a" + Character.toString(codePoint) + "b";
        assertEquals(codePoint, Invisible.firstIn(value).orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(ints = {'\n', '\t'})
    void breaksAndTabsMayStandInAValue(int codePoint) {
        assertTrue(Invisible.changesWhatIsShown(codePoint));
        assertTrue(Invisible.firstIn("a" + Character.toString(codePoint)).isEmpty());
    }

    @ParameterizedTest
    @ValueSource(ints = {' ', 'a', 0xe4, 0x200d, 0x2010, 0x2029, 0x202f, 0x2065, 0x206a, 0x1f50b})
    void whatIsSeenIsLeft(int codePoint) {
        assertFalse(Invisible.changesWhatIsShown(codePoint));
    }
}
