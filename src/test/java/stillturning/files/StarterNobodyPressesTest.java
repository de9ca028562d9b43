package stillturning.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A starter that neither habit nor procedure presses turns nothing, which a builder must know. */
class StarterNobodyPressesTest {

    private static final Path SANDPIPER = Path.of("architectures/sandpiper");

    private static long remarks(Path folder) {
        return StudyReader.read(folder).remarks().stream()
                .filter(remark -> remark.words().startsWith("nobody presses the starter"))
                .count();
    }

    @Test
    void eachCandidateInWhichNobodyPressesItIsTold(@TempDir Path folder) throws IOException {
        long candidates = 0;
        try (DirectoryStream<Path> files = Files.newDirectoryStream(SANDPIPER, "*.yaml")) {
            for (Path file : files) {
                String text = Files.readString(file);
                candidates += text.contains("\ncandidate:") ? 1 : 0;
                Files.writeString(
                        folder.resolve(file.getFileName()),
                        text.replaceAll("(?m)^  presses-starter-after:.*$", ""));
            }
        }
        assertEquals(0, remarks(SANDPIPER));
        assertEquals(candidates, remarks(folder));
    }
}
