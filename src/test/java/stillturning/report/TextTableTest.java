package stillturning.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.report.TerminalColour.Ink;
import stillturning.report.TextTable.Cell;
import stillturning.report.TextTable.Column;

class TextTableTest {

    private static TextTable table() {
        return new TextTable(List.of(Column.words("part", 12), Column.numbers("V", 6)))
                .row(List.of(new Cell("bus"), new Cell("14.2")))
                .row(List.of(new Cell("a very long name"), new Cell("9.6", Ink.ALARM)));
    }

    @Test
    void wordsStartAndNumbersEndInOneColumn() {
        assertEquals(
                List.of(
                        "part            V",
                        "-----------  ----",
                        "bus          14.2",
                        "a very long   9.6",
                        "name"),
                table().lines(TerminalColour.NONE));
    }

    @Test
    void colourAddsNothingButEscapes() {
        List<String> plain = table().lines(TerminalColour.NONE);
        List<String> inked = table().lines(TerminalColour.ANSI);
        assertTrue(inked.stream().anyMatch(l -> l.contains("\u001B[31;1m9.6\u001B[0m")));
        assertEquals(
                plain, inked.stream().map(l -> l.replaceAll("\u001B\\[[0-9;]*m", "")).toList());
    }

    @Test
    void aWordLongerThanItsColumnIsBroken() {
        assertEquals(List.of("ab", "abcde", "fgh"), TextTable.broken("ab abcdefgh", 5));
    }

    @Test
    void lettersBeyondTheBasicPlaneCountAsOne() {
        assertEquals(
                List.of("\uD83D\uDE80\uD83D\uDE80", "\uD83D\uDE80"),
                TextTable.broken("\uD83D\uDE80\uD83D\uDE80\uD83D\uDE80", 2));
    }

    @Test
    void aRowOfAnotherLengthIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> table().row(List.of(new Cell("x"))));
    }
}
