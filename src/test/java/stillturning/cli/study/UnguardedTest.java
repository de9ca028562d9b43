package stillturning.cli.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;
import stillturning.files.StudyReader;
import stillturning.files.value.Variation;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.sizing.Sizing;
import stillturning.sizing.SurveyDepth;
import stillturning.sizing.Unguarded;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;

class UnguardedTest {

    private static final String HEADING = "WRONG before anything fails";

    @TempDir private Path here;

    /** A breaker of 60 A before AWG 16: table 11-3 of AC 43.13-1B has 15 A for that size. */
    private Path burning() throws IOException {
        Path folder = Session.in(here).copyOfFirstSteps("mine");
        Path file = folder.resolve("one-bus.yaml");
        String text = Files.readString(file);
        String sound = "pump.a:     from main-bus, breaker 10 A";
        assertTrue(text.contains(sound), text);
        Files.writeString(
                file,
                text.replace(
                        sound,
                        "pump.a:     from main-bus, breaker 60 A, wire AWG 16, return panel-ground"));
        return folder;
    }

    private Ran run(String... words) {
        return Session.in(here).run(words);
    }

    private static String flat(Ran ran) {
        return ran.out().replaceAll("\\s+", " ");
    }

    @Test
    void aProtectorThatLetsItsWireBurnComesFirstAndTheAnswerFollows() throws IOException {
        burning();
        List<String[]> asked =
                List.of(
                        new String[] {"check", "mine"},
                        new String[] {"decide", "mine"},
                        new String[] {"break", "mine", "--failure", "main bus"});
        List<String> answers = List.of("Normal flight", "it breaks", "redundancy lost");
        for (int i = 0; i < asked.size(); i++) {
            Ran ran = run(asked.get(i));
            assertEquals(ExitCode.REQUIREMENT_MISSED, ran.code(), ran.err());
            String out = flat(ran).strip();
            assertTrue(out.startsWith(HEADING), out);
            assertTrue(
                    out.contains(
                            "pump-a-wire, AWG 16 (one-bus.yaml:18:44): pump-a-breaker (60.0 A)"
                                    + " protects nothing here"),
                    out);
            assertTrue(out.contains(answers.get(i)), out);
        }
        Ran size = run("size", "mine");
        assertEquals(ExitCode.REQUIREMENT_MISSED, size.code());
        assertTrue(flat(size).contains("WRONG pump a wire, AWG 16, 1.20 m"), size.out());
    }

    @Test
    void aCandidateWithoutSuchAProtectorIsAnsweredAsBefore() throws IOException {
        burning();
        Ran other = run("break", "mine", "--candidate", "bus-and-battery", "--failure", "main bus");
        assertEquals(ExitCode.FINE, other.code(), other.err());
        assertFalse(other.out().contains(HEADING), other.out());
    }

    @Test
    void sizesAloneAndTheWholeCheckOfSizesFindTheSameWires() throws Exception {
        var read = StudyReader.open(burning()).study(Variation.NONE);
        Study study = read.study().orElseThrow();
        Candidate candidate = study.candidate("one-bus").orElseThrow();
        List<String> alone = Unguarded.of(candidate).stream().map(SizeFinding::part).toList();
        List<String> whole =
                Sizing.of(study, candidate, read.sizes().installation(), SurveyDepth.NOTHING_WRONG)
                        .findings()
                        .stream()
                        .filter(f -> f.rule() == Rule.PROTECTS_NOTHING)
                        .map(SizeFinding::part)
                        .toList();
        assertEquals(whole.stream().sorted().toList(), alone.stream().sorted().toList());
        assertEquals(List.of("pump-a-wire"), alone);
    }
}
