package stillturning.dossier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.report.pair.ValueMarks;

/** Two copies of one layout, of which one was measured. */
class MarkedValuesTest {

    private static final Path SAMPLE = Path.of("architectures", "first-steps");

    private static ValueMarks between(Path folder, String capacity) throws IOException {
        String one = Files.readString(SAMPLE.resolve("one-bus.yaml"));
        Files.writeString(
                folder.resolve("study.yaml"), Files.readString(SAMPLE.resolve("study.yaml")));
        Files.writeString(folder.resolve("one-bus.yaml"), one);
        assertTrue(one.contains("capacity: 18 Ah (guess)"), one);
        Files.writeString(
                folder.resolve("other.yaml"),
                one.replace("capacity: 18 Ah (guess)", "capacity: " + capacity));
        ReadStudy read = StudyReader.read(folder);
        assertTrue(read.study().isPresent(), read.problems()::toString);
        return MarkedValues.between(read, "one-bus", "other");
    }

    @Test
    void whatIsMeasuredInOneAndGuessedInTheOtherIsNamed(@TempDir Path folder) throws IOException {
        ValueMarks marks = between(folder, "17 Ah (measured)");
        assertEquals(List.of("battery capacity"), marks.onlyGuessed());
        assertEquals(List.of(), marks.onlyGuessedByOther());
        assertEquals(marks.guesses() - 1, marks.otherGuesses());
        assertTrue(
                marks.words("A", "B").contains("guessed in A, known in B: battery capacity"),
                marks.words("A", "B"));
    }

    @Test
    void copiesAreAlike(@TempDir Path folder) throws IOException {
        ValueMarks marks = between(folder, "18 Ah (guess)");
        assertFalse(marks.unlike());
        assertEquals(marks.guesses(), marks.otherGuesses());
        assertTrue(marks.guesses() > 0);
    }
}
