package stillturning.report.json;

import static stillturning.report.json.CandidateShapes.CRITERION;
import static stillturning.report.json.CandidateShapes.criterion;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stillturning.assess.CandidateDifferences.Shift;
import stillturning.assess.exchange.Attribution.AttributedShare;
import stillturning.assess.exchange.Group;
import stillturning.assess.exchange.Mix;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.goal.CriterionName;
import stillturning.parts.Part;
import stillturning.report.pair.ControllerUse;
import stillturning.report.pair.PairQuestion;
import stillturning.report.pair.ValueMarks;

/** Two candidates side by side. */
final class BetweenJson {

    private record Turning(AttributedShare share, boolean turns) {}

    private record Used(String candidate, ControllerUse use) {}

    private static final JsonShape<Map.Entry<CriterionName, Double>> VALUE =
            JsonShape.<Map.Entry<CriterionName, Double>>named("criterionValue")
                    .field("criterion", CRITERION, e -> criterion(e.getKey().words()))
                    .number("value", Map.Entry::getValue)
                    .says("Seconds, kilograms, or the study's currency.");

    private static final JsonShape<Mix> MIX =
            JsonShape.<Mix>named("mix")
                    .texts(
                            "exchanged",
                            m -> m.exchanged().stream().sorted().map(Group::words).toList())
                    .says("Groups that the first candidate has from the second.")
                    .number("points", Mix::points)
                    .whole("missed", Mix::missed)
                    .says("Hard requirements missed.")
                    .list("values", VALUE, m -> sorted(m.values()));

    private static final JsonShape<Turning> SHARE =
            JsonShape.<Turning>named("share")
                    .texts("groups", t -> t.share.together().stream().map(Group::words).toList())
                    .texts("parts", t -> t.share.parts())
                    .flag("layout", t -> t.share.isLayout())
                    .says("Whether it is a matter of architecture.")
                    .number("points", t -> t.share.points())
                    .number("missed", t -> t.share.missed())
                    .list("values", VALUE, t -> sorted(t.share.values()))
                    .flag("turnsTheOrder", Turning::turns);

    private static final JsonShape<Shift> SHIFT =
            JsonShape.<Shift>named("shift")
                    .text("failure", Shift::failure)
                    .word("first", Outcome.class, Shift::before)
                    .word("second", Outcome.class, Shift::after);

    private static final JsonShape<Verdict> OWN =
            JsonShape.<Verdict>named("ownFailure")
                    .text("failure", v -> v.failure().name())
                    .word("outcome", Outcome.class, Verdict::outcome);

    private static final JsonShape<Used> CONTROLLER =
            JsonShape.<Used>named("controller")
                    .text("candidate", Used::candidate)
                    .text("id", u -> u.use.controller().id())
                    .texts("serves", u -> u.use.served())
                    .texts("onByDefault", u -> u.use.onByDefault())
                    .texts("switchedInProcedures", u -> u.use.switchedInFlight())
                    .texts("shedByItself", u -> u.use.shedByItself())
                    .texts("signs", u -> u.use.watched())
                    .texts("engineLoadsBesideIt", u -> u.use.bypassing());

    static final JsonDocument<PairQuestion> BETWEEN =
            new JsonDocument<>(
                    "Two candidates of a study side by side",
                    "What makes the difference between them; differences are second less first.",
                    JsonDocument.<PairQuestion>start()
                            .text("first", p -> p.mixes().from().id())
                            .text("second", p -> p.mixes().to().id())
                            .text("ahead", p -> p.ranking().leader().name())
                            .flag("level", p -> p.ranking().first().size() > 1)
                            .text("verdict", PairQuestion::verdict)
                            .says("Who is ahead, also with equal batteries and wires.")
                            .texts("boughtAndPaid", PairQuestion::paragraph)
                            .says("And what would have to be true for the other answer.")
                            .texts("requirementsLeftAside", PairQuestion::aside)
                            .list("shares", SHARE, BetweenJson::shares)
                            .says("Shapley values: they sum to the whole difference.")
                            .list("mixes", MIX, p -> p.mixes().mixes())
                            .texts("onlyInFirst", p -> ids(p.differences().leftOut()))
                            .texts("onlyInSecond", p -> ids(p.differences().added()))
                            .texts(
                                    "guessedOnlyInFirst",
                                    p -> p.marks().map(ValueMarks::onlyGuessed).orElse(List.of()))
                            .says("Values of both files that only the first guesses.")
                            .texts(
                                    "guessedOnlyInSecond",
                                    p ->
                                            p.marks()
                                                    .map(ValueMarks::onlyGuessedByOther)
                                                    .orElse(List.of()))
                            .list("failures", SHIFT, p -> p.differences().shifts())
                            .says("Failures that both can have and that do not come to the same.")
                            .list("failuresOnlyInFirst", OWN, p -> p.differences().spared())
                            .list("failuresOnlyInSecond", OWN, p -> p.differences().own())
                            .list("controllers", CONTROLLER, BetweenJson::controllers));

    private BetweenJson() {}

    private static List<Map.Entry<CriterionName, Double>> sorted(
            Map<CriterionName, Double> values) {
        return List.copyOf(new TreeMap<>(values).entrySet());
    }

    private static List<Turning> shares(PairQuestion pair) {
        return pair.mixes().shares().stream()
                .map(share -> new Turning(share, pair.mixes().turnedBy(share)))
                .toList();
    }

    private static List<String> ids(List<Part> parts) {
        return parts.stream().map(Part::id).toList();
    }

    private static List<Used> controllers(PairQuestion pair) {
        return pair.two().appraisals().stream()
                .flatMap(
                        a ->
                                pair.controllers(a).stream()
                                        .map(use -> new Used(a.candidate().id(), use)))
                .toList();
    }
}
