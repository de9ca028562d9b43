package stillturning.dossier.suggest;

import java.util.List;
import stillturning.assess.suggest.LightestMends;
import stillturning.assess.suggest.StudyMends;
import stillturning.files.move.Drawn;

/**
 * The lightest changes of the candidates of a study, and how they are drawn.
 *
 * @param untold candidates that cannot be computed as they are, each with the reason, in words
 */
public record LightestFound(List<OfCandidate> candidates, List<String> untold) {
    public LightestFound {
        candidates = List.copyOf(candidates);
        untold = List.copyOf(untold);
    }

    /**
     * Those of one candidate.
     *
     * @param drawings one for each change, in their order; those that are outweighed last
     */
    public record OfCandidate(LightestMends mends, List<Drawn> drawings) {
        public OfCandidate {
            drawings = List.copyOf(drawings);
        }
    }

    /** It without its drawings. */
    public StudyMends mends() {
        return new StudyMends(candidates.stream().map(OfCandidate::mends).toList(), untold);
    }
}
