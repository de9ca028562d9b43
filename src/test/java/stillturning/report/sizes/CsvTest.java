package stillturning.report.sizes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.report.sizes.SizeTable.Head;

class CsvTest {

    private static SizeTable table(List<List<String>> rows) {
        return new SizeTable(
                "lamps",
                "Lamps",
                List.of(Head.words("lamp, where", 10), Head.number("draws (A)")),
                rows,
                List.of("not in the file"));
    }

    // RFC 4180, section 2, rules 1, 3, 5, 6 and 7 (from memory)
    @Test
    void linesEndInCrLfAndWhatWouldConfuseIsQuoted() {
        String text =
                Csv.of(
                        table(
                                List.of(
                                        List.of("tail", "0.5"),
                                        List.of("a \"bright\" one", "3"),
                                        List.of("two\nlines", ""))));
        List<String> lines =
                List.of(
                        "\"lamp, where\",draws (A)",
                        "tail,0.5",
                        "\"a \"\"bright\"\" one\",3",
                        "\"two\nlines\",",
                        "");
        assertEquals(String.join("\r\n", lines), text);
    }

    @Test
    void candidatesStandBelowEachOtherInOneTable() {
        SizeTable all =
                table(List.of())
                        .byCandidate()
                        .with("one", table(List.of(List.of("a", "1"))))
                        .with("two", table(List.of(List.of("b", "2"))));
        assertEquals("candidate,\"lamp, where\",draws (A)\r\none,a,1\r\ntwo,b,2\r\n", Csv.of(all));
    }

    @Test
    void aRowThatDoesNotFillItsColumnsIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> table(List.of(List.of("a"))));
    }
}
