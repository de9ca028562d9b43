package stillturning.cli.study;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Refusal;

/** The folder that a study's name means: as written, or of that name among the architectures. */
public final class NamedFolder {

    /** The folder in which studies usually stand. */
    private static final String ARCHITECTURES = "architectures";

    private NamedFolder() {}

    /**
     * Where a study stands: a bare name that is no folder here is looked for in the usual place.
     *
     * @throws Refusal if it can be no path
     */
    public static Path existing(String written, CommandContext context) {
        Path folder = asWritten(written, context);
        Path usual = context.path(ARCHITECTURES).resolve(written);
        return isBare(written) && !Files.exists(folder) && Files.isDirectory(usual)
                ? usual
                : folder;
    }

    /**
     * Where a new study belongs: a bare name goes to the usual place, if there is one.
     *
     * @throws Refusal if it can be no path
     */
    public static Path fresh(String written, CommandContext context) {
        Path folder = asWritten(written, context);
        Path usual = context.path(ARCHITECTURES);
        return isBare(written) && Files.isDirectory(usual) ? usual.resolve(written) : folder;
    }

    private static Path asWritten(String written, CommandContext context) {
        try {
            return context.path(written);
        } catch (InvalidPathException e) {
            throw new Refusal("that can be no folder's name: " + e.getReason());
        }
    }

    private static boolean isBare(String written) {
        return Path.of(written).getNameCount() == 1;
    }
}
