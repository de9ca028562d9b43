package stillturning.files.edit;

import stillturning.yaml.Problem;
import stillturning.yaml.edit.EditRefused;

/** A change that cannot be made; the message says why, and what to do. Nothing was changed. */
public final class ChangeRefused extends Exception {

    private static final long serialVersionUID = 1;

    public ChangeRefused(String why) {
        super(why);
    }

    private ChangeRefused(String why, Throwable cause) {
        super(why, cause);
    }

    /** That a file cannot be read, so that nothing but its text can be changed. */
    public static ChangeRefused unreadable(String file, Problem first) {
        return new ChangeRefused(
                file
                        + " cannot be read: "
                        + first.wrong()
                        + "; correct line "
                        + first.line()
                        + " in its text, or undo");
    }

    /** That a file is written in a way that forbids an edit. */
    public static ChangeRefused by(String file, EditRefused edit) {
        return new ChangeRefused(
                file + ": " + edit.because() + "; make the change in the file's text", edit);
    }

    /** Why, and what to do. */
    public String why() {
        return String.valueOf(getMessage());
    }
}
