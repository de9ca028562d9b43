package stillturning.assess.suggest;

import java.util.List;

/**
 * The lightest changes of the candidates of a study.
 *
 * @param candidates in the order in which they were asked about
 * @param untold those that cannot be computed as they are, each with the reason, in words
 */
public record StudyMends(List<LightestMends> candidates, List<String> untold) {
    public StudyMends {
        candidates = List.copyOf(candidates);
        untold = List.copyOf(untold);
    }

    /** Those of several searches, in their order. */
    public static StudyMends together(List<StudyMends> searches) {
        return new StudyMends(
                searches.stream().flatMap(one -> one.candidates.stream()).toList(),
                searches.stream().flatMap(one -> one.untold.stream()).toList());
    }

    /** The same with those that lose the engine in more ways among the others. */
    public StudyMends withOutweighed() {
        return new StudyMends(
                candidates.stream().map(LightestMends::withOutweighed).toList(), untold);
    }
}
