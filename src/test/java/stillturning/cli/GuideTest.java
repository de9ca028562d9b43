package stillturning.cli;

import static java.util.stream.Collectors.joining;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Effort;
import stillturning.bench.Thorough;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;
import stillturning.report.guide.Guide;
import stillturning.report.guide.GuidePage;

/**
 * Each example of the user's guide is what its command prints today. Renew them with {@code mvn -q
 * test -Dtest=GuideTest -Dguide.renew=true}, and read the difference.
 */
class GuideTest {

    private static final boolean RENEW = Boolean.getBoolean("guide.renew");
    private static final Path SOURCES =
            Path.of("src", "main", "resources", "stillturning", "report", "guide").toAbsolutePath();

    /** A block: what is shown of the answer, the command, the answer. */
    private static final Pattern BLOCK =
            Pattern.compile("```console (.*)\\n\\$ (.*)\\n(?s:.*?)```\\n");

    private static final Pattern PIECE = Pattern.compile("(first|at \"(.+)\") (\\d+)");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @TempDir private Path here = Path.of("");

    static List<GuidePage> pages() {
        return Guide.pages();
    }

    /** Those that assess the whole demo take longest. */
    private static final int MOST_DECIDED = Effort.cases(0, 100);

    static List<GuidePage> quickPages() {
        return pages().stream().filter(page -> RENEW || decided(page) <= MOST_DECIDED).toList();
    }

    private static long decided(GuidePage page) {
        return BLOCK.matcher(page.source())
                .results()
                .filter(block -> block.group(2).contains("decide sandpiper"))
                .count();
    }

    @Thorough
    @ParameterizedTest
    @MethodSource("quickPages")
    void examplesAreWhatTheProgramPrintsToday(GuidePage page) throws IOException {
        copyOfArchitectures();
        String today = BLOCK.matcher(page.source()).replaceAll(this::made);
        if (RENEW) {
            Files.writeString(SOURCES.resolve(page.name() + ".md"), today);
        } else {
            assertEquals(today, page.source());
        }
    }

    private String made(MatchResult block) {
        return Matcher.quoteReplacement(
                "```console "
                        + block.group(1)
                        + "\n$ "
                        + block.group(2)
                        + "\n"
                        + shown(block.group(1), answer(block.group(2)))
                        + "```\n");
    }

    private List<String> answer(String command) {
        Matcher word = WORD.matcher(command);
        List<String> words = new ArrayList<>();
        while (word.find()) {
            words.add(word.group(1) == null ? word.group(2) : word.group(1));
        }
        assertEquals("stillturning", words.remove(0), command);
        Ran ran = Session.in(here).run(words.toArray(new String[0]));
        assertTrue(ran.code() == ExitCode.FINE || ran.code() == 1, command + ": " + ran.err());
        return ran.lines();
    }

    private static String shown(String selection, List<String> answer) {
        Matcher piece = PIECE.matcher(selection);
        List<String> lines = new ArrayList<>();
        int end = 0;
        while (piece.find()) {
            int from = 0;
            String wanted = piece.group(2);
            if (wanted != null) {
                from = (int) answer.stream().takeWhile(line -> !line.contains(wanted)).count();
                assertTrue(from < answer.size(), "no line with " + wanted);
            }
            if (from > end) {
                lines.add("...");
            }
            end = Math.min(answer.size(), from + Integer.parseInt(piece.group(3)));
            lines.addAll(answer.subList(from, end));
        }
        assertFalse(lines.isEmpty(), "nothing is shown: " + selection);
        if (end < answer.size()) {
            lines.add("...");
        }
        return lines.stream().map(line -> line.stripTrailing() + "\n").collect(joining());
    }

    private void copyOfArchitectures() throws IOException {
        try (Stream<Path> files = Files.walk(Session.ARCHITECTURES)) {
            for (Path file : files.toList()) {
                Path to =
                        here.resolve("architectures")
                                .resolve(Session.ARCHITECTURES.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(file, to);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyPageIsAQuestionWithAnExampleThatFitsATerminal(GuidePage page) {
        assertTrue(page.question().endsWith("?"), page.question());
        assumeTrue(!RENEW);
        assertTrue(BLOCK.matcher(page.source()).find(), page.name() + " has no example");
        BLOCK.matcher(page.source())
                .replaceAll("")
                .lines()
                .forEach(line -> assertTrue(line.length() <= 100, page.name() + ": " + line));
    }

    @Test
    void theListNamesEveryPage() {
        String list = Session.in(here).run("guide").out();
        pages().forEach(page -> assertTrue(list.contains(page.name() + " "), list));
    }

    @Test
    void aPageIsFoundByItsNameAndByWordsOfItsQuestion() {
        String page = Session.in(here).run("guide", "how-long").out();
        assertTrue(page.startsWith("# How long"), page);
        assertEquals(page, Session.in(here).run("guide", "how", "long").out());
        assertFalse(page.contains("```console f"), page);
    }

    @Test
    void severalPagesThatSpeakOfItAreListed() {
        Ran ran = Session.in(here).run("guide", "breaker");
        assertTrue(ran.lines().size() > 3, ran.out());
    }

    @Test
    void whatNoPageSpeaksOfIsRefused() {
        Ran ran = Session.in(here).run("guide", "submarine");
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(ran.err().contains("'stillturning guide' lists the questions"), ran.err());
    }
}
