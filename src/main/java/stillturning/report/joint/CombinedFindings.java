package stillturning.report.joint;

import java.util.List;
import java.util.Optional;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate;
import stillturning.reliability.combined.CombinedResult;
import stillturning.reliability.combined.Event.EventKind;
import stillturning.reliability.likelihood.LikelihoodResult;
import stillturning.reliability.runup.Card;

/**
 * What was found of one candidate's events together.
 *
 * @param pair the pair to know, where no single failure ends the engine
 */
public record CombinedFindings(
        CombinedResult joint, Card card, LikelihoodResult likely, Optional<PairToKnow> pair) {

    /**
     * Two failures that end the engine together, and what each does alone.
     *
     * @param events their numbers
     */
    public record PairToKnow(List<Integer> events, Verdict together, Verdict one, Verdict other) {
        public PairToKnow {
            events = List.copyOf(events);
        }
    }

    /** Whose events. */
    public Candidate candidate() {
        return joint.candidate();
    }

    /** The same with its pair to know. */
    public CombinedFindings knowing(Optional<PairToKnow> known) {
        return new CombinedFindings(joint, card, likely, known);
    }

    /** Single failures that end the engine, its own aside. */
    public List<Integer> singleFailures() {
        return likely.sets().stream()
                .filter(set -> set.size() == 1 && isFailure(set.get(0)))
                .map(set -> set.get(0))
                .toList();
    }

    /** Whether nobody could say what an event alone comes to. */
    public boolean isUntold(int event) {
        return joint.sets().untold().contains(List.of(event));
    }

    /**
     * The likeliest two failures of different parts that surely end the engine; empty where a
     * single one does it too.
     */
    public Optional<List<Integer>> likeliestPair() {
        if (!singleFailures().isEmpty()) {
            return Optional.empty();
        }
        return likely.worst().stream()
                .map(share -> share.events())
                .filter(set -> set.size() == 2 && set.stream().allMatch(this::isFailure))
                .filter(set -> !joint.sets().untold().contains(set))
                .filter(set -> !part(set.get(0)).equals(part(set.get(1))))
                .findFirst();
    }

    private boolean isFailure(int event) {
        return joint.events().get(event).kind() == EventKind.FAILURE;
    }

    private String part(int event) {
        return joint.events().get(event).failure().hits().get(0).part();
    }
}
