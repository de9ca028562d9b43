package stillturning.report.sizes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stillturning.model.Burdens;
import stillturning.model.Installation;
import stillturning.quantity.UnitSystem;
import stillturning.report.ReportSamples;
import stillturning.report.json.JsonReport;
import stillturning.report.ranking.ComplexityTexts;
import stillturning.report.table.Csv;
import stillturning.report.table.Table;
import stillturning.report.table.TerminalColour;
import stillturning.report.table.TextTable;
import stillturning.sizing.Sizing;
import stillturning.sizing.SurveyDepth;
import stillturning.sizing.result.SizingReport;
import stillturning.story.UntoldStory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One declaration of a table gives the same cells to everybody who reads it. */
class SizeTablesTest {

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    private static SizingReport report() throws UntoldStory {
        var study = ReportSamples.assessment().study();
        return Sizing.of(
                study, study.candidates().get(0), Installation.USUAL, SurveyDepth.NOTHING_WRONG);
    }

    private static List<Table<?>> all(UnitSystem system) throws UntoldStory {
        SizingReport report = report();
        return Stream.concat(
                        SizeTables.of(report, system).stream(),
                        SizeTables.lists(report, system).stream())
                .toList();
    }

    /** Letters and digits alone, in order: how a renderer breaks and pads is its own affair. */
    private static String letters(List<String> texts) {
        return String.join("", texts).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    @Test
    void everyTableHasItsHeadsAndCellsInTheFileAsOnTheScreen() throws UntoldStory {
        for (UnitSystem system : UnitSystem.values()) {
            for (Table<?> table : all(system)) {
                List<String> cells = new ArrayList<>(table.heads());
                table.cells().forEach(cells::addAll);
                assertEquals(letters(cells), letters(List.of(Csv.of(table))), table.name());
            }
        }
    }

    /** On batteries alone nobody asks while the starter turns, and that is not "without limit". */
    @Test
    void aDashIsSaidToBeAlsoWhatIsNotAsked() throws UntoldStory {
        String note =
                all(UnitSystem.METRIC).stream()
                        .filter(table -> table.name().equals("all-on"))
                        .findFirst()
                        .orElseThrow()
                        .notes()
                        .get(0);
        assertTrue(note.endsWith("and where it is not asked: while the engine is started."), note);
    }

    @Test
    void everyCellOfOneLineStandsOnTheTerminalInItsColumn() throws UntoldStory {
        for (Table<?> table : all(UnitSystem.METRIC)) {
            String shown = String.join("\n", TextTable.lines(table, TerminalColour.NONE));
            for (List<String> row : table.cells()) {
                for (int i = 0; i < row.size(); i++) {
                    if (row.get(i).length() <= table.columns().get(i).widest()) {
                        assertTrue(shown.contains(row.get(i)), table.name() + ": " + row.get(i));
                    }
                }
            }
        }
    }

    @Test
    void whatOtherProgramsReadIsTheValueThatTheColumnShows() throws UntoldStory {
        SizingReport report = report();
        JsonNode bill =
                JsonMapper.builder()
                        .build()
                        .readTree(JsonReport.sizes("study", List.of(report)))
                        .get("candidates")
                        .get(0)
                        .get("carry")
                        .get("bill");
        Table<?> shown = SizeTables.lists(report).get(1);
        assertEquals("bill-of-materials", shown.name());
        assertFalse(bill.isEmpty());
        assertEquals(shown.cells().size(), bill.size());
        for (int i = 0; i < bill.size(); i++) {
            assertEquals(shown.cells().get(i).get(0), bill.get(i).get("item").asString());
            assertEquals(
                    Double.parseDouble(shown.cells().get(i).get(5)),
                    bill.get(i).get("kilograms").asDouble(),
                    0.0006);
        }
    }

    @Test
    void headsBearTheUnitsOfTheSystemAndNoHyphenOfATerminal() throws UntoldStory {
        for (Table<?> table : all(UnitSystem.US)) {
            for (String head : table.heads()) {
                assertFalse(head.contains("- "), head);
                assertFalse(head.contains("(kg") || head.contains("(m)"), head);
            }
        }
    }

    @Test
    void theWeightBelowTheTableIsThatOfTheCandidateAndTheSumOfItsRows() throws UntoldStory {
        SizingReport report = report();
        double kilograms = report.purchase().weight().kilograms();
        assertEquals(Burdens.of(report.candidate()).kilograms(), kilograms);
        assertEquals(
                report.purchase().weight().parts().stream().mapToDouble(p -> p.kilograms()).sum(),
                kilograms,
                1e-9);
    }

    /** As many digits behind the point in each cell; by unit where a column has several. */
    @Test
    void theNumbersOfAColumnAreWrittenAlike() throws UntoldStory {
        List<Table<?>> tables = new ArrayList<>();
        tables.addAll(all(UnitSystem.METRIC));
        tables.addAll(all(UnitSystem.US));
        tables.add(new ComplexityTexts(ReportSamples.assessment()).counts());
        Map<String, Set<Integer>> decimals = new TreeMap<>();
        for (Table<?> table : tables) {
            int unit = table.heads().indexOf("unit");
            for (List<String> row : table.cells()) {
                for (int i = 0; i < row.size(); i++) {
                    String column =
                            table.title()
                                    + "/"
                                    + table.heads().get(i)
                                    + (unit < 0 ? "" : "/" + row.get(unit));
                    if (NUMBER.matcher(row.get(i)).matches()) {
                        decimals.computeIfAbsent(column, c -> new TreeSet<>())
                                .add(decimals(row.get(i)));
                    }
                }
            }
        }
        assertTrue(decimals.size() > 40, () -> decimals.keySet().toString());
        decimals.values().removeIf(counts -> counts.size() == 1);
        assertEquals(Map.of(), decimals);
    }

    private static int decimals(String number) {
        int point = number.indexOf('.');
        return point < 0 ? 0 : number.length() - point - 1;
    }
}
