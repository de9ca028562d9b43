package stillturning.files;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.Effort;
import stillturning.files.finding.CandidateReading;
import stillturning.files.finding.FileFinding;
import stillturning.model.HalfDrawn;
import stillturning.model.Join;
import stillturning.model.Terminal;
import stillturning.parts.Part;
import stillturning.yaml.YamlDocument;

class LenientReadingTest {

    private static final int DELETIONS = Effort.cases(3, 12);

    @TempDir Path folder;

    private LenientReading reading(String one) throws IOException {
        Files.writeString(folder.resolve("study.yaml"), SampleStudy.STUDY);
        Files.writeString(folder.resolve("one.yaml"), one);
        return StudyReader.open(folder).reading();
    }

    private static CandidateReading one(LenientReading reading) {
        return requireNonNull(reading.candidates().get("one"));
    }

    private static List<String> ids(HalfDrawn drawing) {
        return drawing.parts().stream().map(Part::id).toList();
    }

    private static String replaced(String old, String by) {
        assertTrue(SampleStudy.ONE.contains(old), old);
        return SampleStudy.ONE.replace(old, by);
    }

    @Test
    void aSoundCandidateIsDrawnAsItIs() throws IOException {
        LenientReading reading = reading(SampleStudy.ONE);
        HalfDrawn drawing = one(reading).drawing().orElseThrow();
        assertEquals(SampleStudy.one(reading.read()).parts(), drawing.parts());
        assertTrue(one(reading).isSound());
        assertEquals(reading.read().study(), reading.sound());
        assertEquals(List.of(), reading.broken());
    }

    @Test
    void aValueThatCannotBeReadLeavesThePartInTheDrawing() throws IOException {
        LenientReading reading = reading(replaced("rating: 40 A", "rating: 40"));
        HalfDrawn drawing = one(reading).drawing().orElseThrow();
        HalfDrawn whole = one(reading(SampleStudy.ONE)).drawing().orElseThrow();
        assertEquals(ids(whole), ids(drawing));
        assertEquals(whole.joins(), drawing.joins());
        assertEquals(List.of("alternator"), one(reading).findings().get(0).parts());
        assertEquals(List.of("one"), reading.broken());
        assertTrue(reading.sound().isEmpty());
    }

    @Test
    void partsWithoutAPlaceClassOrRatingAreDrawnAndSaidToBeStandIns() throws IOException {
        LenientReading reading =
                reading(
                        replaced("battery: {is: battery, zone: tail}", "battery: {is: battery}")
                                .replace(
                                        "  j1:",
                                        """
                                          lone: {is: breaker}
                                          odd: {is: diode, class: x}
                                          j1:\
                                        """));
        HalfDrawn drawing = one(reading).drawing().orElseThrow();
        assertTrue(ids(drawing).containsAll(List.of("battery", "lone", "odd")));
        assertEquals(Set.of("lone", "odd"), drawing.standIns());
    }

    @Test
    void aRunThatCannotBeMeasuredIsDrawnAllTheSame() throws IOException {
        LenientReading reading =
                reading(
                        replaced(
                                        "radio: from main-bus, breaker 5 A, return engine-ground",
                                        "radio: from stray, breaker 5 A")
                                .replace("  j1:", "  stray: {is: bus, zone: attic}\n  j1:"));
        HalfDrawn drawing = one(reading).drawing().orElseThrow();
        assertTrue(ids(drawing).contains("radio-breaker"));
        assertTrue(
                drawing.joins()
                        .contains(
                                new Join(
                                        new Terminal("radio-breaker", "out"),
                                        new Terminal("radio", "plus"))));
        FileFinding finding =
                one(reading).findings().stream()
                        .filter(f -> f.path().equals("feeds.radio"))
                        .findFirst()
                        .orElseThrow();
        assertTrue(finding.parts().containsAll(List.of("radio", "radio-breaker")));
    }

    @Test
    void findingsNameTheirParts() throws IOException {
        assertParts(
                "feeds:\n", "feeds:\n  ghost: from main-bus\n", "feeds.ghost", "ghost", "main-bus");
        assertParts(
                "  radio: from main-bus, breaker 5 A, return engine-ground\n",
                "",
                "feeds",
                "radio");
        assertParts("master: on, ", "", "positions.flight", "master");
        assertParts("selector: up", "selector: upp", "positions.flight.selector", "selector");
        assertParts("at: main-bus", "at: battery.side", "sees.lamp.at", "battery");
        assertParts("sheds: [radio]", "sheds: [pump]", "procedures.shed.sheds[0]", "pump");
        assertParts(
                "contactor.coil-plus, direct",
                "radio.bias, direct",
                "links.coil",
                "contactor",
                "radio");
        assertParts("panel: panel-ground", "panel: battery", "returns.panel", "battery");
    }

    private void assertParts(String old, String by, String path, String... parts)
            throws IOException {
        List<FileFinding> findings = one(reading(replaced(old, by))).findings();
        FileFinding found =
                findings.stream()
                        .filter(f -> f.mistake() && f.path().equals(path))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError(path + " among " + findings));
        assertEquals(List.of(parts), found.parts());
    }

    @Test
    void oneBrokenCandidateDoesNotKeepTheOthersFromBeingComputed() throws IOException {
        Files.writeString(folder.resolve("two.yaml"), SampleStudy.ONE);
        LenientReading reading = reading(replaced("rating: 40 A", "rating: 40"));
        assertTrue(reading.read().study().isEmpty());
        assertEquals(List.of("one"), reading.broken());
        assertEquals(
                List.of("two"),
                reading.sound().orElseThrow().candidates().stream().map(c -> c.id()).toList());
        assertTrue(reading.sound().orElseThrow().goals().baseline().isEmpty());
    }

    @Test
    void aMistakeInTheStudysOwnFileLeavesTheDrawings() throws IOException {
        Files.writeString(
                folder.resolve("study.yaml"),
                SampleStudy.STUDY.replace("tolerates: 500 ms", "tolerates: 500"));
        Files.writeString(folder.resolve("one.yaml"), SampleStudy.ONE);
        LenientReading reading = StudyReader.open(folder).reading();
        assertTrue(reading.sound().isEmpty());
        assertEquals("engine.tolerates", reading.findings().get(0).path());
    }

    @Test
    void anEmptyFileIsADrawingOfTheLoads() throws IOException {
        for (String text :
                List.of("", "candidate:", "parts: [", "# nothing\n", "- a\n- b\n", "{")) {
            HalfDrawn drawing = one(reading(text)).drawing().orElseThrow();
            assertEquals(List.of("computer", "pump", "radio"), ids(drawing), text);
        }
    }

    @Test
    void whateverLinesAreTakenOutThereIsADrawing() throws IOException {
        for (Path study :
                List.of(Path.of("architectures/sandpiper"), Path.of("architectures/first-steps"))) {
            thinnedOut(StudyReader.open(study));
        }
        for (Starter.StarterAnswers answers : Starter.startingPoints().values()) {
            for (var file : Starter.files(answers).entrySet()) {
                Files.writeString(folder.resolve(file.getKey()), file.getValue());
            }
            thinnedOut(StudyReader.open(folder));
        }
    }

    private static void thinnedOut(StudyReader reader) {
        SplittableRandom random = new SplittableRandom(7);
        LenientReading whole = reader.reading();
        assertTrue(whole.read().study().isPresent());
        for (String id : whole.candidates().keySet()) {
            YamlDocument document = reader.document(id);
            for (int round = 0; round < DELETIONS; round++) {
                String thinner = thinner(document.text(), random);
                LenientReading reading =
                        reader.with(YamlDocument.of(document.file(), thinner)).reading();
                CandidateReading read = requireNonNull(reading.candidates().get(id));
                assertDrawn(read, id + ", round " + round);
                assertEquals(read.isSound(), !reading.broken().contains(id));
                assertEquals(
                        reading.read().problems().size(),
                        reading.findings().stream().filter(FileFinding::mistake).count()
                                + reading.candidates().values().stream()
                                        .flatMap(c -> c.findings().stream())
                                        .filter(FileFinding::mistake)
                                        .count());
            }
        }
    }

    /** Every join holds at both ends, and every part that can be read is there. */
    private static void assertDrawn(CandidateReading read, String where) {
        HalfDrawn drawing = read.drawing().orElseThrow(() -> new AssertionError(where));
        Map<String, Part> parts =
                drawing.parts().stream().collect(Collectors.toMap(Part::id, p -> p));
        for (Join join : drawing.joins()) {
            for (Terminal end : List.of(join.one(), join.other())) {
                assertTrue(
                        parts.get(end.part()) != null
                                && parts.get(end.part()).terminals().contains(end.name()),
                        where + ": " + end);
            }
        }
        assertFalse(parts.isEmpty(), where);
    }

    private static String thinner(String text, SplittableRandom random) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        for (int n = random.nextInt(1, 4); n > 0; n--) {
            int from = random.nextInt(lines.size());
            int to = Math.min(lines.size(), from + random.nextInt(1, 4));
            lines.subList(from, to).clear();
        }
        return String.join("\n", lines) + "\n";
    }
}
