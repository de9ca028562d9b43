package stillturning.report.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import stillturning.assess.WorseInPhase;
import stillturning.model.Study;
import stillturning.report.Cautions;
import stillturning.story.Moment.Batteries;

/** The shape of failures that do worse elsewhere in the flight, in JSON. */
record ElsewhereJson(
        int schemaVersion,
        String caution,
        String study,
        String triedInPhase,
        List<Worse> failures) {

    /** One failure of one candidate. */
    record Worse(
            String candidate,
            String failure,
            String outcomeWhereTried,
            String phase,
            boolean afterHardStart,
            String outcome,
            @Nullable Double enduranceSeconds) {}

    static ElsewhereJson of(Study study, List<WorseInPhase> worse) {
        return new ElsewhereJson(
                JsonReport.SCHEMA_VERSION,
                Cautions.SHORT,
                study.id(),
                study.goals().failurePhase().name(),
                worse.stream()
                        .map(
                                one ->
                                        new Worse(
                                                one.candidate(),
                                                one.failure(),
                                                JsonNumbers.kebab(one.usual()),
                                                one.moment().phase(),
                                                one.moment().batteries() == Batteries.TIRED,
                                                JsonNumbers.kebab(one.there()),
                                                JsonNumbers.number(one.seconds())))
                        .toList());
    }
}
