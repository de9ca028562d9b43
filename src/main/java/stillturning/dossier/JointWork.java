package stillturning.dossier;

import java.util.List;
import stillturning.report.joint.CombinedFindings;

/**
 * What failures do together, candidate by candidate.
 *
 * @param found in the order of the candidates
 * @param untold candidates that could not be computed, with the reason
 */
public record JointWork(List<CombinedFindings> found, List<UntoldCandidate> untold) {

    /** A candidate that could not be computed. */
    public record UntoldCandidate(String candidate, String reason) {}

    public JointWork {
        found = List.copyOf(found);
        untold = List.copyOf(untold);
    }

    /** Candidates that could not be computed, each with its reason, in words. */
    public List<String> reasons() {
        return untold.stream().map(u -> u.candidate + ": " + u.reason).toList();
    }
}
