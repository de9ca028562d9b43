package stillturning.dossier;

import java.util.Optional;

/** Which version of the program this is. */
public final class ProgramVersion {

    private ProgramVersion() {}

    /** Its name and version. */
    public static String words() {
        String version =
                Optional.ofNullable(ProgramVersion.class.getPackage().getImplementationVersion())
                        .orElse("(built from source)");
        return "stillturning " + version;
    }
}
