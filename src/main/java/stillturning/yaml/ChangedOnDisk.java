package stillturning.yaml;

import java.io.IOException;
import java.nio.file.Path;

/** A file is not what it was when it was read, so saving would lose somebody's work. */
public final class ChangedOnDisk extends IOException {

    private static final long serialVersionUID = 1;

    ChangedOnDisk(Path file, String how) {
        super(file.getFileName() + " " + how + "; read it again and repeat the change");
    }
}
