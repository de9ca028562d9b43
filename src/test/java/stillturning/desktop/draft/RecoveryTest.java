package stillturning.desktop.draft;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.github.difflib.DiffUtils;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.snakeyaml.engine.v2.api.LoadSettings;
import stillturning.desktop.draft.Recovered.UnsavedFile;
import stillturning.files.edit.ChangeRefused;

class RecoveryTest {

    private static final String ONE_BUS = "one-bus.yaml";

    @TempDir Path folder;
    @TempDir Path kept;
    private final MovingClock clock = new MovingClock();
    private final ByHand executor = new ByHand();

    @BeforeEach
    void copyAStudy() throws IOException {
        Studies.copy("first-steps", folder);
    }

    @AfterEach
    void stop() {
        executor.close();
    }

    /** Edits in another process until it is killed; arguments: study, folder of kept work. */
    public static final class Editing {
        private Editing() {}

        public static void main(String[] arguments) throws Exception {
            ScheduledExecutorService executor = Executors.newSingleThreadScheduledExecutor();
            JournalPolicy keeping =
                    new JournalPolicy(Path.of(arguments[1]), executor, Clock.systemUTC());
            Draft draft = Draft.open(Path.of(arguments[0]), keeping);
            edit(draft, "18 Ah", "16 Ah");
            draft.make(
                    new Change(
                            "More",
                            List.of(
                                    new DraftStep.Create("fresh.yaml", "candidate: fresh ± ü\n"),
                                    new DraftStep.Delete("bus-and-battery.yaml"))));
            while (true) {
                String text = draft.state().texts().get(ONE_BUS);
                draft.make(Change.typing(ONE_BUS, text + "#"));
                Thread.sleep(5);
            }
        }
    }

    private static void edit(Draft draft, String from, String to) throws ChangeRefused {
        String text = requireNonNull(draft.state().texts().get(ONE_BUS));
        DraftStep step = new DraftStep.Replace(ONE_BUS, text.replace(from, to));
        draft.make(new Change("Edit", List.of(step)));
    }

    private Draft open() throws IOException {
        return Draft.open(folder, new JournalPolicy(kept, executor, clock));
    }

    private List<Path> keptFiles() throws IOException {
        try (Stream<Path> files = Files.list(kept)) {
            return files.filter(f -> f.toString().endsWith(".journal")).toList();
        }
    }

    /** As if the program had been killed: nobody holds the journal, and it is still there. */
    private void leaveUnsaved() throws Exception {
        Process process = startEditing();
        try {
            waitForJournal();
        } finally {
            process.destroyForcibly().waitFor();
        }
    }

    private Process startEditing() throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        classPath(),
                        Editing.class.getName(),
                        folder.toString(),
                        kept.toString())
                .redirectErrorStream(true)
                .start();
    }

    /** Where the classes that editing needs come from. */
    private static String classPath() {
        return Stream.of(
                        Editing.class,
                        Draft.class,
                        DiffUtils.class,
                        LoadSettings.class,
                        NullMarked.class)
                .map(
                        c ->
                                Path.of(
                                        URI.create(
                                                String.valueOf(
                                                        c.getProtectionDomain()
                                                                .getCodeSource()
                                                                .getLocation()))))
                .map(Path::toString)
                .distinct()
                .collect(Collectors.joining(File.pathSeparator));
    }

    private void waitForJournal() throws Exception {
        for (int i = 0; i < 300 && keptFiles().isEmpty(); i++) {
            Thread.sleep(50);
        }
        Thread.sleep(300);
    }

    @Test
    void aProgramThatIsKilledInMidEditLosesNothingOlderThanASecond() throws Exception {
        Process process = startEditing();
        try {
            waitForJournal();
            assertTrue(process.isAlive(), output(process));
            try (Draft second = open()) {
                assertEquals(List.of(), second.recovered(), "somebody is still working on it");
            }
        } finally {
            process.destroyForcibly().waitFor(10, TimeUnit.SECONDS);
        }
        try (Draft draft = open()) {
            Recovered found = draft.recovered().get(0);
            assertEquals(
                    List.of(
                            new UnsavedFile("bus-and-battery.yaml", true, false),
                            new UnsavedFile("fresh.yaml", false, false),
                            new UnsavedFile(ONE_BUS, false, false)),
                    found.files());
            assertTrue(draft.take(found).conflicts().isEmpty());
            assertTrue(requireNonNull(draft.state().texts().get(ONE_BUS)).contains("16 Ah"));
            assertEquals("candidate: fresh ± ü\n", draft.state().texts().get("fresh.yaml"));
            assertFalse(draft.state().texts().containsKey("bus-and-battery.yaml"));
            assertEquals(Optional.of("Take up unsaved work"), draft.state().undo());
            assertEquals(1, keptFiles().size(), "kept on as this program's own");
            assertEquals(List.of(), draft.save());
            assertEquals(List.of(), keptFiles());
        }
    }

    private static String output(Process process) throws IOException {
        if (process.isAlive()) {
            return "";
        }
        try (BufferedReader out =
                new BufferedReader(
                        new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            return String.join("\n", out.lines().toList());
        }
    }

    @Test
    void workOnAFileThatChangedMeanwhileIsMergedOrAsked() throws Exception {
        leaveUnsaved();
        Path file = folder.resolve(ONE_BUS);
        Files.writeString(file, Files.readString(file).replace("18 Ah", "20 Ah"));
        try (Draft draft = open()) {
            Recovered found = draft.recovered().get(0);
            assertTrue(found.files().get(2).diskChanged());
            Conflict conflict = draft.take(found).conflicts().get(0);
            assertTrue(conflict.mine().orElseThrow().contains("16 Ah"));
            assertTrue(conflict.theirs().orElseThrow().contains("20 Ah"));
            draft.resolve(conflict, Conflict.KeptText.MINE);
            assertEquals(List.of(), draft.save());
            assertTrue(Files.readString(file).contains("16 Ah"));
        }
    }

    @Test
    void droppedWorkIsNotOfferedAgainAndWorkThatIsLeftIs() throws Exception {
        leaveUnsaved();
        try (Draft draft = open()) {
            assertEquals(1, draft.recovered().size());
            assertTrue(draft.state().isSaved());
        }
        try (Draft draft = open()) {
            draft.drop(draft.recovered().get(0));
        }
        try (Draft draft = open()) {
            assertEquals(List.of(), draft.recovered());
        }
        assertEquals(List.of(), keptFiles());
    }

    @Test
    void whatIsUnsavedIsKeptAndTakenAwayWhenItIsSavedOrClosed() throws Exception {
        try (Draft draft = open()) {
            edit(draft, "18 Ah", "16 Ah");
            executor.runAll();
            assertEquals(1, keptFiles().size());
            draft.undo();
            executor.runAll();
            assertEquals(List.of(), keptFiles());
            draft.redo();
            executor.runAll();
            assertEquals(List.of(), draft.save());
            assertEquals(List.of(), keptFiles());
            draft.undo();
            executor.runAll();
            assertEquals(1, keptFiles().size());
        }
        assertEquals(List.of(), keptFiles());
    }

    @Test
    void twoDraftsOfOneStudyKeepTheirWorkApart() throws Exception {
        try (Draft one = open();
                Draft other = open()) {
            edit(one, "18 Ah", "16 Ah");
            edit(other, "18 Ah", "20 Ah");
            executor.runAll();
            assertEquals(2, keptFiles().size());
            try (Draft third = open()) {
                assertEquals(List.of(), third.recovered());
            }
            assertEquals(2, keptFiles().size());
        }
    }

    @Test
    void damagedWorkIsPutAsideAndTold() throws Exception {
        leaveUnsaved();
        Path journal = keptFiles().get(0);
        byte[] bytes = Files.readAllBytes(journal);
        Files.write(journal, Arrays.copyOf(bytes, bytes.length / 2));
        try (Draft draft = open()) {
            assertEquals(List.of(), draft.recovered());
            assertTrue(draft.state().problems().get(0).wrong().contains("put aside"));
        }
        assertTrue(Files.exists(journal.resolveSibling(journal.getFileName() + ".damaged")));
    }

    @Test
    void workThatCannotBeKeptIsToldAndEditingGoesOn() throws Exception {
        Path inTheWay = kept.resolve("file");
        Files.writeString(inTheWay, "");
        try (Draft draft = Draft.open(folder, new JournalPolicy(inTheWay, executor, clock))) {
            edit(draft, "18 Ah", "16 Ah");
            executor.runAll();
            assertTrue(draft.state().problems().get(0).wrong().contains("cannot be kept"));
            assertEquals(Set.of(ONE_BUS), draft.state().unsaved());
        }
    }
}
