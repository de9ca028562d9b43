package stillturning.assess;

import java.util.List;
import java.util.Optional;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.ranking.RankingResult;
import stillturning.model.Candidate;
import stillturning.model.Requirement;
import stillturning.model.Study;

/**
 * A whole study assessed.
 *
 * @param appraisals every candidate that could be computed, in the study's order
 * @param unassessed every candidate that could not, with the reason
 * @param ranking the order; empty when no candidate could be computed
 */
public record Assessment(
        Study study,
        List<Appraisal> appraisals,
        List<Unassessed> unassessed,
        Optional<RankingResult> ranking) {

    /** A candidate of which some state could not be computed. */
    public record Unassessed(String candidate, String reason) {}

    public Assessment {
        appraisals = List.copyOf(appraisals);
        unassessed = List.copyOf(unassessed);
    }

    /** The appraisal of a candidate, if it could be computed. */
    public Optional<Appraisal> of(String candidate) {
        return appraisals.stream().filter(a -> a.candidate().id().equals(candidate)).findFirst();
    }

    /**
     * Works out what only reading about the failures asks for, on all processors: late pilots, what
     * stands beside the outcomes, other orders of moves. Who asks for it later finds it; else it is
     * worked out where it is asked for, one failure after the other.
     */
    public void tellInDepth() {
        appraisals.stream()
                .flatMap(appraisal -> appraisal.singles().stream())
                .parallel()
                .forEach(verdict -> verdict.depth().get().beside().get());
        appraisals.parallelStream().forEach(appraisal -> appraisal.cases().movesAudited().get());
    }

    /** Whether there is a hard requirement that a candidate could miss. */
    public boolean asksForAnything() {
        return !study.goals().requirements().isEmpty();
    }

    /** Whether some candidate meets every hard requirement; true where there is none. */
    public boolean someCandidateMeetsAll() {
        return appraisals.stream().anyMatch(a -> a.met().stream().allMatch(RequirementMet::met));
    }

    /** What was found of a requirement of a candidate, for one who does not look again. */
    Optional<RequirementMet> surveyed(Requirement requirement, Candidate candidate) {
        return of(candidate.id()).stream()
                .flatMap(a -> a.met().stream())
                .filter(met -> met.requirement().equals(requirement.inWords()))
                .findFirst();
    }
}
