package stillturning.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;

class NewCommandTest {

    @TempDir private Path here = Path.of("");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "--batteries 1 --charging-sources 2",
                "--computers 1 --pumps 1 --nominal 28V",
                "--protection solid",
                "--structure none"
            })
    void whateverIsAnsweredTheNewStudyHasNoProblem(String options) {
        Session session = Session.in(here);
        String[] words = ("new robin " + options).strip().split(" ", -1);
        Ran ran = session.run(words);
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(ran.out().startsWith("Written to robin: study.yaml, "), ran.out());
        Ran check = session.run("check", "robin");
        assertEquals(ExitCode.FINE, check.code(), check.out());
    }

    @Test
    void somebodyAtATerminalIsAskedAndMayAnswerByEnter() throws IOException {
        Session session = new Session(here, true, false);
        Ran ran = session.answering("1\n\n\n\nsolid state\n\nnone\n", "new", "robin");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(ran.out().contains("How many batteries? (2 or 1) [2] "), ran.out());
        assertTrue(ran.out().contains("Voltage while charging? (14 V or 28 V) [14 V] "), ran.out());
        String candidate = Files.readString(here.resolve("robin/main-bus.yaml"));
        assertTrue(candidate.contains("is: controller"), candidate);
        assertFalse(candidate.contains("battery-2:"), candidate);
        assertFalse(candidate.contains("on-structure: yes"), candidate);
    }

    @Test
    void itSaysHowToCompareBreakersAndElectronicSwitching() {
        Ran ran = Session.in(here).run("new", "robin");
        assertTrue(
                ran.out()
                        .contains(
                                "decide robin --between two-engine-buses"
                                        + " two-engine-buses-solid-state"),
                ran.out());
        assertTrue(Files.exists(here.resolve("robin/two-engine-buses-solid-state.yaml")));
    }

    @Test
    void anOptionTakesThePlaceOfTheQuestions() {
        Ran ran = new Session(here, true, false).answering("", "new", "robin", "--batteries", "2");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertFalse(ran.out().contains("?"), ran.out());
    }

    @Test
    void answersThatEndLeaveNothingBehind() {
        Ran ran = new Session(here, true, false).answering("2\n", "new", "robin");
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(ran.err().contains("nothing was written"), ran.err());
        assertFalse(Files.exists(here.resolve("robin")));
    }

    @Test
    void nothingIsEverOverwritten() throws IOException {
        Path precious = Files.createDirectories(here.resolve("robin")).resolve("study.yaml");
        Files.writeString(precious, "mine");
        Ran ran = Session.in(here).run("new", "robin");
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(ran.err().startsWith("stillturning: robin: the folder is not empty"), ran.err());
        assertEquals("mine", Files.readString(precious));
    }

    @Test
    void aFileInTheWayIsToldAndKept() throws IOException {
        Path file = Files.writeString(here.resolve("robin"), "mine");
        Ran ran = Session.in(here).run("new", "robin");
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertEquals("mine", Files.readString(file));
    }

    @Test
    void amongArchitecturesABareNameGoesThere() throws IOException {
        Files.createDirectories(here.resolve("architectures"));
        Session session = Session.in(here);
        assertTrue(session.run("new", "robin").out().startsWith("Written to architectures/robin:"));
        assertEquals(ExitCode.FINE, session.run("check", "robin").code());
    }

    @ParameterizedTest
    @CsvSource({
        "--batteries, 3, 'is none of: 2, 1'",
        "--protection, relays, 'is none of: breakers, solid-state'",
        "--nominal, 12 V, 'is none of: 14 V, 28 V'",
        "--structure, wood, 'is none of: metal, none'"
    })
    void anAnswerThatIsNoChoiceIsRefused(String option, String value, String told) {
        Ran ran = Session.in(here).run("new", "robin", option, value);
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(ran.err().contains(told), ran.err());
        assertFalse(Files.exists(here.resolve("robin")));
    }

    @Test
    void jsonNamesWhatWasWritten() {
        Ran ran = Session.in(here).run("new", "robin", "--json");
        assertEquals("robin", Session.tree(ran.out()).get("folder").asString());
        assertEquals("study.yaml", Session.tree(ran.out()).get("files").get(0).asString());
    }
}
