package stillturning.report.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import stillturning.assess.CandidateCases;
import stillturning.assess.CandidateCases.Case;
import stillturning.assess.Verdict;
import stillturning.model.Study;
import stillturning.report.Cautions;

/** The shape of what the study's own cases do, in JSON. */
record CasesJson(
        int schemaVersion,
        String caution,
        String study,
        List<String> cases,
        List<OfCandidate> candidates) {

    /** One candidate, its cases in the order of the list above. */
    record OfCandidate(String candidate, List<One> cases) {}

    /**
     * One case.
     *
     * @param means failures that it means here
     * @param worst what the worst of them does; null where there is none
     */
    record One(String said, List<String> means, @Nullable Worst worst, List<String> untold) {}

    /** The worst of the failures that a case means. */
    record Worst(
            String failure,
            String outcome,
            @Nullable Double interruptionSeconds,
            Lasting pilotAsPlanned,
            Lasting pilotLate,
            Lasting pilotDoesNothing,
            @Nullable Double actBySeconds) {}

    static CasesJson of(Study study, List<CandidateCases> all) {
        return new CasesJson(
                JsonReport.SCHEMA_VERSION,
                Cautions.SHORT,
                study.id(),
                study.goals().cases(),
                all.stream()
                        .map(
                                of ->
                                        new OfCandidate(
                                                of.candidate().id(),
                                                of.cases().stream().map(CasesJson::one).toList()))
                        .toList());
    }

    private static One one(Case one) {
        return new One(
                one.said(),
                one.verdicts().stream().map(v -> v.failure().name()).toList(),
                one.worst().map(CasesJson::worst).orElse(null),
                one.untold());
    }

    private static Worst worst(Verdict verdict) {
        return new Worst(
                verdict.failure().name(),
                JsonNumbers.kebab(verdict.outcome()),
                JsonNumbers.number(verdict.planned().engine().longestInterruptionSeconds()),
                Lasting.of(verdict.planned().engine().endurance()),
                Lasting.of(verdict.late().engine().endurance()),
                Lasting.of(verdict.unaided().engine().endurance()),
                verdict.actBySeconds().map(JsonNumbers::number).orElse(null));
    }
}
