package stillturning.report.record;

import java.util.List;
import stillturning.reliability.asbuilt.JointExplanation;

/**
 * What would explain readings that do not keep to their prediction.
 *
 * @param alone single values, the best first
 * @param together two at once where no single one explains as much, the best first
 */
public record Explained(List<ExplainedValue> alone, List<ExplainedPair> together) {

    /** Nothing would, or nothing has to be explained. */
    public static final Explained NOTHING = new Explained(List.of(), List.of());

    /**
     * Two values, each as a single one is written.
     *
     * @param one as it would have to be beside the other
     * @param other as it would have to be beside the first
     */
    public record ExplainedPair(
            JointExplanation explanation, WrittenValue one, WrittenValue other) {}

    /**
     * A value as it is written.
     *
     * @param path of it in its file
     * @param needed what it would have to be
     * @param half half the interval of 95 % of that
     */
    public record WrittenValue(
            String file, String path, String stated, String needed, String half) {}

    public Explained {
        alone = List.copyOf(alone);
        together = List.copyOf(together);
    }
}
