package stillturning.cli.terminal;

import com.fasterxml.jackson.annotation.Nulls;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import stillturning.yaml.disk.FileClaim;
import stillturning.yaml.disk.WholeFile;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * The file in which finished work is kept, so that work which was called off goes on where it
 * stopped.
 *
 * @param <W> what stands in it
 */
public final class ResumeFile<W extends Record & ResumeFile.ResumableWork>
        implements AutoCloseable {

    /** The file is written no sooner than this after it was written last. */
    private static final Duration BETWEEN = Duration.ofSeconds(5);

    /** Such files are far smaller (bytes). */
    private static final long LARGEST = 200_000_000;

    /** Reads nothing of which something is missing. */
    private static final JsonMapper WHOLE =
            JsonMapper.builder()
                    .changeDefaultNullHandling(usual -> usual.withContentNulls(Nulls.FAIL))
                    .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
                    .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
                    .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                    .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                    .build();

    private final Path file;
    private final String shown;
    private final FileClaim claim;
    private Optional<W> before = Optional.empty();
    private long savedNanos = System.nanoTime();

    /** What stands in such a file beside the work. */
    public interface ResumableWork {

        /** What work it is. */
        String kind();

        /** Of the inputs that it belongs to. */
        String fingerprint();
    }

    private ResumeFile(Path file, String shown, FileClaim claim) {
        this.file = file;
        this.shown = shown;
        this.claim = claim;
    }

    /**
     * Opens the file, or makes it; no other command can have it until this one is closed.
     *
     * @param nothing the work before anything is done
     * @throws Refusal if it belongs to something else, another command has it, or it cannot be read
     *     or written
     */
    public static <W extends Record & ResumableWork> ResumeFile<W> of(
            String written, Class<W> type, W nothing, CommandContext context) {
        Path file = context.path(written);
        String shown = context.shown(file);
        ResumeFile<W> opened = new ResumeFile<>(file, shown, claim(file, shown));
        boolean open = false;
        try {
            if (Files.exists(file)) {
                opened.before = Optional.of(opened.read(type, nothing));
            }
            opened.save(opened.before.orElse(nothing));
            open = true;
            return opened;
        } finally {
            if (!open) {
                opened.close();
            }
        }
    }

    private static FileClaim claim(Path file, String shown) {
        try {
            return FileClaim.on(file.resolveSibling("." + file.getFileName() + ".lock"))
                    .orElseThrow(
                            () ->
                                    new Refusal(
                                            shown
                                                    + " is written by another search that runs now;"
                                                    + " wait until it ends, or name another file"
                                                    + " with --resume"));
        } catch (IOException e) {
            throw Refusal.unwritten(shown, e, "file with --resume");
        }
    }

    /** Lets other commands have the file. */
    @Override
    public void close() {
        try {
            claim.end();
        } catch (IOException e) {
            throw Refusal.unwritten(shown, e, "file with --resume");
        }
    }

    private W read(Class<W> type, W nothing) {
        W kept = kept(type);
        if (!kept.kind().equals(nothing.kind())) {
            throw foreign();
        }
        if (!kept.fingerprint().equals(nothing.fingerprint())) {
            throw new Refusal(
                    shown
                            + " belongs to other inputs: to a study with the fingerprint "
                            + shortly(kept.fingerprint())
                            + " and not "
                            + shortly(nothing.fingerprint())
                            + "; name another file with --resume, or remove it");
        }
        return kept;
    }

    private W kept(Class<W> type) {
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > LARGEST) {
                throw foreign();
            }
            return in(Files.readString(file), type).orElseThrow(this::foreign);
        } catch (IOException e) {
            throw foreign();
        }
    }

    /** The work that a text holds; nothing if it holds none of this type, or not all of it. */
    public static <W extends Record> Optional<W> in(String text, Class<W> type) {
        try {
            return Optional.ofNullable(WHOLE.readValue(text, type));
        } catch (JacksonException e) {
            return Optional.empty();
        }
    }

    /** The refusal of a file that holds something else. */
    public Refusal foreign() {
        return new Refusal(
                shown
                        + " is there already and holds no search of this program; name another file"
                        + " with --resume");
    }

    private static String shortly(String fingerprint) {
        return fingerprint.substring(0, Math.min(12, fingerprint.length()));
    }

    /** What stood in it when it was opened, if it was there. */
    public Optional<W> before() {
        return before;
    }

    /** Whether it is time to write the file again. */
    public synchronized boolean isDue() {
        return System.nanoTime() - savedNanos > BETWEEN.toNanos();
    }

    /**
     * Writes the file, so that at every instant either the old or the new one is there.
     *
     * @throws Refusal if it cannot be written
     */
    public synchronized void save(W work) {
        String text = JsonMapper.builder().build().writeValueAsString(work);
        try {
            WholeFile.replace(file, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw Refusal.unwritten(shown, e, "file with --resume");
        }
        savedNanos = System.nanoTime();
    }
}
