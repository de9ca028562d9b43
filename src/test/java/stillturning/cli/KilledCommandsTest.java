package stillturning.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.OwnProcess;
import stillturning.bench.Thorough;
import stillturning.cli.terminal.ExitCode;

/**
 * Commands that write, killed at any moment: every file is what a command that was let be makes of
 * it, or what stood there before, and the next command goes on as if nothing had happened. More
 * kills with {@code -Dkills=1000}.
 */
class KilledCommandsTest {

    private static final int KILLS = Integer.getInteger("kills", 30);
    private static final String STUDY = "small";
    private static final String OTHER = "other";
    private static final String KEPT = "kept.json";

    /** What the test itself may have been killed in. */
    private static final String COPY = ".copy";

    @TempDir private Path folder;

    /** Each writes other files; what it writes into is renewed by every round. */
    private static final List<List<String>> WRITERS =
            List.of(
                    List.of("explain", STUDY, "--html", "page.html"),
                    List.of("explain", STUDY, "--pdf", "paper.pdf", "--date", "2030-01-01"),
                    List.of("break", STUDY, "--failure", "main-bus short", "--plot", "plot.svg"),
                    List.of("break", STUDY, "--failure", "main-bus short", "--plot", "plot.png"),
                    List.of("break", STUDY, "--pairs", "--order", "1", "--resume", KEPT),
                    List.of("check", STUDY, "--export", "circuits"),
                    List.of("size", STUDY, "--csv", "tables"),
                    List.of("size", STUDY, "--candidate", "one-bus", "--labels", "labels.pdf"),
                    List.of("ground-test", STUDY, "--candidate", "one-bus", "--csv", "plan"),
                    List.of("record", STUDY, "--candidate", "one-bus", "--form", "form.yaml"),
                    List.of("new", "fresh"),
                    List.of("size", OTHER, "--candidate", "one-bus", "--propose", "--apply"));

    /** Runs all writers one after the other until somebody kills it, in another order each time. */
    static final class Writers {
        private Writers() {}

        public static void main(String... args) throws IOException {
            Path here = Path.of(args[0]);
            SplittableRandom random = new SplittableRandom(Long.parseLong(args[1]));
            while (true) {
                round(here, WRITERS.get(random.nextInt(WRITERS.size())));
                System.out.println("one more");
            }
        }
    }

    private static void round(Path here, List<String> words) throws IOException {
        if (words.get(0).equals("new")) {
            clear(here.resolve("fresh"));
        }
        if (words.get(0).equals("record")) {
            Files.deleteIfExists(here.resolve("form.yaml"));
        }
        if (words.contains("--apply")) {
            clear(here.resolve(OTHER));
            clear(here.resolve(COPY));
            Files.move(Session.in(here).copyOfFirstSteps(COPY), here.resolve(OTHER));
        }
        Session.Ran ran = Session.in(here).run(words.toArray(new String[0]));
        if (ran.code() > ExitCode.REQUIREMENT_MISSED) {
            throw new AssertionError(words + ": " + ran.err() + ran.out());
        }
    }

    private static void clear(Path what) throws IOException {
        if (Files.exists(what)) {
            try (Stream<Path> all = Files.walk(what)) {
                for (Path each : all.sorted((a, b) -> b.compareTo(a)).toList()) {
                    Files.delete(each);
                }
            }
        }
    }

    /** All that lies here, drafts too, by its name. */
    private static Map<String, String> inside(Path here) throws IOException {
        Map<String, String> found = new TreeMap<>();
        try (Stream<Path> all = Files.walk(here)) {
            all.filter(Files::isRegularFile)
                    .forEach(file -> found.put(here.relativize(file).toString(), content(file)));
        }
        return found;
    }

    private static String content(Path file) {
        try {
            return HexFormat.of().formatHex(Files.readAllBytes(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path fresh(Path here) throws IOException {
        Files.createDirectories(here);
        Session.in(here).copyOfFirstSteps(STUDY);
        Session.in(here).copyOfFirstSteps(OTHER);
        return here;
    }

    @Thorough
    @Test
    void whateverIsKilledFilesAreWholeAndTheNextCommandIsClean() throws Exception {
        Path undisturbed = fresh(folder.resolve("undisturbed"));
        Map<String, String> before = inside(undisturbed);
        for (List<String> words : WRITERS) {
            round(undisturbed, words);
        }
        Map<String, String> wanted = inside(undisturbed);
        Path here = fresh(folder.resolve("here"));
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < KILLS; i++) {
            kill(here, i, random.nextInt(1500));
            String which = "kill " + i;
            inside(here).forEach((name, text) -> assertWhole(name, text, before, wanted, which));
            for (List<String> words : WRITERS) {
                if (random.nextInt(KILLS) == 0 || i == KILLS - 1) {
                    round(here, words);
                }
            }
        }
        clear(here.resolve(COPY));
        assertEquals(wanted.keySet(), inside(here).keySet());
        assertEquals(wanted, inside(here));
    }

    private static void assertWhole(
            String name,
            String text,
            Map<String, String> before,
            Map<String, String> wanted,
            String which) {
        boolean hidden = Stream.of(name.split("/", -1)).anyMatch(part -> part.startsWith("."));
        if (!hidden) {
            assertTrue(wanted.containsKey(name), which + " left " + name);
            // work is kept as it goes; that it is sound is seen by the command that goes on with it
            boolean whole =
                    name.equals(KEPT)
                            || text.equals(wanted.get(name))
                            || text.equals(before.get(name));
            assertTrue(whole, which + ": " + name + " is neither old nor new");
        }
    }

    private void kill(Path here, int seed, int afterMillis) throws Exception {
        Process writers =
                OwnProcess.of(Writers.class, here.toString(), String.valueOf(seed))
                        .redirectError(folder.resolve("said").toFile())
                        .start();
        try (var said = writers.inputReader()) {
            if (said.readLine() == null) {
                throw new AssertionError(Files.readString(folder.resolve("said")));
            }
            writers.waitFor(afterMillis, TimeUnit.MILLISECONDS);
            assertTrue(writers.isAlive(), () -> Session.text(folder.resolve("said")));
            writers.destroyForcibly();
            assertTrue(writers.waitFor(20, TimeUnit.SECONDS));
        }
        assertFalse(writers.isAlive());
    }
}
