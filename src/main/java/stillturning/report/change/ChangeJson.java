package stillturning.report.change;

import static stillturning.report.json.JsonTypes.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.change.CandidateChange;
import stillturning.assess.change.CandidateChange.OutcomeChange;
import stillturning.assess.change.CandidateChange.RequirementChange;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.goal.CriterionName;
import stillturning.report.RankingOrder;
import stillturning.report.json.JsonDocument;
import stillturning.report.json.JsonShape;
import stillturning.report.json.JsonTypes;

/** What differs between two states of a study, as JSON. */
public final class ChangeJson {

    /** Both states, and what is written otherwise now. */
    public record ChangedStudy(List<TextChange> written, Assessment before, Assessment after) {
        public ChangedStudy {
            written = List.copyOf(written);
        }
    }

    /** One candidate in both. */
    private record Candidate(ChangedStudy in, CandidateChange change) {}

    /** A criterion's value in both. */
    private record Value(CriterionName criterion, double before, double after) {}

    private static final JsonShape<TextChange> WRITTEN =
            JsonShape.<TextChange>named("written")
                    .text("file", TextChange::file)
                    .whole("line", TextChange::line)
                    .says("Where it stands now, from 1; 0 where it is gone.")
                    .text("path", TextChange::where)
                    .says("In the file: parts.battery.capacity.")
                    .text("before", TextChange::before)
                    .says("Empty where it was not there.")
                    .text("now", TextChange::after)
                    .says("Empty where it is gone.");

    private static final JsonShape<Value> VALUE =
            JsonShape.<Value>named("changedValue")
                    .field("criterion", word(CriterionName.class), Value::criterion)
                    .number("before", Value::before)
                    .says("Seconds, kilograms or the study's currency; null where not limited.")
                    .number("now", Value::after);

    private static final JsonShape<RequirementChange> REQUIREMENT =
            JsonShape.<RequirementChange>named("changedRequirement")
                    .text("requirement", c -> c.after().requirement())
                    .flag("met", c -> c.after().met())
                    .says("Whether it is met now; before it was otherwise.")
                    .text("reason", c -> c.after().reason());

    private static final JsonShape<Verdict> ENDING =
            JsonShape.<Verdict>named("ending")
                    .field("outcome", word(Outcome.class), Verdict::outcome)
                    .number("enduranceSeconds", ChangeJson::seconds)
                    .says(
                            "Time from the failure until the engine can no longer run, the pilot as"
                                    + " planned (s); null where electricity does not end it.");

    private static final JsonShape<OutcomeChange> OTHERWISE =
            JsonShape.<OutcomeChange>named("changedOutcome")
                    .text("failure", c -> c.after().failure().name())
                    .flag("better", OutcomeChange::better)
                    .says("Whether the engine fares better now; else it fares worse.")
                    .field("before", ENDING, OutcomeChange::before)
                    .field("now", ENDING, OutcomeChange::after);

    private static final JsonShape<Candidate> CANDIDATE =
            JsonShape.<Candidate>named("changedCandidate")
                    .text("id", c -> c.change.either().candidate().id())
                    .maybe(
                            "placeBefore",
                            JsonTypes.WHOLE,
                            c -> place(c.in.before, c.change.before()))
                    .says("In the ranking, from 1; null where it was not there or not computable.")
                    .maybe("placeNow", JsonTypes.WHOLE, c -> place(c.in.after, c.change.after()))
                    .list("values", VALUE, c -> values(c.change))
                    .says("Of criteria whose values differ.")
                    .list("requirements", REQUIREMENT, c -> c.change.requirements())
                    .says("Met or missed otherwise than before.")
                    .list("outcomes", OTHERWISE, c -> c.change.outcomes())
                    .says("Failures possible in both states that end otherwise.")
                    .texts("possibleNow", c -> names(c.change.come()))
                    .texts("possibleNoMore", c -> names(c.change.gone()));

    /** The document. */
    public static final JsonDocument<ChangedStudy> CHANGES =
            new JsonDocument<>(
                    "What changed between two states of a study",
                    "What is written otherwise, and what follows for each candidate.",
                    JsonDocument.<ChangedStudy>start()
                            .text("study", c -> c.after.study().id())
                            .list("written", WRITTEN, ChangedStudy::written)
                            .list("candidates", CANDIDATE, ChangeJson::candidates)
                            .says("Of either state, those that are there now first."));

    private ChangeJson() {}

    private static double seconds(Verdict verdict) {
        return verdict.planned().engine().endurance().seconds();
    }

    private static List<Candidate> candidates(ChangedStudy changed) {
        return CandidateChange.between(changed.before, changed.after).stream()
                .map(change -> new Candidate(changed, change))
                .toList();
    }

    private static Optional<Integer> place(Assessment in, Optional<Appraisal> of) {
        return of.map(a -> 1 + RankingOrder.of(in).indexOf(a));
    }

    private static List<Value> values(CandidateChange change) {
        Map<CriterionName, Double> was = values(change.before());
        Map<CriterionName, Double> is = values(change.after());
        List<Value> changed = new ArrayList<>();
        for (CriterionName criterion : CriterionName.values()) {
            double before = was.getOrDefault(criterion, Double.NaN);
            double after = is.getOrDefault(criterion, Double.NaN);
            if (was.containsKey(criterion)
                    && is.containsKey(criterion)
                    && Double.compare(before, after) != 0) {
                changed.add(new Value(criterion, before, after));
            }
        }
        return changed;
    }

    private static Map<CriterionName, Double> values(Optional<Appraisal> of) {
        return of.map(a -> a.measures().values()).orElse(Map.of());
    }

    private static List<String> names(List<Verdict> verdicts) {
        return verdicts.stream().map(v -> v.failure().name()).toList();
    }
}
