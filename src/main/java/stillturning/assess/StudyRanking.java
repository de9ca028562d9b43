package stillturning.assess;

import java.util.List;
import stillturning.assess.ranking.Alternative;
import stillturning.assess.ranking.Criterion;
import stillturning.assess.ranking.GateVerdict;
import stillturning.assess.ranking.Ranking;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Scale;
import stillturning.model.Study;
import stillturning.model.Study.Weight;
import stillturning.model.goal.UsualScales;
import stillturning.model.goal.ValueScale;

/** A study's candidates in the numbers that ranking knows. */
final class StudyRanking {

    private StudyRanking() {}

    static RankingResult of(Study study, List<Appraisal> appraisals) {
        List<Weight> weights = study.goals().weights();
        List<Criterion> criteria =
                weights.stream()
                        .map(w -> criterion(w, UsualScales.of(study, w.criterion())))
                        .toList();
        List<Alternative> alternatives =
                appraisals.stream().map(a -> alternative(weights, a)).toList();
        return Ranking.of(criteria, alternatives);
    }

    private static Criterion criterion(Weight weight, ValueScale scale) {
        return new Criterion(
                weight.criterion().words(),
                Assess.sense(weight.criterion()),
                weight.weight(),
                new Scale(scale.acceptable(), scale.middle(), scale.enough()));
    }

    private static Alternative alternative(List<Weight> weights, Appraisal appraisal) {
        return new Alternative(
                appraisal.candidate().id(),
                weights.stream()
                        .map(w -> appraisal.measures().values().get(w.criterion()))
                        .toList(),
                appraisal.met().stream()
                        .map(m -> new GateVerdict(m.requirement(), m.met(), m.reason()))
                        .toList());
    }
}
