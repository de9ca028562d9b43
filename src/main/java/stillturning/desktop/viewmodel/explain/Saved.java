package stillturning.desktop.viewmodel.explain;

import java.nio.file.Path;

/** What came of keeping the page in a file. */
public sealed interface Saved {

    /** What the user reads. */
    String words();

    /** It is there. */
    record Done(Path file) implements Saved {
        @Override
        public String words() {
            return "Written: " + file;
        }
    }

    /** Something stands there that this program did not write; nothing was written. */
    record Asks(Path file) implements Saved {
        @Override
        public String words() {
            return file + " is there already and was not written by this program. Replace it?";
        }
    }

    /** Nothing was written; why, and what would help. */
    record Refused(String words) implements Saved {}
}
