package stillturning.report.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import stillturning.assess.PhaseVerdict;
import stillturning.assess.PhaseVerdicts;
import stillturning.assess.Verdict;
import stillturning.model.Study;
import stillturning.report.Cautions;
import stillturning.report.PhaseTexts;
import stillturning.story.Moment.Batteries;

/** The shape of failures at every moment of the flight, in JSON. */
record PhasesJson(
        int schemaVersion,
        String caution,
        String study,
        List<OfFailure> failures,
        List<String> untold) {

    /** One failure of one candidate. */
    record OfFailure(String candidate, String failure, List<At> moments) {}

    /** One moment. */
    record At(
            String phase,
            boolean afterHardStart,
            @Nullable Double flightLeftSeconds,
            String outcome,
            Lasting pilotAsPlanned,
            Lasting pilotLate,
            Lasting pilotDoesNothing,
            @Nullable Double actBySeconds) {}

    static PhasesJson of(Study study, List<PhaseVerdicts> all, List<String> untold) {
        return new PhasesJson(
                JsonReport.SCHEMA_VERSION,
                Cautions.SHORT,
                study.id(),
                all.stream()
                        .map(
                                one ->
                                        new OfFailure(
                                                one.candidate().id(),
                                                one.failure().name(),
                                                one.moments().stream()
                                                        .map(at -> at(study, at))
                                                        .toList()))
                        .toList(),
                untold);
    }

    private static At at(Study study, PhaseVerdict one) {
        Verdict verdict = one.verdict();
        return new At(
                one.moment().phase(),
                one.moment().batteries() == Batteries.TIRED,
                JsonNumbers.number(PhaseTexts.secondsLeft(study, one.moment())),
                JsonNumbers.kebab(verdict.outcome()),
                Lasting.of(verdict.planned().engine().endurance()),
                Lasting.of(verdict.late().engine().endurance()),
                Lasting.of(verdict.unaided().engine().endurance()),
                verdict.actBySeconds().map(JsonNumbers::number).orElse(null));
    }
}
