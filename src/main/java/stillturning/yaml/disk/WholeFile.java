package stillturning.yaml.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;

/** Writes a file so that at every instant the old or the new content is there. */
public final class WholeFile {

    /** As many as systems follow in one path. */
    private static final int MOST_LINKS = 40;

    /** Another machine that shares the folder may take a draft for one that was left behind. */
    private static final int ATTEMPTS = 3;

    private WholeFile() {}

    /**
     * Writes a file in the place of what was there. A link stays a link: the file to which it leads
     * is written. Mode, owner and group stay as they were, as far as the system lets this user keep
     * them. What is no file (a pipe, a device) is written to as it stands.
     *
     * @throws IOException if it cannot be written; what was there is then still there
     */
    public static void replace(Path file, byte[] bytes) throws IOException {
        replace(file, bytes, file);
    }

    /**
     * Writes a file that nobody shall read who may not read another.
     *
     * @param like whose mode, owner and group it gets, if that file is there
     * @throws IOException if it cannot be written; what was there is then still there
     */
    public static void replace(Path file, byte[] bytes, Path like) throws IOException {
        Path real = target(file.toAbsolutePath());
        if (Files.exists(real) && !Files.isRegularFile(real) && !Files.isDirectory(real)) {
            try (FileChannel channel = FileChannel.open(real, StandardOpenOption.WRITE)) {
                write(channel, bytes);
            }
            return;
        }
        TemporaryFile.clearLeftBeside(real);
        int attempt = 1;
        while (!written(real, bytes, like, attempt == ATTEMPTS)) {
            attempt++;
        }
    }

    /**
     * Takes away what interrupted writings of a file left beside it.
     *
     * @throws IOException if it cannot be taken away
     */
    public static void clear(Path file) throws IOException {
        TemporaryFile.clearLeftBeside(target(file.toAbsolutePath()));
    }

    private static boolean written(Path real, byte[] bytes, Path like, boolean last)
            throws IOException {
        Path draft = TemporaryFile.fresh(real);
        try {
            try (FileChannel channel =
                    FileChannel.open(
                            draft, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                write(channel, bytes);
                channel.force(true);
            }
            copyAttributes(like, draft);
            move(draft, real);
            forceFolder(real);
            return true;
        } catch (NoSuchFileException gone) {
            if (last || !Files.isDirectory(TemporaryFile.folder(real))) {
                throw gone;
            }
            return false;
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    private static Path target(Path file) throws IOException {
        Path at = file;
        for (int links = 0; links <= MOST_LINKS; links++) {
            if (!Files.isSymbolicLink(at)) {
                return at;
            }
            at = at.resolveSibling(Files.readSymbolicLink(at));
        }
        throw new FileSystemLoopException(file.toString());
    }

    private static void write(FileChannel channel, byte[] bytes) throws IOException {
        ByteBuffer rest = ByteBuffer.wrap(bytes);
        while (rest.hasRemaining()) {
            channel.write(rest);
        }
    }

    private static void copyAttributes(Path from, Path to) throws IOException {
        PosixFileAttributeView target =
                Files.getFileAttributeView(to, PosixFileAttributeView.class);
        if (target == null || !Files.exists(from)) {
            return;
        }
        PosixFileAttributes kept = Files.readAttributes(from, PosixFileAttributes.class);
        PosixFileAttributes now = target.readAttributes();
        try {
            // only the superuser may give a file away; a group may be kept by its members
            if (!kept.group().equals(now.group())) {
                target.setGroup(kept.group());
            }
            if (!kept.owner().equals(now.owner())) {
                target.setOwner(kept.owner());
            }
        } catch (IOException notAllowed) {
            // the file is then this user's, as if he had made it; he may write it either way
        }
        target.setPermissions(kept.permissions());
    }

    /** So that the new name itself outlives a loss of power, where the system can promise it. */
    private static void forceFolder(Path file) {
        try (FileChannel folder =
                FileChannel.open(TemporaryFile.folder(file), StandardOpenOption.READ)) {
            folder.force(true);
        } catch (IOException notOffered) {
            // some systems open no folder; there the name is as durable as they make it
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException weak) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
