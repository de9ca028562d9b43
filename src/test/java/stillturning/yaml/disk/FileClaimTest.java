package stillturning.yaml.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One holds it at a time; that two processes cannot is held where commands are run. */
class FileClaimTest {

    @TempDir private Path folder;

    @Test
    void itIsHeldUntilItIsGivenUp() throws IOException {
        Path lock = folder.resolve("found.lock");
        FileClaim first = FileClaim.on(lock).orElseThrow();
        assertEquals(Optional.empty(), FileClaim.on(folder.resolve("./found.lock")));
        first.release();
        assertTrue(Files.exists(lock), "somebody may be waiting at it");
        FileClaim second = FileClaim.on(lock).orElseThrow();
        assertEquals(Optional.empty(), FileClaim.on(lock));
        second.release();
    }

    @Test
    void whatIsGivenUpForGoodIsGoneAndCanBeClaimedAnew() throws IOException {
        Path lock = folder.resolve("found.lock");
        FileClaim.on(lock).orElseThrow().end();
        assertFalse(Files.exists(lock));
        FileClaim.on(lock).orElseThrow().end();
    }

    @Test
    void whatCannotBeLockedIsNotHeld() throws IOException {
        Path lock = folder.resolve("nowhere").resolve("found.lock");
        assertThrows(NoSuchFileException.class, () -> FileClaim.on(lock));
        Files.createDirectory(folder.resolve("nowhere"));
        FileClaim.on(lock).orElseThrow().end();
    }
}
