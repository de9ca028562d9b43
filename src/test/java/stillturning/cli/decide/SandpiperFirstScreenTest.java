package stillturning.cli.decide;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;

/**
 * What the demo's answer has to say at once to somebody who doubts it. It is kept in {@code
 * reports}; {@code FrozenReportsTest} holds that the program prints it today and ends well.
 */
class SandpiperFirstScreenTest {

    @Test
    void itFitsOnOneScreenAndSaysWhatBatteriesDecideAndWhatTheFirstCannotDo() {
        String kept = Session.text(Path.of("reports", "sandpiper-decide.txt"));
        Ran ran = new Ran(ExitCode.FINE, kept, "");
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
    }
}
