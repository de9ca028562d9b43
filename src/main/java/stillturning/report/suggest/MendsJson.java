package stillturning.report.suggest;

import stillturning.assess.suggest.LightestMends;
import stillturning.assess.suggest.LightestMends.LightMend;
import stillturning.assess.suggest.StudyMends;
import stillturning.report.json.JsonDocument;
import stillturning.report.json.JsonShape;

/** The lightest change for each thing that is wrong with some candidates. */
public final class MendsJson {

    private static final JsonShape<LightMend> CHANGE =
            JsonShape.<LightMend>named("lightestChange")
                    .field("change", SuggestJson.SUGGESTION, LightMend::suggestion)
                    .texts("mends", m -> m.suggestion().mended().mended())
                    .texts("firstChoiceFor", LightMend::first)
                    .says(
                            "What it mends with the fewest new troubles, and of such changes with"
                                    + " the least weight.")
                    .texts("lighterFor", LightMend::lighter)
                    .says("What it mends with less weight than that, and more new troubles.");

    private static final JsonShape<LightestMends> CANDIDATE =
            JsonShape.<LightestMends>named("mendedCandidate")
                    .text("candidate", m -> m.before().candidate().id())
                    .texts("wrong", m -> m.wanted().names())
                    .says("Single failures that lose the engine, then requirements it misses.")
                    .texts("unmended", LightestMends::unmended)
                    .says("What nothing that was looked at mends.")
                    .texts("mendedAtALoss", LightestMends::mendedAtALoss)
                    .says(
                            "What is mended by nothing but changes that bring more new single"
                                    + " failures that lose the engine than they take away.")
                    .list("changes", CHANGE, LightestMends::mends)
                    .whole("outweighed", m -> m.outweighed().size())
                    .says("Such changes that --all has last among the changes.")
                    .whole("moves", m -> m.done().moves())
                    .says("Most moves one after the other.")
                    .whole("tried", m -> m.done().tally().tried())
                    .whole("mending", m -> m.done().tally().met())
                    .whole("notTried", m -> m.done().tally().left())
                    .says("Moves that were known and not made.")
                    .flag("whole", m -> m.done().whole())
                    .says("Whether all within so many moves was looked at.");

    /** The whole document. */
    public static final JsonDocument<StudyMends> MENDS =
            new JsonDocument<>(
                    "The lightest changes that would mend the candidates of a study",
                    "One for each thing that is wrong, each assessed in full.",
                    JsonDocument.<StudyMends>start()
                            .list("candidates", CANDIDATE, StudyMends::candidates)
                            .texts("untold", StudyMends::untold)
                            .says("Candidates that cannot be computed, each with the reason."));

    private MendsJson() {}
}
