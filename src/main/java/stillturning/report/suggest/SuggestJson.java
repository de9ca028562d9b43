package stillturning.report.suggest;

import java.util.List;
import java.util.Map;
import stillturning.assess.CandidateDifferences.Shift;
import stillturning.assess.suggest.Suggestion;
import stillturning.assess.suggest.Suggestion.CandidateBurden;
import stillturning.assess.suggest.Suggestion.Worsening;
import stillturning.assess.suggest.Suggestions;
import stillturning.assess.verdict.Outcome;
import stillturning.parts.Part;
import stillturning.report.json.JsonDocument;
import stillturning.report.json.JsonShape;

/** What would mend a candidate. */
public final class SuggestJson {

    private static final JsonShape<Map.Entry<String, Outcome>> FAILURE =
            JsonShape.<Map.Entry<String, Outcome>>named("wantedFailure")
                    .text("failure", Map.Entry::getKey)
                    .word("outcome", Outcome.class, Map.Entry::getValue);

    private static final JsonShape<CandidateBurden> BURDEN =
            JsonShape.<CandidateBurden>named("burden")
                    .number("kilograms", CandidateBurden::kilograms)
                    .whole("parts", CandidateBurden::parts)
                    .says("Without the loads.")
                    .number("price", CandidateBurden::price)
                    .number("complexity", CandidateBurden::complexity)
                    .whole("pilotActs", CandidateBurden::acts);

    private static final JsonShape<Worsening> TROUBLE =
            JsonShape.<Worsening>named("newTrouble")
                    .text("what", Worsening::what)
                    .text("comesTo", Worsening::comesTo);

    private static final JsonShape<Shift> SHIFT =
            JsonShape.<Shift>named("shift")
                    .text("failure", Shift::failure)
                    .word("before", Outcome.class, Shift::before)
                    .word("after", Outcome.class, Shift::after);

    static final JsonShape<Suggestion> SUGGESTION =
            JsonShape.<Suggestion>named("suggestion")
                    .texts("moves", Suggestion::moves)
                    .texts("left", Suggestion::left)
                    .says("What it does not mend of what was asked for.")
                    .list("newTroubles", TROUBLE, Suggestion::troubles)
                    .texts("engineLosingNew", s -> s.losses().brought())
                    .says("Single failures that lose the engine and did not before.")
                    .texts("engineLosingGone", s -> s.losses().gone())
                    .says("Single failures that lost the engine and no longer do.")
                    .field("burden", BURDEN, Suggestion::after)
                    .texts("added", s -> ids(s.differences().added()))
                    .texts("leftOut", s -> ids(s.differences().leftOut()))
                    .texts("altered", s -> ids(s.differences().altered()))
                    .list("failures", SHIFT, s -> s.differences().shifts())
                    .says("Failures that both can have and that do not come to the same.");

    /** The whole document. */
    public static final JsonDocument<Suggestions> SUGGESTIONS =
            new JsonDocument<>(
                    "Small changes that would mend a candidate",
                    "What nothing else found outdoes, each assessed in full.",
                    JsonDocument.<Suggestions>start()
                            .text("candidate", s -> s.before().candidate().id())
                            .text("currency", s -> s.study().heading().currency())
                            .list(
                                    "failures",
                                    FAILURE,
                                    s -> List.copyOf(s.wanted().failures().entrySet()))
                            .says("Single failures to be mended, with what comes of them.")
                            .texts("requirements", s -> s.wanted().requirements())
                            .says("Missed requirements to be met.")
                            .texts("others", s -> s.wanted().others())
                            .says(
                                    "What else is to be mended, in words: a pair of failures, a"
                                            + " switch left wrong, a size.")
                            .maybe(
                                    "burden",
                                    BURDEN,
                                    s -> s.found().stream().findFirst().map(Suggestion::before))
                            .says("Of the candidate as it is; null where nothing was found.")
                            .list("suggestions", SUGGESTION, Suggestions::found)
                            .whole("outweighed", s -> s.outweighed().size())
                            .says(
                                    "More that mend some of it and bring more new single failures"
                                            + " that lose the engine than they take away; --all"
                                            + " has them last among the suggestions.")
                            .whole("moves", s -> s.done().moves())
                            .says("Most moves one after the other.")
                            .whole("tried", s -> s.done().tally().tried())
                            .whole("mending", s -> s.done().tally().met())
                            .whole("notTried", s -> s.done().tally().left())
                            .says("Moves that were known and not made.")
                            .flag("whole", s -> s.done().whole())
                            .says("Whether all within so many moves was looked at."));

    private SuggestJson() {}

    private static List<String> ids(List<Part> parts) {
        return parts.stream().map(Part::id).toList();
    }
}
