package stillturning.cli.study;

import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.suggest.KeptMends;
import stillturning.dossier.suggest.LightestChanges;
import stillturning.dossier.suggest.LightestFound;
import stillturning.files.edit.ChangeRefused;
import stillturning.story.UntoldStory;

/** The file in which is kept what a search for the lightest changes found. */
public final class KeptChanges {

    private static final KeptFile<ChangesFile> FILE =
            new KeptFile<>(ChangesFile.class, "stillturning changes", "changes", "suggest");

    private KeptChanges() {}

    /**
     * What stands in the file.
     *
     * @param fingerprint of the study's files
     */
    record ChangesFile(String kind, String fingerprint, KeptMends found)
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
    public static String keep(
            String file, LightestFound found, FoundStudy of, CommandContext context) {
        return FILE.keep(
                file,
                new ChangesFile(FILE.kind(), of.read().fingerprint(), KeptMends.of(found)),
                context);
    }

    /**
     * Tells again what was found, each change assessed again.
     *
     * @throws Refusal if the file holds no such thing, or it was found in another state of the
     *     study
     */
    public static LightestFound again(String file, FoundStudy of, CommandContext context) {
        KeptMends kept = FILE.of(file, of, context).found;
        try {
            return new LightestChanges(of.reader(), of.read()).again(kept);
        } catch (ChangeRefused | UntoldStory e) {
            throw new Refusal(context.shown(context.path(file)) + ": " + e.getMessage());
        }
    }
}
