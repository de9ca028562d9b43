package stillturning.yaml.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFolderTest {

    @TempDir private Path folder;

    private static byte[] words(String words) {
        return words.getBytes(StandardCharsets.UTF_8);
    }

    private static List<String> inside(Path where) throws IOException {
        try (Stream<Path> all = Files.list(where)) {
            return all.map(f -> String.valueOf(f.getFileName())).sorted().toList();
        }
    }

    @Test
    void aNewOneHasAllItsFiles() throws IOException {
        Path made = folder.resolve("deep").resolve("made");
        WholeFolder.create(made, Map.of("one", words("1"), "two", words("2")));
        assertEquals(List.of("one", "two"), inside(made));
        assertEquals("2", Files.readString(made.resolve("two")));
        assertEquals(List.of("made"), inside(folder.resolve("deep")));
    }

    @Test
    void oneThatIsThereAndEmptyIsFilled() throws IOException {
        WholeFolder.create(folder, Map.of("one", words("1")));
        assertEquals(List.of("one"), inside(folder));
    }

    @Test
    void whatHasSomethingInItStaysAndTheFirstOfItIsNamed() throws IOException {
        for (String name : List.of("d", "c", "b", "a")) {
            Files.writeString(folder.resolve(name), "mine");
        }
        DirectoryNotEmptyException refused =
                assertThrows(
                        DirectoryNotEmptyException.class,
                        () -> WholeFolder.create(folder, Map.of("one", words("1"))));
        assertEquals("a, b, 2 more", refused.getMessage());
        assertEquals(List.of("a", "b", "c", "d"), inside(folder));
    }

    /** A name with a folder in it that is not there stands for whatever ends the writing. */
    @Test
    void nothingIsLeftOfOneThatCannotBeWritten() throws IOException {
        Map<String, byte[]> files =
                new TreeMap<>(Map.of("first", words("1"), "nowhere/second", words("2")));
        Path made = folder.resolve("made");
        assertThrows(IOException.class, () -> WholeFolder.create(made, files));
        assertFalse(Files.exists(made));
        assertEquals(List.of(), inside(folder));
        Path empty = Files.createDirectory(folder.resolve("empty"));
        assertThrows(IOException.class, () -> WholeFolder.create(empty, files));
        assertEquals(List.of(), inside(empty));
    }
}
