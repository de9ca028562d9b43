package stillturning.report.record;

import java.util.List;

/**
 * What the record of a candidate says.
 *
 * @param title of the candidate
 * @param rows in the order in which they were added
 * @param unreadable why it cannot be read; empty if it can
 */
public record RecordedCandidate(String title, List<RecordRow> rows, List<String> unreadable) {

    /**
     * One of what was measured.
     *
     * @param what place in the form: the same is the same thing
     * @param says what it is
     * @param measured with its unit; empty if it was not
     * @param prediction what was predicted on that day
     */
    public record RecordRow(
            Day day,
            String what,
            String says,
            String measured,
            ShownPrediction prediction,
            ReadingVerdict standing) {

        /** Whether the study had ceased to ask for it. */
        boolean isFormer() {
            return standing.words().equals(MeasuredWords.NO_LONGER);
        }

        /** Whether it is a step of the ground test, and not a value. */
        boolean isStep() {
            return what.endsWith(".result");
        }
    }

    /**
     * When it was measured.
     *
     * @param changed whether the study has changed since
     */
    public record Day(String date, String by, boolean changed) {}

    /**
     * What was predicted, with its unit.
     *
     * @param keeps from the least to the most that keeps to it
     */
    public record ShownPrediction(String likely, String keeps) {}

    /**
     * How the two stand to each other.
     *
     * @param good whether what was measured keeps to what was predicted
     */
    public record ReadingVerdict(String words, boolean good) {}

    public RecordedCandidate {
        rows = List.copyOf(rows);
        unreadable = List.copyOf(unreadable);
    }
}
