package stillturning.report.json;

import static stillturning.report.json.JsonTypes.WHOLE;
import static stillturning.report.json.JsonTypes.word;
import static stillturning.report.json.VerdictShapes.LASTING;
import static stillturning.report.json.VerdictShapes.OUTCOME;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.assess.Appraisal;
import stillturning.assess.Appraisal.Cases;
import stillturning.assess.Appraisal.Measures;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.PilotBurden;
import stillturning.assess.SheddingEndurances;
import stillturning.assess.ranking.Contribution;
import stillturning.assess.ranking.RankShares;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Standing;
import stillturning.assess.verdict.LeftSwitch;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Selectivity;
import stillturning.model.goal.CriterionName;
import stillturning.report.MissingWarnings;
import stillturning.report.MoveTexts;
import stillturning.report.NormalFlightTexts;
import stillturning.report.UntoldTexts;
import stillturning.story.StartAttempt;

/** One candidate of a ranked comparison. */
final class CandidateShapes {

    /** A candidate among the others. */
    record Ranked(Appraisal appraisal, RankingResult ranking, String reason) {

        Standing standing() {
            return ranking.standing(appraisal.candidate().id());
        }

        List<Double> rankShares() {
            return shares().flatMap(s -> s.byRank().stream()).toList();
        }

        List<Double> centralWeights() {
            return shares().flatMap(s -> s.centralWeights().stream()).toList();
        }

        private Stream<RankShares> shares() {
            return ranking.robustness().shares().stream()
                    .filter(s -> s.name().equals(standing().name()));
        }
    }

    static final JsonType<CriterionName> CRITERION = word(CriterionName.class);

    private static final JsonShape<Ranked> PLACE =
            JsonShape.<Ranked>named("place")
                    .field("rank", WHOLE.with("minimum", 1), r -> r.standing().rank())
                    .number("points", r -> r.standing().total())
                    .says("Sum of the contributions, 0 to 1.")
                    .flag("efficient", r -> r.standing().efficient())
                    .says(
                            "Whether no other candidate is at least as good in everything and"
                                    + " better in one thing.")
                    .texts("dominatedBy", r -> r.standing().dominatedBy())
                    .list("rankShares", JsonTypes.NUMBER, Ranked::rankShares)
                    .says("Share of all weightings in which it takes rank 1, 2, ...")
                    .list("centralWeights", JsonTypes.NUMBER, Ranked::centralWeights)
                    .says(
                            "Mean of the weightings that put it first, in the criteria's order;"
                                    + " empty where none does.")
                    .text("reason", Ranked::reason);

    private static final JsonShape<RequirementMet> REQUIREMENT =
            JsonShape.<RequirementMet>named("requirement")
                    .text("requirement", RequirementMet::requirement)
                    .flag("met", RequirementMet::met)
                    .text("reason", RequirementMet::reasonInFull)
                    .text("margin", RequirementMet::margin)
                    .says("How far from its limit; empty where it has none.");

    private static final JsonShape<Contribution> VALUE =
            JsonShape.<Contribution>named("value")
                    .field("criterion", CRITERION, c -> criterion(c.criterion()))
                    .number("value", Contribution::value)
                    .says("Endurance in seconds, weight in kilograms; null where not limited.")
                    .flag("limited", c -> Double.isFinite(c.value()))
                    .number("worth", Contribution::worth)
                    .says("Place on the scale, 0 to 1; what lies beyond an end counts as the end.")
                    .number("points", Contribution::points)
                    .says("Weight times worth.");

    private static final JsonShape<Selectivity.ProtectorPair> PAIR =
            JsonShape.<Selectivity.ProtectorPair>named("unselectivePair")
                    .text("upstream", Selectivity.ProtectorPair::upstream)
                    .says("The part that may give way too soon.")
                    .text("downstream", Selectivity.ProtectorPair::downstream)
                    .says("The part that is meant to give way first.")
                    .whole("failures", Selectivity.ProtectorPair::failures)
                    .says("How many single failures this concerns.")
                    .text("example", p -> p.worst().failure())
                    .says("The worst of them.")
                    .number("fastSeconds", p -> p.worst().fastSeconds())
                    .says("When the upstream part may give way after it (s).")
                    .number("slowSeconds", p -> p.worst().slowSeconds())
                    .says(
                            "How long the downstream part may take (s); null if it might never"
                                    + " open.")
                    .field("outcome", OUTCOME, p -> p.worst().outcome())
                    .field("typically", OUTCOME, p -> p.worst().typically());

    private static final JsonShape<SheddingEndurances> SHEDDING =
            JsonShape.<SheddingEndurances>named("shedding")
                    .field("nothingSwitchedOff", LASTING, SheddingEndurances::sheddingNothing)
                    .field("asWritten", LASTING, SheddingEndurances::asWritten)
                    .field("allButTheEngineOff", LASTING, s -> s.best().endurance())
                    .says("The best that switching off what the engine can spare makes of it.")
                    .texts("engineLoadsOff", s -> s.best().spared())
                    .says("Loads of the engine that are then off too.")
                    .maybe(
                            "shortTimeLoadsAtTheWorstTime",
                            LASTING,
                            s -> s.worstPlaced().map(SheddingEndurances.WorstPlace::endurance));

    private static final JsonShape<LeftSwitch> LEFT_SWITCH =
            JsonShape.<LeftSwitch>named("leftSwitch")
                    .text("lever", LeftSwitch::lever)
                    .text("normally", LeftSwitch::normally)
                    .text("position", LeftSwitch::position)
                    .flag("engineRunsOnTheGround", LeftSwitch::runsAtRest)
                    .maybe("untold", JsonTypes.TEXT, LeftSwitch::untold)
                    .says("Why nobody can say how the aircraft then stands, if so.")
                    .texts("cues", LeftSwitch::cues)
                    .says("What shows before the flight and would not with the switch right.")
                    .maybe("outcome", OUTCOME, LeftSwitch::outcome)
                    .says(
                            "What comes of it in flight; null where the engine does not run on the"
                                    + " ground.")
                    .maybe("pilotAsPlanned", LASTING, s -> s.verdict().map(VerdictShapes::planned));

    private static final JsonShape<StartAttempt> START =
            JsonShape.<StartAttempt>named("start")
                    .text("conditions", StartAttempt::conditions)
                    .flag("runs", StartAttempt::runs)
                    .number("seconds", StartAttempt::seconds)
                    .says("From the key to running, or to giving up (s).")
                    .number("starterAmps", StartAttempt::starterAmps)
                    .says("Highest current of the starter (A).")
                    .map("lowestVolts", JsonTypes.NUMBER, StartAttempt::lowestVolts)
                    .says("By load (V).")
                    .texts("resets", StartAttempt::resets)
                    .says("Loads of the engine that stop on the way.")
                    .maybe("untold", JsonTypes.TEXT, StartAttempt::untold)
                    .says("Why it cannot be told on and counts as failed, if so.");

    private static final JsonShape<Cases> BESIDE =
            JsonShape.<Cases>named("beside")
                    .field("chargingLost", SHEDDING, Cases::lasting)
                    .says(
                            "How long the engine runs once charging is lost, by what is switched"
                                    + " off; the last as written, with loads that run now and then"
                                    + " running in one block at the worst time, null where that"
                                    + " cannot be told.")
                    .list("leftSwitches", LEFT_SWITCH, Cases::leftSwitches)
                    .says(
                            "Each switch of normal flight left in another position before the"
                                    + " flight, then all that one line of a checklist moves; names"
                                    + " and positions of several are in the same order.")
                    .list("starts", START, Cases::starts)
                    .says("Attempts to start the engine on the ground.");

    private static final JsonShape<MissingWarnings.MissingWarning> WARNING =
            JsonShape.<MissingWarnings.MissingWarning>named("missingWarning")
                    .text("warning", MissingWarnings.MissingWarning::warning)
                    .texts("failures", MissingWarnings.MissingWarning::failures);

    private static final JsonShape<PilotBurden.Task> TASK =
            JsonShape.<PilotBurden.Task>named("pilotTask")
                    .text("name", PilotBurden.Task::name)
                    .texts("when", PilotBurden.Task::when)
                    .says("Cues that ask for it; none for the drill.")
                    .texts("acts", PilotBurden.Task::acts)
                    .number("dueSeconds", PilotBurden.Task::dueSeconds)
                    .says("From the cue to the first act (s); null for the drill.")
                    .flag("byHeart", PilotBurden.Task::byHeart);

    private static Map<String, Integer> counts(Measures measures) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        measures.complexity().counts().forEach((count, many) -> counts.put(count.words(), many));
        return counts;
    }

    private static final JsonShape<Measures> BURDEN =
            JsonShape.<Measures>named("burden")
                    .number("kilograms", m -> m.burdens().kilograms())
                    .number("cableKilograms", m -> m.burdens().cableKilograms())
                    .number("cableMetres", m -> m.burdens().cableMetres())
                    .number("price", m -> m.burdens().price())
                    .maybe(
                            "complexityIndex",
                            JsonTypes.NUMBER,
                            m -> Optional.ofNullable(m.values().get(CriterionName.COMPLEXITY)))
                    .says("Sum of the counts, each times the study's weight of it.")
                    .map("complexityCounts", JsonTypes.WHOLE, CandidateShapes::counts)
                    .list("pilotTasks", TASK, m -> m.pilot().tasks())
                    .says("What the pilot has to do, procedure by procedure.");

    static final JsonShape<Ranked> CANDIDATE =
            JsonShape.<Ranked>named("candidate")
                    .text("id", r -> r.appraisal.candidate().id())
                    .text("title", r -> r.appraisal.candidate().title())
                    .field("place", PLACE, r -> r)
                    .texts(
                            "withNothingWrong",
                            r -> NormalFlightTexts.findings(r.appraisal.flight()))
                    .says(
                            "What happens to it in normal flight although nothing fails; empty"
                                    + " where nothing does.")
                    .texts("nearTheLimit", r -> NormalFlightTexts.nearLimit(r.appraisal.flight()))
                    .says(
                            "What opens, usually or at the earliest, in a flight with nothing wrong"
                                    + " beside that; empty where nothing does.")
                    .list("requirements", REQUIREMENT, r -> r.appraisal.met())
                    .list("values", VALUE, r -> r.standing().contributions())
                    .field("singleFailures", outcomes(), Ranked::appraisal)
                    .says("Count of single failures by outcome.")
                    .texts("untold", r -> UntoldTexts.findings(r.appraisal))
                    .says(
                            "Failures that cannot be computed and so count as engine lost, each"
                                    + " with its reason.")
                    .texts(
                            "harmfulMoves",
                            r ->
                                    MoveTexts.findings(
                                            r.appraisal.candidate(),
                                            r.appraisal.cases().harmfulMoves()))
                    .says("Drills and procedures whose moves do less harm in another order.")
                    .list("unselectivePairs", PAIR, r -> r.appraisal.selectivity().pairs())
                    .says(
                            "Pairs of which the wrong one may give way first within the tolerance"
                                    + " of both, worst first.")
                    .list("missingWarnings", WARNING, r -> MissingWarnings.of(r.appraisal))
                    .says(
                            "Warnings to add, since nobody sees these failures until it is late;"
                                    + " the one that would show most first.")
                    .field("beside", BESIDE, r -> r.appraisal.cases())
                    .says("What is looked at beside the single failures.")
                    .field("burden", BURDEN, r -> r.appraisal.measures());

    private CandidateShapes() {}

    static CriterionName criterion(String words) {
        return Arrays.stream(CriterionName.values())
                .filter(name -> name.words().equals(words))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(words + " is no criterion"));
    }

    private static JsonShape<Appraisal> outcomes() {
        JsonShape<Appraisal> counts = JsonShape.named("outcomes");
        for (Outcome outcome : Outcome.values()) {
            counts = counts.field(JsonNumbers.kebab(outcome), WHOLE, a -> a.with(outcome).size());
        }
        return counts;
    }
}
