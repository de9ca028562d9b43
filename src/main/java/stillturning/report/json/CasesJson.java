package stillturning.report.json;

import stillturning.assess.CandidateCases;
import stillturning.assess.CandidateCases.Case;
import stillturning.assess.verdict.Verdict;

/** What the study's own cases do. */
final class CasesJson {

    private static final JsonShape<Verdict> WORST =
            JsonShape.<Verdict>named("worst")
                    .text("failure", v -> v.failure().name())
                    .field("outcome", VerdictShapes.OUTCOME, Verdict::outcome)
                    .says("What the failure does, worst first in the list of values.")
                    .list("remarks", VerdictShapes.REMARK, Verdict::remarks)
                    .says("What the outcome alone does not say, the gravest first.")
                    .number(
                            "interruptionSeconds",
                            v -> v.planned().engine().longestInterruptionSeconds())
                    .says(
                            "Longest time that the engine's needs are not met without stopping it"
                                    + " (s).")
                    .fieldsOf(VerdictShapes.BY_PILOT, v -> v);

    private static final JsonShape<Case> CASE =
            JsonShape.<Case>named("case")
                    .text("said", Case::said)
                    .texts(
                            "means",
                            c -> c.verdicts().stream().map(v -> v.failure().name()).toList())
                    .says(
                            "Failures that the words mean in this candidate, the worst first; empty"
                                    + " where it has no such thing.")
                    .maybe("worst", WORST, Case::worst)
                    .texts("untold", Case::untold)
                    .says("Failures that could not be computed, with the reason.");

    private static final JsonShape<CandidateCases> CANDIDATE =
            JsonShape.<CandidateCases>named("candidate")
                    .text("candidate", c -> c.candidate().id())
                    .list("cases", CASE, CandidateCases::cases)
                    .says("In the order of the study's list.");

    static final JsonDocument<StudyAnswer<CandidateCases>> CASES =
            new JsonDocument<>(
                    "The study's own cases",
                    "What each case of the study does to each candidate; where it means several"
                            + " failures, the worst of them.",
                    StudyAnswer.<CandidateCases>start()
                            .texts("cases", a -> a.study().goals().cases())
                            .says("As the study calls them.")
                            .list("candidates", CANDIDATE, StudyAnswer::found));

    private CasesJson() {}
}
