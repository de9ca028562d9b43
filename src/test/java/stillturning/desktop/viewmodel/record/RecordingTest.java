package stillturning.desktop.viewmodel.record;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.cli.Main;
import stillturning.desktop.viewmodel.explain.OpenStudy;
import stillturning.reliability.asbuilt.Compared.Agreement;

class RecordingTest {

    private static final int PATIENCE_SECONDS = 60;
    private static final String RADIO = "loads.radio";

    @TempDir private Path here;
    private final BlockingQueue<Runnable> screen = new LinkedBlockingQueue<>();
    private OpenStudy study;
    private Recording recording;

    @BeforeEach
    void open() {
        study = new OpenStudy("first-steps", here, screen::add);
        study.desk().open("one-bus");
        recording = recording();
    }

    @AfterEach
    void close() {
        study.close();
    }

    private Recording recording() {
        Recording made = new Recording(study.desk(), () -> "2026-05-17");
        made.look(true);
        until(() -> !made.groups().isEmpty());
        return made;
    }

    private void until(BooleanSupplier reached) {
        while (!reached.getAsBoolean()) {
            try {
                Runnable next = screen.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
                if (next == null) {
                    fail("nothing more happens");
                } else {
                    next.run();
                }
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
        }
    }

    private static Entry entry(Recording of, String path) {
        return of.groups().stream()
                .flatMap(group -> group.entries().stream())
                .filter(entry -> entry.path().equals(path))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no blank " + path));
    }

    private void enter(String path, String text) {
        entry(recording, path).written().set(text);
    }

    private void compare() {
        recording.compare();
        until(() -> !recording.working().get());
    }

    private Path file(String name) {
        return here.resolve("copy").resolve("measured").resolve(name);
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private String told(String... words) {
        StringWriter out = new StringWriter();
        PrintWriter writer = new PrintWriter(out);
        Main.run(writer, writer, InputStream.nullInputStream(), false, words);
        return out.toString();
    }

    @Test
    void whatIsEnteredComesToWhatTheCommandMakesOfTheSameForm() throws IOException {
        enter(RADIO, "2.9 A at 12.4 V");
        enter("resistances.pump-a-wire", "0.9 V at 10 A");
        recording.by().set("a builder");
        compare();
        assertEquals("", recording.refusal().get());
        assertEquals(2, recording.built().get().orElseThrow().with(Agreement.DISAGREES).size());
        assertEquals("does not keep to it", entry(recording, RADIO).verdict().get());
        Path form = here.resolve("form.yaml");
        Files.copy(file("entered").resolve("one-bus.yaml"), form);
        recording.record();
        assertTrue(recording.advice().get().startsWith("Added to the record"));
        String here = text(file("one-bus.yaml"));
        assertTrue(here.contains("2026-05-17") && here.contains("a builder"), here);
        Files.delete(file("one-bus.yaml"));
        String folder = requireNonNull(file("").getParent()).toString();
        String told = told("record", folder, "--candidate", "one-bus", form.toString());
        assertTrue(told.contains("Added to the record"), told);
        assertEquals(here, text(file("one-bus.yaml")));
        assertFalse(Files.exists(file("entered").resolve("one-bus.yaml")));
    }

    @Test
    void anEntryIsAppendedAndTheSameOneNotTwice() {
        enter(RADIO, "1.5 A at 14 V");
        compare();
        recording.record();
        String first = text(file("one-bus.yaml"));
        recording.record();
        assertTrue(recording.advice().get().contains("just this entry already"));
        assertEquals(first, text(file("one-bus.yaml")));
        recording.date().set("2026-06-01");
        recording.record();
        assertTrue(text(file("one-bus.yaml")).startsWith(first));
        assertTrue(text(file("one-bus.yaml")).length() > first.length());
        recording.date().set("soon");
        recording.record();
        assertTrue(recording.refusal().get().contains("on which day"));
    }

    @Test
    void everyMistakeStandsAtItsBlankAndNothingIsCompared() {
        enter(RADIO, "2.9 A");
        enter("resistances.pump-a-wire", "0.9 V");
        enter("batteries.battery.capacity", "much");
        compare();
        assertTrue(recording.refusal().get().startsWith("3 mistakes"), recording.refusal().get());
        assertTrue(entry(recording, RADIO).mistake().get().contains("hangs on its voltage"));
        assertFalse(entry(recording, "batteries.battery.capacity").mistake().get().isEmpty());
        assertTrue(recording.built().get().isEmpty());
        recording.record();
        assertFalse(Files.exists(file("one-bus.yaml")));
    }

    @Test
    void whatWasTypedIsThereAgainAlsoWhereItIsNoLongerAskedFor() throws IOException {
        enter(RADIO, "1.5 A at 14 V");
        recording.keep();
        Path kept = file("entered").resolve("one-bus.yaml");
        String older =
                text(kept)
                        .replaceAll("study: .*", "study: \"of last year\"")
                        .replaceFirst("  radio:", "  horn: 2.9 A at 12.4 V\n  radio:");
        Files.writeString(kept, older);
        recording = recording();
        assertEquals("1.5 A at 14 V", entry(recording, RADIO).written().get());
        String advice = recording.advice().get();
        assertTrue(advice.contains("loads.horn: 2.9 A at 12.4 V"), advice);
        recording.keep();
        assertTrue(text(kept).contains("horn: \"2.9 A at 12.4 V\""), text(kept));
        compare();
        assertEquals("", recording.refusal().get());
        recording.record();
        String record = text(file("one-bus.yaml"));
        assertTrue(record.contains("no longer asked for"), record);
        assertTrue(record.contains("2.9 A at 12.4 V"), record);
    }

    @Test
    void offeredValuesGoIntoTheStudyAsOneChange() {
        enter(RADIO, "2.9 A at 12.4 V");
        compare();
        recording.offer();
        assertEquals("", recording.refusal().get());
        assertEquals("Take what was measured", study.lastChange());
        assertTrue(study.text().contains("(measured, 2026-05-17)"), study.text());
        until(() -> !recording.groups().isEmpty());
        assertEquals("2.9 A at 12.4 V", entry(recording, RADIO).written().get());
    }
}
