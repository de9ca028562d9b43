package stillturning.report.json;

import static stillturning.report.json.JsonTypes.TEXTS;
import static stillturning.report.json.JsonTypes.word;

import stillturning.assess.crosscheck.Disagreement;
import stillturning.assess.crosscheck.StoryOnlyFact;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate.Hit;
import stillturning.model.Chances.Per;
import stillturning.model.Chances.Rate;
import stillturning.model.failure.Cause;
import stillturning.report.joint.SharedFindings;
import stillturning.report.joint.SharedFindings.Carrier;
import stillturning.report.joint.SharedFindings.PlayedCause;
import stillturning.structure.FunctionWays;
import stillturning.structure.SharedPlaces.CommonPlaceKind;
import stillturning.structure.SharedPlaces.HotFeed;
import stillturning.structure.SharedPlaces.SharedPlace;
import stillturning.structure.StructureFindings.SinglePoint;
import stillturning.structure.StructureFindings.SupplyWays;

/** Common causes, and what the shape of candidates says. */
final class CausesJson {

    private static final JsonShape<Hit> HIT =
            JsonShape.<Hit>named("hit").text("part", Hit::part).text("mode", h -> h.mode().name());

    private static final JsonShape<Verdict> RESULT =
            JsonShape.<Verdict>named("result")
                    .field("outcome", VerdictShapes.OUTCOME, Verdict::outcome)
                    .flag("engineOwn", Verdict::engineOwn)
                    .says("Whether it is the loss of something that no wiring can save.")
                    .field("lasts", VerdictShapes.LASTING, VerdictShapes::planned)
                    .says("How long the engine runs.");

    private static final JsonShape<Rate> RATE =
            JsonShape.<Rate>named("rate")
                    .chance("median", Rate::median)
                    .number("within", Rate::errorFactor)
                    .says("95th percentile over median.")
                    .word("per", Per.class, Rate::per)
                    .text("source", Rate::source);

    private static final JsonShape<PlayedCause> CAUSE =
            JsonShape.<PlayedCause>named("cause")
                    .text("name", p -> p.cause().name())
                    .word("kind", Cause.CauseKind.class, p -> p.cause().kind())
                    .text("words", p -> p.cause().words())
                    .list("takes", HIT, p -> p.cause().failure().hits())
                    .maybe("comesTo", RESULT, PlayedCause::verdict)
                    .maybe("rate", RATE, p -> p.cause().rate());

    private static final JsonShape<Carrier> CARRIER =
            JsonShape.<Carrier>named("carrier")
                    .text("failure", c -> c.verdict().failure().name())
                    .field("loads", TEXTS.with("minItems", 2), Carrier::loads)
                    .field("comesTo", RESULT, Carrier::verdict);

    private static final JsonShape<SupplyWays> WAYS =
            JsonShape.<SupplyWays>named("ways")
                    .list("independent", JsonTypes.TEXTS, SupplyWays::independent)
                    .says("The most ways of which no two share a part.")
                    .texts("cut", SupplyWays::cut)
                    .says("The fewest parts without which there is none.")
                    .texts("shared", SupplyWays::shared)
                    .says("Parts that every way passes.");

    private static final JsonShape<FunctionWays> FUNCTION =
            JsonShape.<FunctionWays>named("function")
                    .text("function", FunctionWays::function)
                    .flag("supplied", FunctionWays::supplied)
                    .maybe("feed", WAYS, FunctionWays::feed)
                    .maybe("back", WAYS, FunctionWays::back)
                    .list("cuts", JsonTypes.TEXTS, FunctionWays::cuts)
                    .says("Smallest sets of one or two parts without which it is not supplied.")
                    .text("words", FunctionWays::words);

    private static final JsonShape<SinglePoint> SINGLE_POINT =
            JsonShape.<SinglePoint>named("singlePoint")
                    .text("part", SinglePoint::part)
                    .text("reason", SinglePoint::reason);

    private static final JsonShape<SharedPlace> SHARED_PLACE =
            JsonShape.<SharedPlace>named("sharedPlace")
                    .text("function", SharedPlace::function)
                    .word("kind", CommonPlaceKind.class, s -> s.place().kind())
                    .text("place", s -> s.place().name())
                    .flag("neitherElsewhere", SharedPlace::neitherElsewhere)
                    .says("Whether neither has a way left without what is there.")
                    .flag("necessary", SharedPlace::necessary)
                    .says("Whether both have an end there.")
                    .text("words", SharedPlace::words);

    private static final JsonShape<HotFeed> HOT_FEED =
            JsonShape.<HotFeed>named("hotFeed")
                    .text("function", HotFeed::function)
                    .text("source", HotFeed::source)
                    .text("load", h -> h.strand().load())
                    .flag("endsThere", HotFeed::endsThere)
                    .text("words", HotFeed::words);

    private static final JsonShape<Disagreement> DISAGREEMENT =
            JsonShape.<Disagreement>named("disagreement")
                    .maybe("part", JsonTypes.TEXT, Disagreement::part)
                    .says("The part removed; null for nothing.")
                    .flag("shapeSays", Disagreement::structureSays)
                    .says("Whether the shape still supplies the engine.")
                    .flag("storySays", Disagreement::storySays)
                    .says("Whether it runs in its story.")
                    .list("because", word(StoryOnlyFact.class), Disagreement::because)
                    .says(
                            "Taken away together these make both say the same; empty where nothing"
                                    + " explains it.");

    private static final JsonShape<SharedFindings> CANDIDATE =
            JsonShape.<SharedFindings>named("candidate")
                    .text("candidate", s -> s.candidate().id())
                    .list("causes", CAUSE, SharedFindings::causes)
                    .list("carriers", CARRIER, SharedFindings::carriers)
                    .says(
                            "Failures of connectors, grounds and switches that take feeds of"
                                    + " several of the engine's loads.")
                    .list("functions", FUNCTION, s -> s.shape().functions())
                    .list("singlePoints", SINGLE_POINT, s -> s.shape().singlePoints())
                    .list("sharedPlaces", SHARED_PLACE, s -> s.shape().places().shared())
                    .list("hotSide", HOT_FEED, s -> s.shape().places().hotSide())
                    .list("disagreements", DISAGREEMENT, SharedFindings::disagreements)
                    .texts("untold", SharedFindings::untold);

    static final JsonDocument<StudyAnswer<SharedFindings>> CAUSES =
            new JsonDocument<>(
                    "Common causes and shape",
                    "What fails several parts at once and what it does; what the shape of each"
                            + " candidate says.",
                    StudyAnswer.<SharedFindings>start()
                            .list("candidates", CANDIDATE, StudyAnswer::found));

    private CausesJson() {}
}
