package stillturning.assess;

import static java.util.Objects.requireNonNull;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stillturning.assess.ranking.Acceptability;
import stillturning.assess.ranking.Alternative;
import stillturning.assess.ranking.Criterion;
import stillturning.assess.ranking.GateVerdict;
import stillturning.assess.ranking.Ranking;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Scale;
import stillturning.assess.ranking.Standing;
import stillturning.assess.ranking.WeightOrder;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Burdens;
import stillturning.model.Study;
import stillturning.model.Study.Weight;
import stillturning.model.goal.ComplexityWeights;
import stillturning.model.goal.CriterionName;
import stillturning.model.goal.UsualScales;
import stillturning.model.goal.ValueScale;

/** A study's candidates in the numbers that ranking knows. */
final class StudyRanking {

    private StudyRanking() {}

    static RankingResult of(Study study, List<Appraisal> appraisals) {
        List<Weight> weights = study.goals().weights();
        ComplexityWeights complexity = study.goals().preferences().complexity();
        List<Alternative> alternatives =
                appraisals.stream().map(a -> alternative(weights, a, complexity)).toList();
        return Ranking.of(criteria(study), alternatives, known(study));
    }

    /**
     * What becomes of first place over draws of a study's numbers, and over all weightings.
     *
     * @param drawn the same candidates in each
     */
    static Acceptability spread(List<Assessment> drawn) {
        Study study = drawn.get(0).study();
        List<Weight> weights = study.goals().weights();
        ComplexityWeights complexity = study.goals().preferences().complexity();
        return Acceptability.of(
                criteria(study),
                drawn.stream()
                        .map(
                                one ->
                                        one.appraisals().stream()
                                                .map(a -> alternative(weights, a, complexity))
                                                .toList())
                        .toList(),
                known(study));
    }

    /** What is known of the order of the criteria that count. */
    private static List<WeightOrder> known(Study study) {
        List<CriterionName> counted =
                study.goals().weights().stream().map(Weight::criterion).toList();
        return study.goals().preferences().importances().stream()
                .filter(i -> counted.contains(i.heavier()) && counted.contains(i.lighter()))
                .map(i -> new WeightOrder(i.heavier().words(), i.lighter().words()))
                .toList();
    }

    /** Who stands where if complexity were counted with other weights. */
    static List<Standing> standings(
            Study study, List<Appraisal> appraisals, ComplexityWeights complexity) {
        List<Weight> weights = study.goals().weights();
        return Ranking.standings(
                criteria(study),
                appraisals.stream().map(a -> alternative(weights, a, complexity)).toList());
    }

    private static List<Criterion> criteria(Study study) {
        return study.goals().weights().stream()
                .map(w -> criterion(w, UsualScales.of(study, w.criterion())))
                .toList();
    }

    private static double value(
            CriterionName criterion, Appraisal appraisal, ComplexityWeights complexity) {
        return criterion == CriterionName.COMPLEXITY
                ? appraisal.measures().complexity().index(complexity)
                : requireNonNull(appraisal.measures().values().get(criterion), criterion.words());
    }

    private static Criterion criterion(Weight weight, ValueScale scale) {
        return new Criterion(
                weight.criterion().words(),
                Assess.sense(weight.criterion()),
                weight.weight(),
                new Scale(scale.acceptable(), scale.middle(), scale.enough()));
    }

    private static Alternative alternative(
            List<Weight> weights, Appraisal appraisal, ComplexityWeights complexity) {
        return new Alternative(
                appraisal.candidate().id(),
                weights.stream().map(w -> value(w.criterion(), appraisal, complexity)).toList(),
                appraisal.met().stream()
                        .map(m -> new GateVerdict(m.requirement(), m.met(), m.reason()))
                        .toList());
    }

    /** A candidate's value by every criterion. */
    static Map<CriterionName, Double> values(
            Study study,
            List<Verdict> singles,
            Verdict chargingLost,
            Burdens burdens,
            Complexity complexity) {
        Map<CriterionName, Double> values = new EnumMap<>(CriterionName.class);
        values.put(
                CriterionName.ENGINE_STOPS,
                count(held(singles).filter(v -> v.outcome() == Outcome.ENGINE_LOST)));
        values.put(
                CriterionName.PILOT_NEEDED,
                count(held(singles).filter(v -> v.outcome().needsPilot())));
        values.put(CriterionName.ENDURANCE, lasts(study, chargingLost));
        values.put(CriterionName.WEIGHT, burdens.kilograms());
        values.put(
                CriterionName.COMPLEXITY,
                complexity.index(study.goals().preferences().complexity()));
        values.put(CriterionName.COST, burdens.price());
        return values;
    }

    private static double lasts(Study study, Verdict verdict) {
        return verdict.planned().engine().lastsFrom(study.goals().countsFrom());
    }

    /** Failures that are held against a candidate. */
    static Stream<Verdict> held(List<Verdict> singles) {
        return singles.stream().filter(v -> !v.engineOwn());
    }

    private static double count(Stream<Verdict> verdicts) {
        return verdicts.count();
    }
}
