package stillturning.report.guide;

import java.util.regex.Pattern;

/**
 * One question and its answer.
 *
 * @param name short name, such as {@code how-long}
 * @param source Markdown; the first line is the question as a heading
 */
public record GuidePage(String name, String source) {

    /** What stands behind the word of a block says which lines are shown: only for the test. */
    private static final Pattern SELECTION = Pattern.compile("(?m)^```console .*$");

    /** The question, without the marks of a heading. */
    public String question() {
        return source.lines().findFirst().orElse("").replaceFirst("^#+ *", "");
    }

    /** Markdown as a person reads it. */
    public String text() {
        return SELECTION.matcher(source).replaceAll("```console");
    }
}
