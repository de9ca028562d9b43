package stillturning.assess;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate;
import stillturning.model.failure.Failure;
import stillturning.story.UntoldStory;

/**
 * What the study's own cases do to one candidate.
 *
 * @param cases in the study's order
 */
public record CandidateCases(Candidate candidate, List<Case> cases) {

    private static final Comparator<Verdict> WORST_FIRST =
            Comparator.comparing((Verdict v) -> v.outcome())
                    .thenComparing(v -> v.planned().engine().endurance().seconds());

    /**
     * One case.
     *
     * @param said as the study calls it
     * @param verdicts on every failure that it means here, the worst first; none where the
     *     candidate has no such thing
     * @param untold failures of these that could not be computed, with the reason
     */
    public record Case(String said, List<Verdict> verdicts, List<String> untold) {
        public Case {
            verdicts = List.copyOf(verdicts);
            untold = List.copyOf(untold);
        }

        /** The worst of what it means. */
        public Optional<Verdict> worst() {
            return verdicts.stream().findFirst();
        }

        /** Whether the candidate has no such thing. */
        public boolean absent() {
            return verdicts.isEmpty() && untold.isEmpty();
        }
    }

    /** Says what a failure does. */
    interface Judging {
        Verdict judge(Failure failure) throws UntoldStory;
    }

    public CandidateCases {
        cases = List.copyOf(cases);
    }

    /**
     * The cases of an appraised candidate, whose failures are all judged already.
     *
     * @param meant the failures that each case means there, in the study's order
     */
    public static CandidateCases of(Appraisal appraisal, Map<String, List<Failure>> meant) {
        return of(appraisal.candidate(), meant, appraisal::verdictOn);
    }

    static CandidateCases of(
            Candidate candidate, Map<String, List<Failure>> meant, Judging judging) {
        List<Case> cases = new ArrayList<>();
        meant.forEach((said, failures) -> cases.add(judged(said, failures, judging)));
        return new CandidateCases(candidate, cases);
    }

    private static Case judged(String said, List<Failure> failures, Judging judging) {
        List<Verdict> verdicts = new ArrayList<>();
        List<String> untold = new ArrayList<>();
        for (Failure failure : failures) {
            try {
                verdicts.add(judging.judge(failure));
            } catch (UntoldStory e) {
                untold.add(failure.name() + ": " + e.getMessage());
            }
        }
        verdicts.sort(WORST_FIRST);
        return new Case(said, verdicts, untold);
    }
}
