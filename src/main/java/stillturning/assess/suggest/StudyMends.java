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
}
