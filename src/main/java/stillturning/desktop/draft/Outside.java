package stillturning.desktop.draft;

import java.util.List;
import stillturning.yaml.Problem;

/**
 * What came of a look at the files on disk.
 *
 * @param takenOver files that only somebody else had changed, and that are here now as they are
 *     there
 * @param merged files that were changed here and outside, and now hold both
 * @param conflicts files that wait for a choice
 * @param problems files that could not be read
 */
public record Outside(
        List<String> takenOver,
        List<String> merged,
        List<Conflict> conflicts,
        List<Problem> problems) {

    public Outside {
        takenOver = List.copyOf(takenOver);
        merged = List.copyOf(merged);
        conflicts = List.copyOf(conflicts);
        problems = List.copyOf(problems);
    }

    /** Whether there was nothing new. */
    public boolean isQuiet() {
        return takenOver.isEmpty() && merged.isEmpty() && conflicts.isEmpty() && problems.isEmpty();
    }
}
