package stillturning.report.json;

import static stillturning.report.json.JsonTypes.word;

import java.util.Optional;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Remark;
import stillturning.assess.verdict.ToleranceOutcome;
import stillturning.assess.verdict.Verdict;
import stillturning.story.Endurance;

/** What a failure comes to, as several documents say it. */
final class VerdictShapes {

    static final JsonType<Outcome> OUTCOME = word(Outcome.class);

    /** What is said beside an outcome. */
    static final JsonShape<Remark> REMARK =
            JsonShape.<Remark>named("remark")
                    .word("topic", Remark.Topic.class, Remark::topic)
                    .says("What it is about, the gravest first in the list of values.")
                    .text("words", Remark::words);

    /** How long the engine runs. */
    static final JsonShape<Endurance> LASTING =
            JsonShape.<Endurance>named("lasting")
                    .number("enduranceSeconds", Endurance::seconds)
                    .says(
                            "Time from the failure until the engine can no longer run (s); null"
                                    + " where electricity does not end it.")
                    .flag("enduranceLimited", JsonNumbers::limited)
                    .says("Whether electricity ends the engine's running.")
                    .flag("enduranceUntold", e -> e instanceof Endurance.Untold)
                    .says("Whether what follows then cannot be computed, and counts as its end.");

    /** How long the engine runs with each kind of pilot. */
    static final JsonShape<Verdict> BY_PILOT =
            JsonShape.<Verdict>named("byPilot")
                    .field("pilotAsPlanned", LASTING, VerdictShapes::planned)
                    .field("pilotLate", LASTING, v -> v.late().engine().endurance())
                    .field("pilotDoesNothing", LASTING, v -> v.unaided().engine().endurance())
                    .maybe("actBySeconds", JsonTypes.NUMBER, Verdict::actBySeconds)
                    .says(
                            "When the engine stops if the pilot does nothing (s); null where it"
                                    + " does not depend on him.");

    /** What the tolerance of protectors leaves open after one failure. */
    static final JsonShape<ToleranceOutcome> WITHIN_TOLERANCE =
            JsonShape.<ToleranceOutcome>named("withinTolerance")
                    .text("expected", ToleranceOutcome::expected)
                    .says("The part that typically gives way, here as slow as its band allows.")
                    .maybe(
                            "instead",
                            JsonTypes.TEXT,
                            t -> Optional.of(t.instead()).filter(part -> t.unselective()))
                    .says(
                            "The part that may give way before it, as fast as its band allows;"
                                    + " null for none.")
                    .number("fastSeconds", ToleranceOutcome::fastSeconds)
                    .says("When that may be (s).")
                    .number("slowSeconds", ToleranceOutcome::slowSeconds)
                    .says(
                            "How long the expected part may take (s); null if it might never"
                                    + " open.")
                    .field("outcome", OUTCOME, t -> t.then().outcome())
                    .says("What the failure then does.");

    private VerdictShapes() {}

    static Endurance planned(Verdict verdict) {
        return verdict.planned().engine().endurance();
    }
}
