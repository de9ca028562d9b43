package stillturning.report.record;

import stillturning.reliability.asbuilt.Compared;

/**
 * One thing that was asked for.
 *
 * @param path place in the form
 * @param says what it is
 * @param written as somebody wrote it; empty where nobody did
 * @param from name of the file that it was concluded from; empty where somebody wrote it
 */
public record FormLine(String path, String says, Compared compared, String written, String from) {

    /** The same, concluded from a file or written by somebody. */
    public FormLine measured(Compared with, String text, String source) {
        return new FormLine(path, says, with, text, source);
    }
}
