package stillturning.cli.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.Thorough;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;

/** Two states of the small study held against each other. */
class SinceTest {

    @TempDir private Path here;
    private Path now = Path.of("");

    @BeforeEach
    void copyTheSmallStudyTwice() {
        Session.in(here).copyOfFirstSteps("then");
        now = Session.in(here).copyOfFirstSteps("now");
    }

    private String told(String since) {
        Ran ran = Session.in(here).run("explain", "now", "--html", "page.html", "--since", since);
        assertTrue(ran.code() == ExitCode.FINE || ran.code() == 1, ran.err());
        String out = ran.out();
        return out.substring(out.indexOf("What changed")).replaceAll("\\s+", " ");
    }

    @Thorough
    @Test
    void withoutAChangeItSaysSo() {
        String told = told("then");
        assertTrue(told.contains("Nothing that is written has changed."), told);
        assertTrue(told.contains("No outcome, requirement or criterion changed."), told);
    }

    /**
     * A third of the capacity: every endurance on the battery falls, and the requirement with it.
     */
    @Thorough
    @Test
    void aSmallerBatteryIsToldWithWhatFollows() {
        Path file = now.resolve("one-bus.yaml");
        Session.change(file, "capacity: 18 Ah", "capacity: 6 Ah");
        String told = told("then");
        assertTrue(told.contains("One value is written otherwise."), told);
        assertTrue(told.contains("parts.battery"), told);
        assertTrue(told.contains("18 Ah (guess)"), told);
        assertTrue(told.contains("6 Ah (guess)"), told);
        assertTrue(told.contains("MISSED now, was met"), told);
        assertTrue(told.contains("WORSE alternator: no output"), told);
        assertFalse(told.contains("better alternator"), told);
    }

    /** Comments and layout are no change of the study. */
    @Thorough
    @Test
    void aCommentIsNoChange() {
        Session.change(
                now.resolve("one-bus.yaml"),
                "positions: {flight: {}}",
                "positions: {flight: {}} # x");
        assertTrue(told("then").contains("Nothing that is written has changed."));
    }

    /** A copy of one file is enough where only that was changed. */
    @Thorough
    @Test
    void aCopyOfOneFileStandsForTheStateBefore() throws Exception {
        Path copy = here.resolve("kept").resolve("one-bus.yaml");
        Files.createDirectories(here.resolve("kept"));
        Files.copy(now.resolve("one-bus.yaml"), copy);
        Session.change(now.resolve("one-bus.yaml"), "fuse 40 A\n", "fuse 50 A\n");
        String told = told(copy.toString());
        assertTrue(told.contains("fuse 50 A"), told);
    }

    @Test
    void whatIsNoStateOfTheStudyIsRefused() throws Exception {
        Path other = Files.writeString(here.resolve("other.yaml"), "candidate: x\n");
        Ran ran = Session.in(here).run("explain", "now", "--since", other.toString());
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(ran.err().contains("the study has no file other.yaml"), ran.err());
        Ran gone = Session.in(here).run("explain", "now", "--since", "never");
        assertEquals(ExitCode.BAD_INPUT, gone.code());
    }
}
