package stillturning.assess.requirement;

import java.util.Optional;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.model.Candidate;
import stillturning.model.Requirement;

/**
 * Looks at what this room does not know: sizes, arms, pairs of failures. Asked only for
 * requirements that a study has, from any thread.
 */
@FunctionalInterface
public interface Survey {

    /** Nobody looks. */
    Survey NONE = (requirement, candidate) -> Optional.empty();

    /** What a requirement comes to for a candidate; empty if nobody looks at it. */
    Optional<RequirementMet> of(Requirement requirement, Candidate candidate);
}
