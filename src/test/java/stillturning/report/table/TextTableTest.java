package stillturning.report.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.report.table.TerminalColour.Ink;

class TextTableTest {

    private record Drop(String part, double volts, boolean wrong) {}

    private static Table<Drop> table(String head) {
        return new Table<>(
                List.of(
                        Column.words("part", 12, Drop::part),
                        Column.<Drop>number(head, Unit.NONE, 1, Drop::volts)
                                .ink(d -> d.wrong() ? Ink.ALARM : Ink.PLAIN)),
                List.of(new Drop("bus", 14.2, false), new Drop("a very long name", 9.6, true)));
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
                TextTable.lines(table("V"), TerminalColour.NONE));
    }

    @Test
    void colourAddsNothingButEscapes() {
        List<String> plain = TextTable.lines(table("V"), TerminalColour.NONE);
        List<String> inked = TextTable.lines(table("V"), TerminalColour.ANSI);
        assertTrue(inked.stream().anyMatch(l -> l.contains("\u001B[31;1m9.6\u001B[0m")));
        assertEquals(
                plain, inked.stream().map(l -> l.replaceAll("\u001B\\[[0-9;]*m", "")).toList());
    }

    @Test
    void aLongWordInTheHeadOfNumbersIsHyphenatedOnTheTerminalAlone() {
        Table<Drop> table = table("alternators");
        assertEquals(List.of("part", "alternators"), table.heads());
        assertEquals(
                List.of("part         alter-", "             nators"),
                TextTable.lines(table, TerminalColour.NONE).subList(0, 2));
        assertTrue(Csv.of(table).startsWith("part,alternators\r\n"));
    }

    @Test
    void aCellThatEqualsTheOneAboveIsLeftBlankWhereItsColumnSaysSo() {
        Table<Drop> table =
                new Table<>(
                        List.of(
                                Column.<Drop>words("part", 12, Drop::part).once(),
                                Column.<Drop>number("V", Unit.NONE, 0, Drop::volts).foot("3")),
                        List.of(new Drop("bus", 1, false), new Drop("bus", 2, false)));
        assertEquals(
                List.of("part  V", "----  -", "bus   1", "      2", "      3"),
                TextTable.lines(table, TerminalColour.NONE));
        assertEquals("part,V\r\nbus,1\r\nbus,2\r\n,3\r\n", Csv.of(table));
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
    void aColumnWithoutRoomIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Column.words("part", 0, Drop::part));
    }
}
