package stillturning.report.page;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import stillturning.report.page.Document.Chapter;
import stillturning.report.table.Column;

/**
 * A published accident report against this program, in words. The shipped ones are those of the
 * tests that replay them, which hold them equal to what the program says today.
 *
 * @param report its number, with the authority
 * @param cause what stopped the engine
 * @param course in how many flights it went as reported, or why it is not modelled
 * @param beforeFlight at which place which command names the cause
 * @param mend a change that is suggested and what becomes of the flights with it, or why there is
 *     none
 */
public record ReplayedReport(
        String report, String cause, String course, String beforeFlight, String mend) {

    /** What they are called where they are shown. */
    public static final String HEADING = "What it says about layouts that have failed";

    /** How the course of a report begins that is not modelled. */
    public static final String NOT_MODELLED = "not modelled: ";

    /** What a table of them shows. */
    public static final List<Column<ReplayedReport>> COLUMNS =
            List.of(
                    Column.words("report", 16, ReplayedReport::report),
                    Column.words("what stopped the engine", 28, ReplayedReport::cause),
                    Column.words("as reported", 22, ReplayedReport::course),
                    Column.words("before flight", 30, ReplayedReport::beforeFlight),
                    Column.words("what it suggests", 34, ReplayedReport::mend));

    private static final String FILE = "replays.txt";
    private static final String BETWEEN = " | ";

    /** Those that ship with the program, in the order of their numbers. */
    public static List<ReplayedReport> shipped() {
        try (InputStream in =
                requireNonNull(ReplayedReport.class.getResourceAsStream(FILE), FILE)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines().map(ReplayedReport::of).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ReplayedReport of(String line) {
        String[] cells = line.split(" \\| ", 5);
        return new ReplayedReport(cells[0], cells[1], cells[2], cells[3], cells[4]);
    }

    /** It as a line of the shipped file. */
    public String line() {
        return String.join(BETWEEN, report, cause, course, beforeFlight, mend);
    }

    /** All that ship, with how they are to be read. */
    public static Chapter chapter() {
        return new Chapter(
                "replays",
                HEADING,
                List.of(
                        new Block.Words(
                                "This is about other aircraft: layouts drawn after published"
                                        + " accident reports, in our own words, every value that a"
                                        + " report does not give guessed as a range."),
                        new Block.Points(
                                List.of(
                                        "As reported: so many flights were played with the failure"
                                                + " that the report names, the unknown values"
                                                + " anywhere in their ranges; in how many the"
                                                + " course was the reported one; in brackets when"
                                                + " the engine stopped in most of them.",
                                        "Before flight: at which place which command names the"
                                                + " cause without knowing of it, of so many things that"
                                                + " it says. \"By mend\" counts the lines with which"
                                                + " break begins: failures that one change mends.",
                                        "What it suggests: at which place of what is suggested for"
                                                + " the cause a change stands that mends it, and"
                                                + " which; in brackets in how many flights flown"
                                                + " with it the engine is lost before landing;"
                                                + " \"with --all\" where it brings more single"
                                                + " failures that lose the engine than it takes"
                                                + " away, and is listed only then.")),
                        Block.Grid.of(shipped(), COLUMNS),
                        new Block.Note(
                                "Finding a cause in a layout that was drawn after the fact proves"
                                        + " less than finding it before. A layout that could happen"
                                        + " so need not have happened so. Reports are summarised;"
                                        + " their authorities' words count, and nobody is blamed."
                                        + " An aid for comparing designs.")));
    }

    /** The same in a sentence. */
    public static String inShort() {
        List<ReplayedReport> all = shipped();
        long left = all.stream().filter(r -> r.course.startsWith(NOT_MODELLED)).count();
        return "%d layouts told after published accident reports of engines that stopped for want of"
                        .formatted(all.size() - left)
                + " electricity were replayed with this program; %d more could not be modelled. The"
                        .formatted(left)
                + " page lists each, with what was found before flight and at which place.";
    }
}
