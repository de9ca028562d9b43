package stillturning.cli.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;

/** What the demo's answer has to say at once to somebody who doubts it. */
class SandpiperFirstScreenTest {

    @TempDir private Path here = Path.of("");

    @Test
    void itFitsOnOneScreenAndSaysWhatBatteriesDecideAndWhatTheFirstCannotDo() {
        Ran ran =
                Session.in(here)
                        .run("decide", Session.ARCHITECTURES.resolve("sandpiper").toString());
        FirstScreenTest.assertScreen(ran);
        String out = ran.out().replaceAll("\\s+", " ");
        assertTrue(
                out.contains(
                        "before \"Split batteries, breakers\"; with equal batteries: level,"
                                + " but \"Two alternators, two batteries, cross-tie\" first where"
                                + " both have its batteries."),
                out);
        assertTrue(
                out.contains(
                        "Batteries make 0.102 of the 0.102 points before \"Split batteries,"
                                + " breakers\"; with equal ones that one draws level."),
                out);
        assertTrue(
                out.contains(
                        "differ in batteries (main battery, engine battery) and not in layout"),
                out);
        assertTrue(
                out.contains(
                        "It does not start in the cold with tired batteries: main battery"
                                + " disconnects itself"),
                out);
        assertTrue(out.contains(" size limits are broken with nothing wrong"), out);
        assertTrue(ran.out().contains("\n7 "), ran.out());
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
    }
}
