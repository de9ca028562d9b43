package stillturning.report.json;

import static stillturning.report.json.JsonTypes.WHOLE;
import static stillturning.report.json.JsonTypes.list;

import java.util.List;
import java.util.stream.IntStream;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate.Hit;
import stillturning.reliability.chance.Basis;
import stillturning.reliability.chance.ChanceRange;
import stillturning.reliability.chance.Estimate;
import stillturning.reliability.combined.Event;
import stillturning.reliability.cutset.Healing;
import stillturning.reliability.likelihood.ChanceEstimate;
import stillturning.reliability.likelihood.SetShare;
import stillturning.reliability.likelihood.Share;
import stillturning.report.joint.CombinedFindings;
import stillturning.report.joint.CombinedFindings.PairToKnow;

/** What events do together, and how likely it is. */
final class PairsJson {

    /** A set for which nobody could say. */
    private record Untold(List<Integer> set, String reason) {}

    private static final JsonType<List<? extends Number>> SET =
            list(WHOLE.with("minimum", 0)).with("description", "Numbers of events, rising.");

    private static final JsonShape<Event> EVENT =
            JsonShape.<Event>named("event")
                    .text("name", Event::name)
                    .word("kind", Event.EventKind.class, Event::kind)
                    .texts(
                            "parts",
                            e -> e.failure().hits().stream().map(Hit::part).distinct().toList());

    private static final JsonShape<Healing> UNDONE =
            JsonShape.<Healing>named("undone")
                    .field("set", SET, Healing::set)
                    .whole("by", Healing::by)
                    .says("The event that undoes it.");

    private static final JsonShape<Untold> UNTOLD =
            JsonShape.<Untold>named("untold")
                    .field("set", SET, Untold::set)
                    .text("reason", Untold::reason);

    private static final JsonShape<CombinedFindings> SEARCH =
            JsonShape.<CombinedFindings>named("search")
                    .whole("order", f -> f.joint().sets().order())
                    .says("Events in a set at most.")
                    .whole("asked", f -> f.joint().sets().asked())
                    .whole("stories", f -> f.joint().stories())
                    .flag("complete", f -> f.joint().sets().complete())
                    .says("false only if the search was called off.")
                    .list("undone", UNDONE, f -> f.joint().sets().healings())
                    .says("Sets that end nothing once one more event comes.")
                    .list("untold", UNTOLD, PairsJson::untold)
                    .says("Sets for which nobody could say; they count as ending the engine.");

    private static final JsonShape<SetShare> SET_SHARE =
            JsonShape.<SetShare>named("setShare")
                    .field("set", SET, SetShare::events)
                    .chance("perFlight", SetShare::perFlight)
                    .says(
                            "In the average flight, in the mean of what the rates may be, the"
                                    + " run-up before every flight.")
                    .chance("share", SetShare::share)
                    .says("Of the sum over all sets that count.");

    private static final JsonShape<Estimate> POINT =
            JsonShape.<Estimate>named("point")
                    .word("basis", Basis.class, Estimate::basis)
                    .chance("value", Estimate::value)
                    .chance("low", Estimate::low)
                    .says("No truth lies below.")
                    .chance("high", Estimate::high)
                    .says("No truth lies above.")
                    .chance("rareEventSum", Estimate::rareEventSum)
                    .says("All sets simply added.");

    private static final JsonShape<ChanceRange> RANGE =
            JsonShape.<ChanceRange>named("range")
                    .chance("low5", ChanceRange::low5)
                    .says("Every rate anywhere in its spread: 5th percentile.")
                    .chance("median", ChanceRange::median)
                    .chance("high95", ChanceRange::high95);

    private static final JsonShape<ChanceEstimate> ESTIMATED =
            JsonShape.<ChanceEstimate>named("estimated")
                    .field("perFlight", POINT, e -> e.point().average())
                    .says("The average flight, in the mean of what the rates may be.")
                    .field("perFlightRange", RANGE, e -> e.ranges().average())
                    .field("perHour", POINT, e -> e.point().averagePerHour())
                    .says("The same an hour flown.")
                    .field("perHourRange", RANGE, e -> e.ranges().averagePerHour())
                    .field("lastFlight", POINT, e -> e.point().last())
                    .says("The last flight before all inspections.")
                    .field("lastFlightRange", RANGE, e -> e.ranges().last());

    private static final JsonShape<Share> WEIGHT =
            JsonShape.<Share>named("weight")
                    .text("name", Share::name)
                    .chance("criticality", s -> s.importance().criticality())
                    .says("Share that goes if it never happened.")
                    .chance("birnbaum", s -> s.importance().birnbaum())
                    .chance("fussellVesely", s -> s.importance().fussellVeselySum())
                    .says("Share of the sum over the sets with it.")
                    .chance("riskAchievement", s -> s.importance().riskAchievement())
                    .says("Times likelier if it surely happened.")
                    .chance("riskReduction", s -> s.importance().riskReduction())
                    .says("Times likelier than if it never happened; null for endless.");

    private static final JsonShape<CombinedFindings> CHANCES =
            JsonShape.<CombinedFindings>named("chances")
                    .number("flightSeconds", f -> f.likely().checked().point().flightSeconds())
                    .field("runUpBeforeEveryFlight", ESTIMATED, f -> f.likely().checked())
                    .field("neverARunUp", ESTIMATED, f -> f.likely().unchecked())
                    .list("parts", WEIGHT, f -> f.likely().parts())
                    .says("All failures of a part as one, the most important first.")
                    .list("others", WEIGHT, f -> f.likely().causes())
                    .says("Common causes, left switches, the idle pilot.");

    private static final JsonShape<Verdict> TOLD =
            JsonShape.<Verdict>named("told")
                    .text("failure", v -> v.failure().name())
                    .field("outcome", VerdictShapes.OUTCOME, Verdict::outcome)
                    .says("What it comes to, the pilot as planned.")
                    .field("lasts", VerdictShapes.LASTING, VerdictShapes::planned);

    private static final JsonShape<PairToKnow> PAIR =
            JsonShape.<PairToKnow>named("pair")
                    .field("set", SET, PairToKnow::events)
                    .field("together", TOLD, PairToKnow::together)
                    .field(
                            "alone",
                            list(TOLD).with("minItems", 2).with("maxItems", 2),
                            p -> List.of(p.one(), p.other()));

    private static final JsonShape<CombinedFindings> CANDIDATE =
            JsonShape.<CombinedFindings>named("candidate")
                    .text("candidate", f -> f.candidate().id())
                    .list("events", EVENT, f -> f.joint().events())
                    .says("Sets name events by their place in this list, counted from 0.")
                    .field("search", SEARCH, f -> f)
                    .list("sets", SET_SHARE, f -> f.likely().worst())
                    .says("Every set that counts, the likeliest first.")
                    .list("engineOwn", SET, f -> f.likely().engineOwn())
                    .says(
                            "Sets left out: the engine's own failures alone, the same in every"
                                    + " candidate.")
                    .field("chances", CHANCES, f -> f)
                    .maybe("pairToKnow", PAIR, CombinedFindings::pair)
                    .texts("supposed", f -> f.likely().supposed())
                    .says("What is supposed, in sentences.");

    static final JsonDocument<StudyAnswer<CombinedFindings>> PAIRS =
            new JsonDocument<>(
                    "What events do together",
                    "The smallest sets of events that end the engine, and how likely that is. It"
                            + " compares candidates and certifies nothing.",
                    StudyAnswer.list("candidates", CANDIDATE));

    private PairsJson() {}

    private static List<Untold> untold(CombinedFindings found) {
        List<List<Integer>> sets = found.joint().sets().untold();
        return IntStream.range(0, sets.size())
                .mapToObj(i -> new Untold(sets.get(i), found.joint().untold().get(i)))
                .toList();
    }
}
