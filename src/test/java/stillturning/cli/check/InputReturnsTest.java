package stillturning.cli.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;

/** A load with two inputs: one return for both, or one for each. */
class InputReturnsTest {

    @TempDir private Path here;
    private Path file = Path.of("");

    @BeforeEach
    void copy() {
        file = Session.in(here).copyOfFirstSteps("mine").resolve("bus-and-battery.yaml");
    }

    private void eachItsOwn() throws IOException {
        String text = Files.readString(file);
        String a = "computer.a: from main-bus, breaker 7.5 A";
        String b = "computer.b: from battery, fuse 10 A";
        assertTrue(text.contains(a) && text.contains(b), text);
        Files.writeString(
                file,
                text.replace(a, a + ", return panel-ground")
                        .replace(b, b + ", return engine-ground"));
    }

    private String run(String... words) {
        Ran ran = Session.in(here).run(words);
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        return ran.out().replaceAll("\\s+", " ");
    }

    private String lost(String failure) {
        return run("break", "mine", "--candidate", "bus-and-battery", "--failure", failure);
    }

    @Test
    void oneForBothIsSaidInWordsAndEndsTheEngineAlone() {
        String out = run("check", "mine", "--expanded");
        assertTrue(out.contains("the only return of the inputs a and b"), out);
        assertTrue(lost("computer-return: open").contains("engine lost"));
    }

    @Test
    void oneForEachIsAWireForEachAndNeitherEndsTheEngine() throws IOException {
        eachItsOwn();
        String out = run("check", "mine", "--expanded");
        assertTrue(out.contains("computer-a-return (wire)"), out);
        assertTrue(out.contains("computer-b-return (wire)"), out);
        for (String side : new String[] {"a", "b"}) {
            String told = lost("computer-" + side + "-return: open");
            assertFalse(told.contains("engine lost"), told);
        }
        assertFalse(run("size", "mine").contains("computer-a-return, AWG"), "no limit is broken");
    }
}
