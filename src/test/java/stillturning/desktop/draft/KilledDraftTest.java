package stillturning.desktop.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.OwnProcess;
import stillturning.bench.Thorough;
import stillturning.desktop.viewmodel.Settings;
import stillturning.desktop.viewmodel.SettingsFile;

/**
 * The desktop's writers, killed at any moment: every file is whole, its copy before too, and what
 * was saved or kept before the kill is there when the study is opened again. More kills with {@code
 * -Dkills=1000}.
 */
class KilledDraftTest {

    private static final int KILLS = Integer.getInteger("kills", 10);
    private static final String ONE_BUS = "one-bus.yaml";
    private static final Pattern MARK = Pattern.compile("# ([0-9]+)\n$");

    @TempDir private Path study;
    @TempDir private Path kept;
    private String bare = "";

    @BeforeEach
    void copyAStudy() throws IOException {
        Studies.copy("first-steps", study);
        bare = Files.readString(study.resolve(ONE_BUS));
    }

    /** Edits until it is killed: each time the next number behind the text, saved or only kept. */
    static final class Editing {
        private Editing() {}

        public static void main(String... args) throws Exception {
            Path study = Path.of(args[0]);
            Path kept = Path.of(args[1]);
            SplittableRandom random = new SplittableRandom(Long.parseLong(args[2]));
            ScheduledExecutorService executor = Executors.newSingleThreadScheduledExecutor();
            JournalPolicy policy = new JournalPolicy(kept, executor, Clock.systemUTC());
            while (true) {
                Draft draft = opened(study, policy);
                write(draft, number(draft) + 1);
                if (random.nextBoolean()) {
                    if (!draft.save().isEmpty()) {
                        throw new AssertionError(draft.state().problems());
                    }
                    System.out.println(number(draft));
                    draft.close();
                } else {
                    draft.leave();
                    System.out.println(number(draft));
                }
                remember(kept, random.nextInt(100, 200));
            }
        }

        private static void write(Draft draft, int number) throws Exception {
            String text = Objects.requireNonNull(draft.state().texts().get(ONE_BUS));
            Matcher mark = MARK.matcher(text);
            String rest = mark.find() ? text.substring(0, mark.start()) : text;
            draft.make(Change.typing(ONE_BUS, rest + "# " + number + "\n"));
        }

        private static void remember(Path kept, int percent) throws IOException {
            SettingsFile file = new SettingsFile(kept.resolve("settings.properties"));
            Settings usual = Settings.USUAL;
            file.write(
                    new Settings(
                            usual.paper(),
                            percent,
                            usual.units(),
                            List.of("/a", "/b"),
                            Optional.empty(),
                            usual.beside()));
        }
    }

    /** The study with all unsaved work that was kept. */
    private static Draft opened(Path study, JournalPolicy policy) throws IOException {
        Draft draft = Draft.open(study, policy);
        for (Recovered recovered : draft.recovered()) {
            Outside outside = draft.take(recovered);
            if (!outside.conflicts().isEmpty()) {
                throw new AssertionError(outside.conflicts());
            }
        }
        return draft;
    }

    private static int number(Draft draft) {
        return number(Objects.requireNonNull(draft.state().texts().get(ONE_BUS)));
    }

    private static int number(String text) {
        Matcher mark = MARK.matcher(text);
        return mark.find() ? Integer.parseInt(mark.group(1)) : 0;
    }

    @Thorough
    @Test
    void whatWasSavedOrKeptIsThereWhateverIsKilled() throws Exception {
        SplittableRandom random = new SplittableRandom(7);
        ScheduledExecutorService executor = Executors.newSingleThreadScheduledExecutor();
        JournalPolicy policy = new JournalPolicy(kept, executor, Clock.systemUTC());
        try {
            int told = 0;
            for (int i = 0; i < KILLS; i++) {
                told = Math.max(told, kill(i, random.nextInt(400)));
                assertWhole("kill " + i);
                try (Draft draft = opened(study, policy)) {
                    assertEquals(List.of(), draft.state().problems(), "kill " + i);
                    int there = number(draft);
                    assertTrue(there >= told, "kill " + i + ": " + there + " of " + told);
                    told = there;
                    assertEquals(List.of(), draft.save(), "kill " + i);
                }
                assertEquals(told, number(Files.readString(study.resolve(ONE_BUS))), "kill " + i);
            }
            assertTrue(told >= KILLS, told + " edits");
        } finally {
            executor.shutdownNow();
        }
    }

    private void assertWhole(String which) throws IOException {
        for (String name : List.of(ONE_BUS, ONE_BUS + "~")) {
            Path file = study.resolve(name);
            String text = Files.exists(file) ? Files.readString(file) : bare;
            String rest = MARK.matcher(text).replaceFirst("");
            assertEquals(bare, rest, which + ": " + name);
        }
        Path settings = kept.resolve("settings.properties");
        if (Files.exists(settings)) {
            Settings read = new SettingsFile(settings).read();
            assertEquals(List.of("/a", "/b"), read.recent(), which);
        }
    }

    /** The last number that the editor told of before it was killed. */
    private int kill(int seed, int afterMillis) throws Exception {
        Path said = kept.resolve("said");
        Path told = kept.resolve("told");
        Process editing =
                OwnProcess.of(
                                Editing.class,
                                study.toString(),
                                kept.toString(),
                                String.valueOf(seed))
                        .redirectError(said.toFile())
                        .redirectOutput(told.toFile())
                        .start();
        for (int i = 0; i < 600 && Files.size(told) == 0 && editing.isAlive(); i++) {
            Thread.sleep(50);
        }
        editing.waitFor(afterMillis, TimeUnit.MILLISECONDS);
        assertTrue(editing.isAlive(), Files.readString(said));
        editing.destroyForcibly();
        assertTrue(editing.waitFor(20, TimeUnit.SECONDS));
        List<String> whole =
                Files.readString(told).lines().filter(line -> line.matches("[0-9]+")).toList();
        return Integer.parseInt(whole.get(whole.size() - 1));
    }
}
