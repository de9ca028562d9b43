package stillturning.report.json;

import static stillturning.report.json.CandidateShapes.CANDIDATE;
import static stillturning.report.json.CandidateShapes.CRITERION;
import static stillturning.report.json.CandidateShapes.criterion;
import static stillturning.report.json.JsonTypes.word;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stillturning.assess.Assessment;
import stillturning.assess.Assessment.Unassessed;
import stillturning.assess.ComplexityTurn;
import stillturning.assess.Guesses;
import stillturning.assess.ranking.AppliedScale;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Sense;
import stillturning.assess.ranking.Standing;
import stillturning.assess.ranking.WeightChange;
import stillturning.model.goal.ComplexityCount;
import stillturning.model.goal.ComplexityWeights;
import stillturning.model.goal.ValueScale;
import stillturning.report.RankingOrder;
import stillturning.report.Reasons;
import stillturning.report.answer.FirstAnswer;
import stillturning.report.json.CandidateShapes.Ranked;

/** The ranked comparison. */
final class DecideJson {

    /** A comparison, and what trying the guesses brought and the first answer, if asked. */
    record Decision(
            Assessment assessment, Optional<Guesses> guesses, Optional<FirstAnswer> first) {}

    private static final JsonShape<Unassessed> UNASSESSED =
            JsonShape.<Unassessed>named("unassessed")
                    .text("id", Unassessed::candidate)
                    .text("reason", Unassessed::reason);

    private static final JsonShape<Assessment> STUDY =
            JsonShape.<Assessment>named("study")
                    .text("id", a -> a.study().id())
                    .text("title", a -> a.study().heading().title())
                    .flag("invented", a -> a.study().heading().invented())
                    .says("Whether the data are made up.")
                    .text("currency", a -> a.study().heading().currency())
                    .says("Code of the prices.")
                    .maybe("baseline", JsonTypes.TEXT, a -> a.study().goals().baseline())
                    .says("Candidate that the others are departures from.")
                    .list("unassessed", UNASSESSED, Assessment::unassessed)
                    .says("Candidates that could not be computed.");

    /** A criterion's scale with where it comes from. */
    private record Valued(AppliedScale applied, ValueScale scale) {}

    private static final JsonShape<Valued> SCALE =
            JsonShape.<Valued>named("criterion")
                    .field("name", CRITERION, v -> v.scale.criterion())
                    .number("weight", v -> v.applied.weight())
                    .says("Share in the sum of all weights.")
                    .flag("moreIsBetter", v -> v.applied.sense() == Sense.MORE_IS_BETTER)
                    .number("worst", v -> v.scale.acceptable())
                    .says(
                            "As bad as could be accepted: worth nothing; endurance in seconds,"
                                    + " weight in kilograms.")
                    .number("halfway", v -> v.scale.middle())
                    .says("Value that is worth half of the weight.")
                    .number("best", v -> v.scale.enough())
                    .says("As good as is needed: worth the whole weight.")
                    .flag("statedInStudy", v -> v.scale.stated())
                    .text("because", v -> v.scale.because())
                    .says("Where the ends come from.");

    /** A count of complexity with what one of it adds. */
    private record Weighed(ComplexityCount count, ComplexityWeights weights) {}

    private static final JsonShape<Weighed> COUNT =
            JsonShape.<Weighed>named("complexityCount")
                    .text("name", w -> w.count.words())
                    .number("weight", w -> w.weights.of(w.count))
                    .says("What one of it adds to complexity.")
                    .flag("statedInStudy", w -> w.weights.stated().containsKey(w.count))
                    .text("because", w -> w.count.because())
                    .says("Why one counts at all.");

    private static final JsonShape<ComplexityTurn> COMPLEXITY_TURN =
            JsonShape.<ComplexityTurn>named("complexityTurn")
                    .text("count", t -> t.count().words())
                    .number("fromWeight", ComplexityTurn::from)
                    .number("toWeight", ComplexityTurn::to)
                    .text("passed", ComplexityTurn::passed)
                    .text("passing", ComplexityTurn::passing)
                    .whole("place", ComplexityTurn::place);

    private static final JsonShape<WeightChange> CHANGE =
            JsonShape.<WeightChange>named("weightChange")
                    .field("criterion", CRITERION, c -> criterion(c.criterion()))
                    .number("fromWeight", WeightChange::from)
                    .number("toWeight", WeightChange::to)
                    .says("The present weight where first place is shared.")
                    .field("direction", word(WeightChange.Direction.class), WeightChange::direction)
                    .says("Which way the weight goes for the new leader to be ahead.")
                    .text("newLeader", WeightChange::newLeader);

    private static final JsonShape<Optional<RankingResult>> ROBUSTNESS =
            JsonShape.<Optional<RankingResult>>named("robustness")
                    .whole(
                            "weightings",
                            r -> r.map(ranked -> ranked.robustness().weightings()).orElse(0))
                    .says("How many weightings were tried, evenly from all that are admissible.")
                    .maybe(
                            "shareError",
                            JsonTypes.NUMBER,
                            r -> r.map(ranked -> ranked.robustness().shareError()))
                    .says("Half width of the 95 % interval of the least exact share.")
                    .list(
                            "unseatedBy",
                            CHANGE,
                            r -> r.map(RankingResult::unseatedBy).orElse(List.of()))
                    .says(
                            "Smallest change of each weight at which the leader is drawn level,"
                                    + " smallest first.");

    static final JsonDocument<Decision> DECISION =
            new JsonDocument<>(
                    "Ranked comparison of a study's candidates",
                    "Candidates in order with their requirements, values and reasons.",
                    JsonDocument.<Decision>start()
                            .field("study", STUDY, Decision::assessment)
                            .maybe(
                                    "leader",
                                    JsonTypes.TEXT,
                                    d -> d.assessment.ranking().map(r -> r.leader().name()))
                            .says("Candidate in first place; no other in first place dominates it.")
                            .texts(
                                    "firstPlaceSharedWith",
                                    d ->
                                            d.assessment.ranking().stream()
                                                    .flatMap(r -> r.first().stream().skip(1))
                                                    .map(Standing::name)
                                                    .toList())
                            .says("Others in first place with it, whose order nothing decides.")
                            .whole(
                                    "hardRequirements",
                                    d -> d.assessment.study().goals().requirements().size())
                            .says("How many the study sets.")
                            .flag(
                                    "someCandidateMeetsAll",
                                    d -> d.assessment.someCandidateMeetsAll())
                            .says(
                                    "Whether some candidate meets every hard requirement; true where"
                                            + " there is none.")
                            .list("criteria", SCALE, d -> valued(d.assessment))
                            .list("complexity", COUNT, d -> counts(d.assessment))
                            .says("What complexity is the sum of.")
                            .list(
                                    "complexityTurns",
                                    COMPLEXITY_TURN,
                                    d -> ComplexityTurn.of(d.assessment))
                            .says(
                                    "Where the order changes if one weight of complexity alone runs"
                                            + " from nothing to three times as much, nearest first.")
                            .list("candidates", CANDIDATE, DecideJson::candidates)
                            .says("Best first.")
                            .field("robustness", ROBUSTNESS, d -> d.assessment.ranking())
                            .maybe("guesses", GuessesJson.GUESSES, Decision::guesses)
                            .says("Which guesses matter; null unless they were tried.")
                            .maybe("answer", FirstAnswerJson.ANSWER, Decision::first)
                            .says("The answer on one screen; null where it was not asked."));

    private DecideJson() {}

    private static List<Weighed> counts(Assessment assessment) {
        ComplexityWeights weights = assessment.study().goals().preferences().complexity();
        return Arrays.stream(ComplexityCount.values())
                .map(count -> new Weighed(count, weights))
                .toList();
    }

    private static List<Valued> valued(Assessment assessment) {
        List<ValueScale> scales = assessment.study().scales();
        return assessment
                .ranking()
                .map(
                        r ->
                                IntStream.range(0, scales.size())
                                        .mapToObj(i -> new Valued(r.scales().get(i), scales.get(i)))
                                        .toList())
                .orElse(List.of());
    }

    private static List<Ranked> candidates(Decision decision) {
        Assessment assessment = decision.assessment;
        if (assessment.ranking().isEmpty()) {
            return List.of();
        }
        RankingResult ranking = assessment.ranking().get();
        Reasons reasons = new Reasons(assessment, ranking);
        return RankingOrder.of(assessment).stream()
                .map(a -> new Ranked(a, ranking, reasons.of(a.candidate().id())))
                .toList();
    }
}
