package stillturning.cli.study;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Refusal;
import stillturning.cli.terminal.ResumeFile;
import stillturning.dossier.exploration.Exploration;
import stillturning.dossier.exploration.Explored;
import stillturning.dossier.exploration.KeptFront;
import stillturning.files.edit.ChangeRefused;
import stillturning.yaml.disk.WholeFile;
import tools.jackson.databind.json.JsonMapper;

/** The file in which is kept what a search for simpler layouts found. */
public final class KeptLayouts {

    private static final String KIND = "stillturning layouts";

    /** Such files are far smaller (bytes). */
    private static final long LARGEST = 50_000_000;

    private KeptLayouts() {}

    /**
     * What stands in the file.
     *
     * @param fingerprint of the study's files
     */
    record LayoutsFile(String kind, String fingerprint, KeptFront found) {}

    /**
     * Refuses, before anything is computed, to replace a file that holds something else.
     *
     * @throws Refusal if it does
     */
    public static void claim(String file, CommandContext context) {
        if (Files.exists(context.path(file))) {
            written(file, context);
        }
    }

    /** Keeps what was found. */
    public static String keep(String file, Explored found, FoundStudy of, CommandContext context) {
        Path path = context.path(file);
        LayoutsFile written = new LayoutsFile(KIND, of.read().fingerprint(), found.kept());
        String text = JsonMapper.builder().build().writeValueAsString(written);
        try {
            WholeFile.replace(path, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw Refusal.unwritten(context.shown(path), e, "file with --keep");
        }
        return "Kept: " + context.shown(path);
    }

    /**
     * Tells again what was found.
     *
     * @throws Refusal if the file holds no such thing, or it was found in another state of the
     *     study
     */
    public static Explored again(String file, FoundStudy of, CommandContext context) {
        LayoutsFile written = written(file, context);
        if (!written.fingerprint.equals(of.read().fingerprint())) {
            throw new Refusal(
                    context.shown(context.path(file))
                            + " was found in another state of the study; run explore again with"
                            + " --keep");
        }
        try {
            return Exploration.again(of.reader(), of.read(), written.found);
        } catch (ChangeRefused e) {
            throw new Refusal(context.shown(context.path(file)) + ": " + e.getMessage());
        }
    }

    private static LayoutsFile written(String file, CommandContext context) {
        Path path = context.path(file);
        try {
            if (Files.isRegularFile(path) && Files.size(path) <= LARGEST) {
                Optional<LayoutsFile> written =
                        ResumeFile.in(Files.readString(path), LayoutsFile.class)
                                .filter(kept -> kept.kind.equals(KIND));
                if (written.isPresent()) {
                    return written.get();
                }
            }
        } catch (IOException e) {
            // told below, as any other file that holds something else
        }
        throw new Refusal(
                context.shown(path)
                        + " holds no layouts that explore --keep has kept; name another file");
    }
}
