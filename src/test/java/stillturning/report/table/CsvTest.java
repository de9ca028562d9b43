package stillturning.report.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stillturning.quantity.UnitSystem;

class CsvTest {

    private record Lamp(String where, double amps) {}

    private static Table<Lamp> table(Lamp... lamps) {
        return new Table<>(
                "lamps",
                "Lamps",
                List.of(
                        Column.words("lamp, where", 10, Lamp::where),
                        Column.number("draws", Unit.AMPS, 1, Lamp::amps)),
                List.of(lamps),
                List.of("not in the file"),
                UnitSystem.METRIC);
    }

    // RFC 4180, section 2, rules 1, 3, 5, 6 and 7 (from memory)
    @Test
    void linesEndInCrLfAndWhatWouldConfuseIsQuoted() {
        String text =
                Csv.of(
                        table(
                                new Lamp("tail", 0.5),
                                new Lamp("a \"bright\" one", 3),
                                new Lamp("two\nlines", Double.NaN)));
        List<String> lines =
                List.of(
                        "\"lamp, where\",draws (A)",
                        "tail,0.5",
                        "\"a \"\"bright\"\" one\",3.0",
                        "\"two\nlines\",-",
                        "");
        assertEquals(String.join("\r\n", lines), text);
    }

    @Test
    void candidatesStandBelowEachOtherInOneTable() {
        Map<String, Table<?>> tables = new LinkedHashMap<>();
        tables.put("one", table(new Lamp("a", 1)));
        tables.put("two", table(new Lamp("b", 2)));
        assertEquals(
                "candidate,\"lamp, where\",draws (A)\r\none,a,1.0\r\ntwo,b,2.0\r\n",
                Csv.of("candidate", tables));
    }

    // what a spreadsheet takes for a formula: common practice, no published source
    @Test
    void noTextReachesASpreadsheetAsAFormulaAndNumbersKeepTheirSign() {
        String text =
                Csv.of(
                        table(
                                new Lamp("=1+2", -0.5),
                                new Lamp("  @sum", 1),
                                new Lamp("-tail", 1),
                                new Lamp("-1.5", 1),
                                new Lamp("\ttail", 1),
                                new Lamp("+ and -", 1)));
        List<String> lines =
                List.of(
                        "\"lamp, where\",draws (A)",
                        "'=1+2,-0.5",
                        "'  @sum,1.0",
                        "'-tail,1.0",
                        "-1.5,1.0",
                        "'\ttail,1.0",
                        "'+ and -,1.0",
                        "");
        assertEquals(String.join("\r\n", lines), text);
    }
}
