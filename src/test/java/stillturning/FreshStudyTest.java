package stillturning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Effort;
import stillturning.files.ReadStudy;
import stillturning.files.Starter;
import stillturning.files.Starter.AirframeStructure;
import stillturning.files.Starter.Counts;
import stillturning.files.Starter.LoadProtection;
import stillturning.files.Starter.Nominal;
import stillturning.files.Starter.StarterAnswers;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.report.sizes.FindingWords;
import stillturning.sizing.Sizing;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.story.UntoldStory;

/** What a new study begins with is sized as a builder would size it. */
class FreshStudyTest {

    @TempDir Path folder;

    static List<StarterAnswers> answers() {
        List<StarterAnswers> all = new ArrayList<>();
        for (Nominal nominal : Nominal.values()) {
            for (AirframeStructure structure : AirframeStructure.values()) {
                for (int count = Effort.cases(2, 1); count <= 2; count++) {
                    Counts counts = new Counts(count, count, count, count);
                    all.add(
                            new StarterAnswers(
                                    "new", counts, LoadProtection.BREAKERS, nominal, structure));
                }
            }
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("answers")
    void noLimitIsBroken(StarterAnswers answers) throws UntoldStory {
        assertEquals(List.of(), Starter.write(folder.resolve("new"), answers));
        ReadStudy read = StudyReader.read(folder.resolve("new"));
        for (Candidate candidate : read.study().orElseThrow().candidates()) {
            assertEquals(List.of(), wrong(read, candidate), candidate.id());
        }
    }

    /** The starter's current returns by a strap; whatever is grounded behind it lies beside it. */
    @Test
    void aGroundThatIsNotOnTheMetalHasTheStarterReturnThroughWhatIsChafed()
            throws IOException, UntoldStory {
        ReadStudy read =
                changed(
                        text ->
                                text.replace("zone: aft, on-structure: yes", "zone: aft")
                                        .replace(
                                                "links:\n",
                                                "links:\n"
                                                        + "  strap: from aft-ground to"
                                                        + " engine-ground, wire AWG 4\n"));
        Candidate candidate = read.study().orElseThrow().candidate("main-bus").orElseThrow();
        List<SizeFinding> wrong = wrong(read, candidate);
        assertTrue(wrong.stream().anyMatch(f -> f.part().equals("start-coil-ground-wire")));
        for (SizeFinding finding : wrong) {
            assertEquals(Rule.STRAY_RETURN, finding.rule(), finding.part());
            assertEquals(
                    "join its ground to the metal there, so that nothing returns through it, or"
                            + " keep it off the metal",
                    FindingWords.mend(finding));
        }
    }

    /** A fuse for what flies does not stand what the starter draws. */
    @Test
    void aStarterIsNotLedThroughTheFuseOfTheMainBus() throws IOException, UntoldStory {
        ReadStudy read =
                changed(
                        text ->
                                text.replace(
                                        "start-lead:       from main-contactor",
                                        "start-lead:       from main-bus"));
        Candidate candidate = read.study().orElseThrow().candidate("main-bus").orElseThrow();
        SizeFinding finding =
                wrong(read, candidate).stream()
                        .filter(f -> f.rule() == Rule.CRANKING_DUTY)
                        .findFirst()
                        .orElseThrow();
        assertEquals("main-lead-fuse", finding.part());
        assertTrue(finding.found() > 100 && finding.allowed() < 100, finding.toString());
    }

    /** A new study of metal, its simplest candidate changed. */
    private ReadStudy changed(UnaryOperator<String> change) throws IOException {
        StarterAnswers metal =
                answers().stream()
                        .filter(a -> a.structure() == AirframeStructure.METAL)
                        .findFirst()
                        .orElseThrow();
        assertEquals(List.of(), Starter.write(folder.resolve("new"), metal));
        Path file = folder.resolve("new").resolve("main-bus.yaml");
        String before = Files.readString(file);
        String after = change.apply(before);
        assertNotEquals(before, after);
        Files.writeString(file, after);
        return StudyReader.read(folder.resolve("new"));
    }

    private static List<SizeFinding> wrong(ReadStudy read, Candidate candidate) throws UntoldStory {
        Study study = read.study().orElseThrow();
        return Sizing.of(study, candidate, read.sizes().installation()).findings().stream()
                .filter(f -> f.rule().gravity() == Rule.Gravity.WRONG)
                .toList();
    }
}
