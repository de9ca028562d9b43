package stillturning.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.assess.exchange.Exchange;
import stillturning.assess.exchange.Group;
import stillturning.bench.Effort;
import stillturning.files.Starter.AirframeStructure;
import stillturning.files.Starter.Counts;
import stillturning.files.Starter.LoadProtection;
import stillturning.files.Starter.Nominal;
import stillturning.files.Starter.StarterAnswers;
import stillturning.model.Candidate;
import stillturning.model.Installation;
import stillturning.model.Study;
import stillturning.parts.Part;
import stillturning.parts.element.Element;
import stillturning.sizing.Sizing;
import stillturning.sizing.SurveyDepth;
import stillturning.sizing.result.Rule.Gravity;
import stillturning.sizing.result.SizingReport;
import stillturning.story.NormalFlight;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

class StarterTest {

    @TempDir Path folder;

    static List<StarterAnswers> everyAnswer() {
        List<StarterAnswers> all = new ArrayList<>();
        for (int bits = 0; bits < 128; bits++) {
            Counts counts =
                    new Counts(
                            1 + (bits & 1),
                            1 + (bits >> 1 & 1),
                            1 + (bits >> 2 & 1),
                            1 + (bits >> 3 & 1));
            all.add(
                    new StarterAnswers(
                            "Bob's: #1 @14V@ \"new\"",
                            counts,
                            (bits & 16) == 0 ? LoadProtection.BREAKERS : LoadProtection.SOLID_STATE,
                            (bits & 32) == 0 ? Nominal.FOURTEEN_VOLTS : Nominal.TWENTY_EIGHT_VOLTS,
                            (bits & 64) == 0 ? AirframeStructure.METAL : AirframeStructure.NONE));
        }
        return all;
    }

    /** Every fifth has every two answers together, too. */
    static List<StarterAnswers> tried() {
        List<StarterAnswers> all = everyAnswer();
        return IntStream.range(0, all.size())
                .filter(i -> i % Effort.cases(5, 1) == 0)
                .mapToObj(all::get)
                .toList();
    }

    private static long kind(Candidate candidate, String word) {
        return candidate.parts().stream().filter(p -> p.kind().word().equals(word)).count();
    }

    private static boolean grounded(Candidate candidate) {
        return candidate.parts().stream()
                .flatMap(p -> p.elements().stream())
                .anyMatch(e -> e.to().equals(Element.STRUCTURE));
    }

    @ParameterizedTest
    @MethodSource("tried")
    void whateverIsAnsweredTheNewStudyReadsWithoutAProblem(StarterAnswers answers) {
        assertEquals(List.of(), Starter.write(folder.resolve("new"), answers));
        ReadStudy read = StudyReader.read(folder.resolve("new"));
        assertEquals("", SampleStudy.told(read));
        Study study = read.study().orElseThrow();
        assertEquals(answers.name(), study.heading().title());
        assertEquals(4, study.candidates().size());
        var pair = Starter.alternative(answers).stream().map(study::candidate).toList();
        assertNotEquals(
                kind(pair.get(0).orElseThrow(), "controller"),
                kind(pair.get(1).orElseThrow(), "controller"));
        var largest = study.candidate("two-engine-buses").orElseThrow();
        assertEquals(answers.counts().batteries(), kind(largest, "battery"));
        assertEquals(answers.counts().alternators(), kind(largest, "alternator"));
        study.candidates()
                .forEach(
                        c ->
                                assertEquals(
                                        answers.structure() == AirframeStructure.METAL,
                                        grounded(c)));
        double cruiseWatts =
                study.aircraft().loads().stream()
                        .mapToDouble(l -> l.averageAmps("cruise") * study.aircraft().nominalVolts())
                        .sum();
        // 1.2 + 2.5 + 3.5 + 5.5 A for the engine and 10.5 A for the pilot at 14 V, twice the
        // computer or the pump where there are two
        double amps =
                23.2
                        + (answers.counts().computers() - 1) * 1.2
                        + (answers.counts().pumps() - 1) * 5.5;
        assertEquals(amps * 14, cruiseWatts, 1e-9);
    }

    /** What a new study draws flies as drawn, in wood as in metal. */
    @ParameterizedTest
    @ValueSource(ints = {0, 15, 64 + 16 + 15})
    void aNewStudyIsWellWithNothingWrong(int answers) throws UntoldStory {
        assertEquals(List.of(), Starter.write(folder.resolve("new"), everyAnswer().get(answers)));
        Study study = StudyReader.read(folder.resolve("new")).study().orElseThrow();
        for (Candidate candidate : study.candidates()) {
            NormalFlight normal = new Timeline(study, candidate).normal();
            assertEquals(List.of(), normal.cuesShowing(), candidate.id());
            normal.busVolts().forEach((bus, volts) -> assertEquals(14, volts, 0.6, bus));
            SizingReport sizes =
                    Sizing.of(study, candidate, Installation.USUAL, SurveyDepth.NOTHING_WRONG);
            assertEquals(
                    List.of(),
                    sizes.findings().stream()
                            .filter(f -> f.rule().gravity() == Gravity.WRONG)
                            .toList(),
                    candidate.id());
        }
    }

    /** Breakers or electronic switching, and nothing else that differs. */
    @Test
    void theTwoKindsAreAlikeInAllThatProtectsNothing() {
        for (StarterAnswers answers : List.of(everyAnswer().get(0), everyAnswer().get(16))) {
            Path at = folder.resolve(answers.protection().name());
            assertEquals(List.of(), Starter.write(at, answers));
            Study study = StudyReader.read(at).study().orElseThrow();
            List<Candidate> pair =
                    Starter.alternative(answers).stream()
                            .map(id -> study.candidate(id).orElseThrow())
                            .toList();
            for (String alike : List.of("battery", "alternator", "contactor", "bus", "diode")) {
                assertEquals(parts(pair.get(0), alike), parts(pair.get(1), alike));
            }
            Set<Group> differences = Exchange.differences(pair.get(0), pair.get(1)).keySet();
            assertTrue(differences.contains(Group.SWITCHING), differences.toString());
            assertFalse(differences.contains(Group.BATTERIES), differences.toString());
            assertFalse(differences.contains(Group.CHARGING), differences.toString());
        }
    }

    private static List<Part> parts(Candidate candidate, String word) {
        return candidate.parts().stream().filter(p -> p.kind().word().equals(word)).toList();
    }

    @Test
    void everyStartingPointReadsWithoutAProblem() {
        Starter.startingPoints()
                .forEach(
                        (name, answers) -> {
                            Path at = folder.resolve(name);
                            assertEquals(List.of(), Starter.write(at, answers));
                            assertEquals("", SampleStudy.told(StudyReader.read(at)));
                        });
    }

    @Test
    void theFirstLineOfEachFileLeadsAnEditorToItsSchema() throws IOException {
        Path at = folder.resolve("new");
        assertEquals(List.of(), Starter.write(at, everyAnswer().get(0)));
        for (String name : Starter.files(everyAnswer().get(0)).keySet()) {
            String first = Files.readAllLines(at.resolve(name)).get(0);
            // the words by which language servers for YAML are told of a schema: common practice
            String lead = "# yaml-language-server: $schema=";
            assertTrue(first.startsWith(lead), first);
            Path schema = at.resolve(first.substring(lead.length()));
            String shipped = "/stillturning/files/" + schema.getFileName();
            try (var in = Starter.class.getResourceAsStream(shipped)) {
                assertArrayEquals(in.readAllBytes(), Files.readAllBytes(schema));
            }
        }
    }

    @Test
    void nothingIsEverOverwritten() throws IOException {
        Path file = Files.writeString(folder.resolve("notes.txt"), "mine");
        StarterAnswers answers = everyAnswer().get(0);
        assertEquals(1, Starter.write(folder, answers).size());
        assertEquals(
                "the folder is not empty: it holds notes.txt",
                Starter.write(folder, answers).get(0).wrong());
        assertTrue(Starter.write(file, answers).get(0).wrong().contains("cannot be written"));
        try (var all = Files.list(folder)) {
            assertEquals(List.of(file), all.toList());
        }
    }

    @Test
    void answersThatAreNoneAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Counts(0, 1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Counts(1, 1, 1, 3));
        Counts one = new Counts(1, 1, 1, 1);
        for (String name : List.of("", "  ", "two\nlines", "x".repeat(81))) {
            assertThrows(
                    IllegalArgumentException.class,
                    () ->
                            new StarterAnswers(
                                    name,
                                    one,
                                    LoadProtection.BREAKERS,
                                    Nominal.FOURTEEN_VOLTS,
                                    AirframeStructure.METAL));
        }
    }
}
