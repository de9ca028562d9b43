package stillturning.report.json;

import static stillturning.report.json.VerdictShapes.BY_PILOT;
import static stillturning.report.json.VerdictShapes.OUTCOME;

import stillturning.assess.Elsewhere.WorseInPhase;
import stillturning.assess.verdict.PhaseVerdict;
import stillturning.assess.verdict.PhaseVerdicts;
import stillturning.model.Study;
import stillturning.report.terminal.PhaseTexts;
import stillturning.story.Moment;
import stillturning.story.Moment.Batteries;

/** Failures at other moments of the flight. */
final class MomentsJson {

    /** A failure at a moment of a study's flight. */
    private record At(Study study, PhaseVerdict one) {}

    /** A failure at every moment of a study's flight. */
    record Everywhere(Study study, PhaseVerdicts of) {}

    private static final JsonShape<Moment> MOMENT =
            JsonShape.<Moment>named("moment")
                    .text("phase", Moment::phase)
                    .says("The failure comes as it begins.")
                    .flag("afterHardStart", m -> m.batteries() == Batteries.TIRED)
                    .says("Whether the batteries are as a hard start leaves them.");

    private static final JsonShape<At> AT =
            JsonShape.<At>named("at")
                    .fieldsOf(MOMENT, at -> at.one.moment())
                    .number(
                            "flightLeftSeconds",
                            at -> PhaseTexts.secondsLeft(at.study, at.one.moment()))
                    .says("From then to the landing (s).")
                    .field("outcome", OUTCOME, at -> at.one.verdict().outcome())
                    .says("What the failure does, worst first in the list of values.")
                    .fieldsOf(BY_PILOT, at -> at.one.verdict());

    private static final JsonShape<Everywhere> FAILURE =
            JsonShape.<Everywhere>named("failure")
                    .text("candidate", f -> f.of.candidate().id())
                    .text("failure", f -> f.of.failure().name())
                    .list(
                            "moments",
                            AT,
                            f -> f.of.moments().stream().map(m -> new At(f.study, m)).toList())
                    .says("In the order of the flight.");

    static final JsonDocument<StudyAnswer<Everywhere>> PHASES =
            new JsonDocument<>(
                    "Failures at every moment of the flight",
                    "Each failure as each phase begins, the rest of the flight being flown.",
                    StudyAnswer.list("failures", FAILURE));

    private static final JsonShape<WorseInPhase> WORSE =
            JsonShape.<WorseInPhase>named("worse")
                    .text("candidate", WorseInPhase::candidate)
                    .text("failure", WorseInPhase::failure)
                    .field("outcomeWhereTried", OUTCOME, WorseInPhase::usual)
                    .fieldsOf(MOMENT, WorseInPhase::moment)
                    .field("outcome", OUTCOME, WorseInPhase::there)
                    .says("What the failure does, worst first in the list of values.")
                    .number("enduranceSeconds", WorseInPhase::seconds)
                    .says(
                            "How long the engine runs on then (s); null where it is to the"
                                    + " landing.");

    static final JsonDocument<StudyAnswer<WorseInPhase>> ELSEWHERE =
            new JsonDocument<>(
                    "Failures that do worse elsewhere in the flight",
                    "Single failures that do worse at the start of another phase, the rest of the"
                            + " flight being flown, than in the phase in which the study tries"
                            + " them.",
                    StudyAnswer.<WorseInPhase>start()
                            .text("triedInPhase", a -> a.study().goals().failurePhase().name())
                            .says("The phase in which the study tries failures.")
                            .list("failures", WORSE, StudyAnswer::found)
                            .says("By candidate, worst first.")
                            .texts("untold", StudyAnswer::untold)
                            .says(
                                    "Moments at which no failure can be tried, each with its reason."));

    private MomentsJson() {}
}
