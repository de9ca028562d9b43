package stillturning.files;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.files.value.Range;
import stillturning.files.value.Variation;
import stillturning.files.value.Variation.ValueChange;
import stillturning.files.value.Variation.ValuePlace;
import stillturning.yaml.Problem;

/**
 * Sets values elsewhere in their ranges. Values that contradict each other, such as a restart
 * voltage below the minimum, are moved half-way back to what is likely until they agree.
 */
final class ValueDraw {

    /** After that many halvings the values of a part are the likely ones. */
    private static final int HALVINGS = 6;

    private final StudyReader reader;
    private final Set<String> candidates;
    private final List<Range> ranges;
    private final double[] at;

    ValueDraw(StudyReader reader, Set<String> candidates, List<Range> ranges, double[] at) {
        if (at.length != ranges.size()) {
            throw new IllegalArgumentException(
                    at.length + " places in " + ranges.size() + " ranges");
        }
        this.reader = reader;
        this.candidates = candidates;
        this.ranges = ranges;
        this.at = at.clone();
    }

    DrawnStudy draw() {
        ReadStudy read = reader.only(candidates, variation());
        for (int n = 1; n <= HALVINGS && retreats(read.problems(), n == HALVINGS); n++) {
            read = reader.only(candidates, variation());
        }
        String refusal = read.problems().stream().findFirst().map(Problem::toString).orElse("");
        return new DrawnStudy(read.study(), Arrays.stream(at).boxed().toList(), refusal);
    }

    private Variation variation() {
        Map<ValuePlace, ValueChange> changes = new HashMap<>();
        for (int i = 0; i < at.length; i++) {
            Range range = ranges.get(i);
            double value = range.low() + at[i] * (range.high() - range.low());
            changes.put(range.place(), new ValueChange(1, value - range.likely()));
        }
        return new Variation(changes, Map.of());
    }

    /** Moves the values of what is refused towards the likely ones; returns whether it could. */
    private boolean retreats(List<Problem> problems, boolean altogether) {
        boolean any = false;
        for (int i = 0; i < at.length; i++) {
            Range range = ranges.get(i);
            if (problems.stream().anyMatch(p -> concerns(p, range.place()))) {
                double likely = (range.likely() - range.low()) / (range.high() - range.low());
                at[i] = altogether ? likely : (at[i] + likely) / 2;
                any = true;
            }
        }
        return any;
    }

    private static boolean concerns(Problem problem, ValuePlace place) {
        Optional<Path> file = Optional.ofNullable(problem.file().getFileName());
        return file.map(Path::toString).filter(place.file()::equals).isPresent()
                && (place.path().equals(problem.path())
                        || place.path().startsWith(problem.path() + "."));
    }
}
