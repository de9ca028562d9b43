package stillturning.cli.study;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Refusal;
import stillturning.cli.terminal.ResumeFile;
import stillturning.yaml.disk.WholeFile;
import tools.jackson.databind.json.JsonMapper;

/**
 * A file in which a command keeps what it found, so that another tells it again.
 *
 * @param type what stands in it
 * @param kind by which such a file is known
 * @param things what is in it, in words
 * @param command that keeps it
 */
record KeptFile<W extends Record & KeptFile.KeptWork>(
        Class<W> type, String kind, String things, String command) {

    /** Such files are far smaller (bytes). */
    private static final long LARGEST = 50_000_000;

    /** What stands in such a file beside what was found. */
    interface KeptWork {

        /** What it is. */
        String kind();

        /** Of the study's files. */
        String fingerprint();
    }

    /**
     * Refuses, before anything is computed, to replace a file that holds something else.
     *
     * @throws Refusal if it does
     */
    void claim(String file, CommandContext context) {
        if (Files.exists(context.path(file))) {
            written(file, context);
        }
    }

    /** Keeps what was found. */
    String keep(String file, W found, CommandContext context) {
        Path path = context.path(file);
        String text = JsonMapper.builder().build().writeValueAsString(found);
        try {
            WholeFile.replace(path, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw Refusal.unwritten(context.shown(path), e, "file with --keep");
        }
        return "Kept: " + context.shown(path);
    }

    /**
     * What was kept.
     *
     * @throws Refusal if the file holds no such thing, or it was found in another state of the
     *     study
     */
    W of(String file, FoundStudy study, CommandContext context) {
        W written = written(file, context);
        if (!written.fingerprint().equals(study.read().fingerprint())) {
            throw new Refusal(
                    context.shown(context.path(file))
                            + " was found in another state of the study; run "
                            + command
                            + " again with --keep");
        }
        return written;
    }

    private W written(String file, CommandContext context) {
        Path path = context.path(file);
        try {
            if (Files.isRegularFile(path) && Files.size(path) <= LARGEST) {
                Optional<W> written =
                        ResumeFile.in(Files.readString(path), type)
                                .filter(kept -> kept.kind().equals(kind));
                if (written.isPresent()) {
                    return written.get();
                }
            }
        } catch (IOException e) {
            // told below, as any other file that holds something else
        }
        throw new Refusal(
                context.shown(path)
                        + " holds no "
                        + things
                        + " that "
                        + command
                        + " --keep has kept; name another file");
    }
}
