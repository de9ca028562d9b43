package stillturning.files.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.files.record.MeasuredEntry.Item;
import stillturning.files.record.MeasuredEntry.Prediction;

/** The record grows by entries and keeps all that it had. */
class MeasuredFileTest {

    @TempDir private Path study;

    private static MeasuredEntry entry(String date, String by) {
        Prediction prediction = new Prediction("12.4 V", "12.1 V", "12.6 V");
        return new MeasuredEntry(
                date,
                by,
                "abc",
                List.of(
                        new Item("a.volts.bus", "bus: \"hot\"", "12.3 V", prediction, "keeps", ""),
                        new Item("a.result", "pull it", "", Prediction.NONE, "not done", "")));
    }

    private MeasuredFile file() throws IOException {
        return MeasuredFile.of(study, "one-bus");
    }

    @Test
    void entriesReadBackAsTheyWereAndNothingWrittenIsTouched() throws IOException {
        MeasuredEntry first = entry("2026-05-17", "me & \"co\" \u202e\u0007 \\ \ud83d\udd27");
        MeasuredEntry second = entry("2026-05-18", "");
        assertTrue(file().add(first));
        Path path = file().file();
        String before = Files.readString(path) + "# a remark of ours";
        Files.writeString(path, before);
        assertTrue(file().add(second));
        assertEquals(List.of(), file().problems());
        assertEquals(List.of(first, second), file().entries());
        assertTrue(Files.readString(path).startsWith(before), () -> "changed: " + path);
    }

    @Test
    void theSameEntryIsNotAddedTwice() throws IOException {
        assertTrue(file().add(entry("2026-05-17", "")));
        assertFalse(file().add(entry("2026-05-17", "")));
        assertEquals(1, file().entries().size());
    }

    @Test
    void aSpoiltRecordIsToldWithItsPlaces() throws IOException {
        assertTrue(file().add(entry("2026-05-17", "")));
        Path path = file().file();
        Files.writeString(
                path,
                Files.readString(path)
                        .replace("2026-05-17", "May")
                        .replaceFirst("verdict:", "verdikt:"));
        List<String> told = file().problems().stream().map(String::valueOf).toList();
        assertTrue(
                told.stream().anyMatch(t -> t.startsWith("one-bus.yaml:2:9: [0].date: \"May\"")),
                told.toString());
        assertTrue(
                told.stream().anyMatch(t -> t.contains("did you mean \"verdict\"")),
                told.toString());
    }
}
