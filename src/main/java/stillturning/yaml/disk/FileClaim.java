package stillturning.yaml.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The right to write one file: held by one process until it gives it up or ends, however it ends.
 */
public final class FileClaim {

    // closing any channel on a locked file can drop this process's lock on it, so none is opened
    // twice
    private static final Set<Path> HELD_HERE = ConcurrentHashMap.newKeySet();

    private final Path file;
    private final FileChannel channel;

    private FileClaim(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** The claim on a lock file, unless somebody holds it. */
    public static Optional<FileClaim> on(Path file) throws IOException {
        Path path = file.toAbsolutePath().normalize();
        if (!HELD_HERE.add(path)) {
            return Optional.empty();
        }
        Optional<FileClaim> claim = Optional.empty();
        try {
            claim = locked(path);
            return claim;
        } finally {
            if (claim.isEmpty()) {
                HELD_HERE.remove(path);
            }
        }
    }

    private static Optional<FileClaim> locked(Path path) throws IOException {
        FileChannel channel =
                FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        boolean held = false;
        try {
            FileLock lock = channel.tryLock();
            held = lock != null;
            return held ? Optional.of(new FileClaim(path, channel)) : Optional.empty();
        } finally {
            if (!held) {
                channel.close();
            }
        }
    }

    /** Gives it up; the lock file stays, since somebody may be waiting at it. */
    public void release() throws IOException {
        try {
            channel.close();
        } finally {
            HELD_HERE.remove(file);
        }
    }

    /** Gives it up for good, where there is nothing left to claim. */
    public void end() throws IOException {
        release();
        Files.deleteIfExists(file);
    }
}
