package stillturning.cli.study;

import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.exploration.Exploration;
import stillturning.dossier.exploration.Explored;
import stillturning.dossier.exploration.KeptFront;
import stillturning.files.edit.ChangeRefused;

/** The file in which is kept what a search for simpler layouts found. */
public final class KeptLayouts {

    private static final KeptFile<LayoutsFile> FILE =
            new KeptFile<>(LayoutsFile.class, "stillturning layouts", "layouts", "explore");

    private KeptLayouts() {}

    /**
     * What stands in the file.
     *
     * @param fingerprint of the study's files
     */
    record LayoutsFile(String kind, String fingerprint, KeptFront found)
            implements KeptFile.KeptWork {}

    /**
     * Refuses, before anything is computed, to replace a file that holds something else.
     *
     * @throws Refusal if it does
     */
    public static void claim(String file, CommandContext context) {
        FILE.claim(file, context);
    }

    /** Keeps what was found. */
    public static String keep(String file, Explored found, FoundStudy of, CommandContext context) {
        LayoutsFile written = new LayoutsFile(FILE.kind(), of.read().fingerprint(), found.kept());
        return FILE.keep(file, written, context);
    }

    /**
     * Tells again what was found.
     *
     * @throws Refusal if the file holds no such thing, or it was found in another state of the
     *     study
     */
    public static Explored again(String file, FoundStudy of, CommandContext context) {
        try {
            return Exploration.again(of.reader(), of.read(), FILE.of(file, of, context).found);
        } catch (ChangeRefused e) {
            throw new Refusal(context.shown(context.path(file)) + ": " + e.getMessage());
        }
    }
}
