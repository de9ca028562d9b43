package stillturning.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Effort;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;

/** No output shows what only a computer calls a number: an infinity, no number, a minus zero. */
class PrintedNumbersTest {

    private static final Path CASES =
            Path.of("src", "test", "resources", "stillturning", "cases").toAbsolutePath();

    private static final Pattern NO_NUMBER =
            Pattern.compile("Infinity|NaN|\\u221e|(?<![\\w.)-])-0(\\.0+)?(?![\\w.])");

    /** The program of a page, which may name what it must not show. Its data are looked at. */
    private static final Pattern PROGRAM = Pattern.compile("(?s)<script>.*?</script>");

    @TempDir private Path here;

    private static List<String> strange(String page) {
        String text = PROGRAM.matcher(page).replaceAll("");
        List<String> found = new ArrayList<>();
        Matcher matcher = NO_NUMBER.matcher(text);
        while (matcher.find()) {
            int from = Math.max(0, matcher.start() - 60);
            found.add(text.substring(from, Math.min(text.length(), matcher.end() + 30)));
        }
        return found;
    }

    @Test
    void thePatternSeesWhatItLooksFor() {
        assertEquals(1, strange("battery -0.0 A").size());
        assertEquals(1, strange("drops Infinity V").size());
        assertEquals(1, strange("\"amps\" : -0").size());
        assertEquals(1, strange("<script type=\"a/b\">[-0]</script><script>NaN</script>").size());
        assertEquals(0, strange("-0.05 A, 10-0.5, part-0, AWG 2/0, -10.0").size());
    }

    @Test
    void noneIsInTheKeptResults() throws IOException {
        try (DirectoryStream<Path> files =
                Files.newDirectoryStream(Path.of("reports"), "*.{txt,html,svg}")) {
            for (Path file : files) {
                assertEquals(List.of(), strange(Files.readString(file)), file.toString());
            }
        }
    }

    /** Those that are told longest last. */
    static Stream<String> studies() {
        return Stream.of(
                        "first-steps",
                        "automatic-gauges",
                        "shared-first-place",
                        "isolator",
                        "chattering-converter",
                        "floating-converter")
                .limit(Effort.cases(1, 6));
    }

    @ParameterizedTest
    @MethodSource("studies")
    void noneIsInAnyAnswerAboutAKeptCase(String study) throws IOException {
        copy(study);
        List<String[]> asked =
                List.of(
                        new String[] {"check", "mine", "--expanded"},
                        new String[] {"check", "mine", "--json"},
                        new String[] {"size", "mine", "--csv", "tables"},
                        new String[] {"decide", "mine", "--json"},
                        new String[] {"break", "mine"},
                        new String[] {"explain", "mine", "--html", "page.html"});
        for (String[] words : asked) {
            Ran ran = Session.in(here).run(words);
            String which = study + ": " + String.join(" ", words);
            assertTrue(
                    ran.code() == ExitCode.FINE || ran.code() == ExitCode.REQUIREMENT_MISSED,
                    which + ran.err());
            assertEquals(List.of(), strange(ran.out()), which);
            assertEquals(List.of(), strange(ran.err()), which);
        }
        assertEquals(List.of(), strange(Session.text(here.resolve("page.html"))), study);
        try (DirectoryStream<Path> tables = Files.newDirectoryStream(here.resolve("tables"))) {
            for (Path table : tables) {
                assertEquals(List.of(), strange(Files.readString(table)), table.toString());
            }
        }
    }

    private void copy(String study) throws IOException {
        if (study.equals("first-steps")) {
            Session.in(here).copyOfFirstSteps("mine");
            return;
        }
        Path into = Files.createDirectories(here.resolve("mine"));
        try (DirectoryStream<Path> files = Files.newDirectoryStream(CASES.resolve(study))) {
            for (Path file : files) {
                Files.copy(file, into.resolve(file.getFileName()));
            }
        }
    }
}
