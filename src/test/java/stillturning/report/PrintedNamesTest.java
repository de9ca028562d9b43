package stillturning.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.quantity.UnitSystem;
import stillturning.report.table.Column;
import stillturning.report.table.Table;
import stillturning.report.table.Unit;

class PrintedNamesTest {

    @TempDir private Path folder;

    private static Candidate candidate(Path study, String id) {
        return StudyReader.read(study).study().orElseThrow().candidate(id).orElseThrow();
    }

    @Test
    void aCellHoldsTheLabelOfAPartAndASentenceThoseOfNamesThatNoWordIs() {
        PrintedNames names =
                new PrintedNames(
                        candidate(Path.of("architectures", "sandpiper"), "one-battery-engine-bus"));
        assertEquals("strobe and position lights", names.cell("lights"));
        assertEquals("fuel pump 1, carried in run-up", names.cell("pump-1, carried in run-up"));
        assertEquals("the lights of fuel pump 1", names.in("the lights of pump-1"));
    }

    /** Two things of one name are told apart by nobody. */
    @Test
    void partsThatAreCalledAlikeKeepTheirNames() throws IOException {
        Path from = Path.of("architectures", "first-steps");
        try (var files = Files.list(from)) {
            for (Path file : files.toList()) {
                Files.writeString(
                        folder.resolve(from.relativize(file)),
                        Files.readString(file)
                                .replace("radio:    {zone", "radio:    {label: set, zone")
                                .replace("lights:   {zone", "lights:   {label: set, zone")
                                .replace("pump:     {zone", "pump:     {label: fuel pump, zone"));
            }
        }
        PrintedNames names = new PrintedNames(candidate(folder, "one-bus"));
        assertEquals("radio", names.cell("radio"));
        assertEquals("lights", names.cell("lights"));
        assertEquals("fuel pump", names.cell("pump"));
    }

    @Test
    void aTableKeepsItsFiguresHeadsAndBlanksWhenItsWordsAreSaidOtherwise() {
        Table<String> table =
                new Table<>(
                        "t",
                        "T",
                        List.of(
                                Column.<String>words("part", 9, name -> name).once(),
                                Column.number("takes", Unit.AMPS, 1, String::length)),
                        List.of("one", "three"),
                        List.of("note"),
                        UnitSystem.METRIC);
        Table<List<String>> said = table.said(name -> "the " + name);
        assertEquals(table.heads(), said.heads());
        assertEquals(List.of(List.of("the one", "3.0"), List.of("the three", "5.0")), said.cells());
        assertEquals(
                table.columns().stream().map(Column::isNumber).toList(),
                said.columns().stream().map(Column::isNumber).toList());
        assertEquals(
                table.columns().stream().map(Column::repeats).toList(),
                said.columns().stream().map(Column::repeats).toList());
    }
}
