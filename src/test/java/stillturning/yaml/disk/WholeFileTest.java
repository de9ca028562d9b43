package stillturning.yaml.disk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.OwnProcess;

class WholeFileTest {

    private static final int SIZE = 200_000;

    @TempDir Path folder;

    private static byte[] filled(int with) {
        byte[] bytes = new byte[SIZE];
        Arrays.fill(bytes, (byte) with);
        return bytes;
    }

    private static byte[] words(String words) {
        return words.getBytes(StandardCharsets.UTF_8);
    }

    private List<String> inside(Path where) throws IOException {
        try (Stream<Path> all = Files.list(where)) {
            return all.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    private static void assertWhole(byte[] read) {
        assertEquals(SIZE, read.length);
        assertArrayEquals(filled(read[0]), read);
    }

    @Test
    void severalWritersNeverTearWhatAReaderSees() throws Exception {
        Path file = folder.resolve("page.html");
        WholeFile.replace(file, filled('0'));
        List<Thread> writers = new ArrayList<>();
        List<IOException> failed = new ArrayList<>();
        for (int writer = 1; writer <= 3; writer++) {
            int mark = '0' + writer;
            writers.add(
                    new Thread(
                            () -> {
                                for (int i = 0; i < 30; i++) {
                                    try {
                                        WholeFile.replace(file, filled(mark));
                                    } catch (IOException e) {
                                        synchronized (failed) {
                                            failed.add(e);
                                        }
                                    }
                                }
                            }));
        }
        writers.forEach(Thread::start);
        while (writers.stream().anyMatch(Thread::isAlive)) {
            assertWhole(Files.readAllBytes(file));
        }
        for (Thread writer : writers) {
            writer.join();
        }
        assertEquals(List.of(), failed);
        assertEquals(List.of("page.html"), inside(folder));
    }

    /** Writes a file over and over until somebody kills it. */
    static final class Writer {
        private Writer() {}

        public static void main(String... args) throws IOException {
            for (int i = 0; ; i++) {
                WholeFile.replace(Path.of(args[0]), filled('a' + i % 26));
            }
        }
    }

    @Test
    void aKilledWriterLeavesTheOldOrTheNewAndTheNextOneCleansUp() throws Exception {
        Path file = folder.resolve("page.html");
        WholeFile.replace(file, filled('0'));
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 8; i++) {
            byte[] before = Files.readAllBytes(file);
            Process writer = OwnProcess.of(Writer.class, file.toString()).start();
            while (writer.isAlive() && Arrays.equals(before, Files.readAllBytes(file))) {
                Thread.onSpinWait();
            }
            assertTrue(writer.isAlive());
            Thread.sleep(random.nextInt(20));
            writer.destroyForcibly();
            assertTrue(writer.waitFor(20, TimeUnit.SECONDS));
            assertWhole(Files.readAllBytes(file));
        }
        WholeFile.replace(file, filled('z'));
        assertArrayEquals(filled('z'), Files.readAllBytes(file));
        assertEquals(List.of("page.html"), inside(folder));
    }

    @Test
    void draftsOfWritersThatRunAreLeftAlone() throws IOException {
        Path running =
                Files.write(
                        folder.resolve(
                                ".page.html." + ProcessHandle.current().pid() + "-999999.new"),
                        words("half"));
        Path left = Files.write(folder.resolve(".page.html.999999999999-1.new"), words("half"));
        Path others = Files.write(folder.resolve(".page.html.mine.new"), words("mine"));
        WholeFile.replace(folder.resolve("page.html"), words("new"));
        assertTrue(Files.exists(running));
        assertFalse(Files.exists(left));
        assertTrue(Files.exists(others));
    }

    @Test
    void aLinkStaysALinkAndWhatItLeadsToIsWritten() throws IOException {
        Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
        Path real = Files.write(elsewhere.resolve("page.html"), words("old"));
        Path link = link("link.html", Path.of("elsewhere/page.html"));
        Path further = link("further.html", link);
        WholeFile.replace(further, words("new"));
        assertTrue(Files.isSymbolicLink(link) && Files.isSymbolicLink(further));
        assertArrayEquals(words("new"), Files.readAllBytes(real));

        Path leadsNowhereYet = link("fresh.html", elsewhere.resolve("fresh.html"));
        WholeFile.replace(leadsNowhereYet, words("fresh"));
        assertArrayEquals(words("fresh"), Files.readAllBytes(elsewhere.resolve("fresh.html")));

        Path round = link("round.html", folder.resolve("round.html"));
        assertThrows(FileSystemLoopException.class, () -> WholeFile.replace(round, words("x")));
    }

    private Path link(String name, Path target) throws IOException {
        try {
            return Files.createSymbolicLink(folder.resolve(name), target);
        } catch (UnsupportedOperationException | IOException notHere) {
            assumeTrue(false, "links cannot be made here");
            throw new IOException(notHere);
        }
    }

    @Test
    void theModeStaysAndSoDoesThatOfACopyMadeOfIt() throws IOException {
        assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("posix"));
        Path secret = Files.write(folder.resolve("secret"), words("old"));
        Files.setPosixFilePermissions(secret, PosixFilePermissions.fromString("rw-------"));
        WholeFile.replace(secret, words("new"));
        Path copy = folder.resolve("copy");
        WholeFile.replace(copy, words("old"), secret);
        for (Path file : List.of(secret, copy)) {
            assertEquals(
                    "rw-------",
                    PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
        }
    }

    @Test
    void whatIsNoFileIsWrittenToAsItStands() throws IOException {
        Path nothing = Path.of("/dev/null");
        assumeTrue(Files.isWritable(nothing));
        WholeFile.replace(nothing, words("gone"));
        assertFalse(Files.isRegularFile(nothing));
    }

    @Test
    void aFolderThatIsNotThereIsNamedAndAFolderInTheWayIsKept() throws IOException {
        assertThrows(
                NoSuchFileException.class,
                () -> WholeFile.replace(folder.resolve("nowhere/page.html"), words("x")));
        Path full = Files.createDirectories(folder.resolve("full"));
        Files.write(full.resolve("mine"), words("mine"));
        assertThrows(IOException.class, () -> WholeFile.replace(full, words("x")));
        assertEquals(List.of("full"), inside(folder));
    }

    @Test
    void aFolderIsMadeWithAllItsFilesOrNotAtAll() throws IOException {
        Path study = folder.resolve("robin");
        WholeFolder.create(study, Map.of("study.yaml", words("s"), "one.yaml", words("o")));
        assertEquals(List.of("one.yaml", "study.yaml"), inside(study));
        assertEquals(
                "one.yaml, study.yaml",
                assertThrows(
                                DirectoryNotEmptyException.class,
                                () -> WholeFolder.create(study, Map.of("x", words("x"))))
                        .getMessage());
        Path broken = folder.resolve("broken");
        assertThrows(
                IOException.class,
                () -> WholeFolder.create(broken, Map.of("not/there.yaml", words("x"))));
        assertEquals(List.of("robin"), inside(folder));
    }

    @Test
    void whatAKilledMakerLeftDoesNotStandInTheWay() throws IOException {
        Path draft = Files.createDirectories(folder.resolve(".robin.999999999999-1.new"));
        Files.write(draft.resolve("study.yaml"), words("half"));
        Path empty = Files.createDirectories(folder.resolve("wren"));
        Files.write(empty.resolve(".study.yaml.999999999999-2.new"), words("half"));
        WholeFolder.create(folder.resolve("robin"), Map.of("study.yaml", words("s")));
        WholeFolder.create(empty, Map.of("study.yaml", words("s")));
        assertEquals(List.of("robin", "wren"), inside(folder));
        assertEquals(List.of("study.yaml"), inside(empty));
    }
}
