package stillturning.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;

class MainTest {

    @TempDir private Path here = Path.of("");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "new",
                "check",
                "decide",
                "explore",
                "break",
                "ground-test",
                "record",
                "suggest",
                "explain",
                "guide",
                "schema",
                "completion"
            })
    void theHelpOfEveryCommandHasAnExampleAndTheExitCodes(String command) {
        Ran ran = Session.in(here).run(command, "--help");
        assertEquals(ExitCode.FINE, ran.code());
        String examples = ran.out().substring(ran.out().indexOf("Examples:"));
        assertTrue(examples.contains("stillturning " + command), ran.out());
        assertTrue(ran.out().contains("  3   internal error"), ran.out());
        assertTrue(ran.lines().stream().allMatch(line -> line.length() <= 100), ran.out());
        assertEquals("", ran.err());
    }

    @Test
    void theProgramsHelpNamesEveryCommand() {
        String help = Session.in(here).run("--help").out();
        for (String command :
                new String[] {
                    "new", "check", "decide", "explore", "break", "ground-test", "record", "suggest"
                }) {
            assertTrue(help.contains("\n  " + command + " "), help);
        }
    }

    /** Described by itself, as it runs, it is what it is among all of them. */
    @Test
    void aCommandThatIsNamedFirstIsTheSameAsAfterAnOption() {
        for (String command : Main.definition().subcommands().keySet()) {
            Ran alone = Session.in(here).run(command, "--help");
            Ran among = Session.in(here).run("--stacktrace", command, "--help");
            assertEquals(among.out(), alone.out());
            assertEquals(ExitCode.FINE, alone.code());
        }
    }

    @ParameterizedTest
    @CsvSource({
        "'', a command is missing: one of new",
        "decid x, Did you mean: stillturning decide",
        "decide, Missing required parameter",
        "decide a b, Unmatched argument",
        "decide a --jsn, Possible solutions: --json",
        "break a --pilot asleep, Invalid value for option",
        "check, stillturning check --help"
    })
    void wrongUseIsToldOnTheErrorStream(String words, String told) {
        String[] args = words.isEmpty() ? new String[0] : words.split(" ", -1);
        Ran ran = Session.in(here).run(args);
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(ran.err().contains(told), ran.err());
        assertEquals("", ran.out());
    }

    @Test
    void theVersionIsOneLine() {
        Ran ran = Session.in(here).run("--version");
        assertEquals(ExitCode.FINE, ran.code());
        assertTrue(ran.out().startsWith("stillturning "), ran.out());
        assertEquals(1, ran.lines().size());
    }

    @Test
    void completionIsAScriptThatKnowsEveryCommand() {
        String script = Session.in(here).run("completion").out();
        assertTrue(script.startsWith("#!"), script);
        assertTrue(
                script.contains(
                        "new check decide explore break run-up ground-test record suggest explain"
                                + " size desktop guide schema completion"),
                script);
    }

    @Test
    void aFaultOfTheProgramIsOneLineThatSaysHowToReportIt() {
        Ran ran = brokenOut("check", Session.ARCHITECTURES.resolve("first-steps").toString());
        assertEquals(ExitCode.INTERNAL, ran.code());
        assertEquals(1, ran.err().lines().count(), ran.err());
        assertTrue(
                ran.err()
                        .startsWith(
                                "stillturning: internal error: java.lang.IllegalStateException:"
                                        + " no paper; this is a fault of the program"),
                ran.err());
    }

    @Test
    void theStackTraceIsShownWhenAskedFor() {
        Ran ran =
                brokenOut(
                        "check",
                        Session.ARCHITECTURES.resolve("first-steps").toString(),
                        "--stacktrace");
        assertEquals(ExitCode.INTERNAL, ran.code());
        assertTrue(ran.err().contains("\tat stillturning.cli."), ran.err());
    }

    private Ran brokenOut(String... words) {
        StringWriter err = new StringWriter();
        PrintWriter broken =
                new PrintWriter(new StringWriter()) {
                    @Override
                    public void print(String text) {
                        throw new IllegalStateException("no paper");
                    }
                };
        CommandContext context =
                new CommandContext(
                        broken,
                        new PrintWriter(err),
                        new BufferedReader(new StringReader("")),
                        false,
                        false,
                        here);
        return new Ran(Main.run(context, words), "", err.toString());
    }

    @Test
    void thePublicDoorRunsInTheCurrentFolder() {
        StringWriter out = new StringWriter();
        int code =
                Main.run(
                        new PrintWriter(out),
                        new PrintWriter(new StringWriter()),
                        InputStream.nullInputStream(),
                        false,
                        "check",
                        "first-steps");
        assertEquals(ExitCode.FINE, code);
        assertTrue(out.toString().startsWith("First steps: no problem in 2 candidates"));
        assertFalse(out.toString().contains("\u001B"));
    }
}
