package stillturning.cli.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;

/** A study that asks for nothing: nobody is told that something is met. */
class NothingRequiredTest {

    private static final String NONE = "the study sets no hard requirement";

    @TempDir private Path here;

    @BeforeEach
    void askForNothing() throws IOException {
        Path study = Session.in(here).copyOfFirstSteps("mine").resolve("study.yaml");
        String text = Files.readString(study);
        String asked = "requirements: {endurance-without-charging: 30 min}\n";
        assertTrue(text.contains(asked), text);
        Files.writeString(study, text.replace(asked, ""));
    }

    private static void assertNothingIsMet(String told) {
        String flat = told.replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
        assertTrue(flat.contains(NONE), flat);
        assertFalse(flat.contains("every requirement"), flat);
        assertFalse(flat.contains("every hard requirement"), flat);
    }

    @Test
    void theTerminalSaysSo() {
        Ran ran = Session.in(here).run("decide", "mine");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertNothingIsMet(ran.out());
    }

    @Test
    void thePageSaysSo() {
        Session.in(here).run("explain", "mine", "--html", "page.html");
        assertNothingIsMet(Session.text(here.resolve("page.html")));
    }

    @Test
    void otherProgramsReadThatThereIsNone() {
        String json = Session.in(here).run("decide", "mine", "--json").out();
        assertTrue(json.contains("\"hardRequirements\" : 0"), json);
        assertFalse(json.contains("eets every requirement"), json);
    }
}
