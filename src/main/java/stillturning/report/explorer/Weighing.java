package stillturning.report.explorer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.ranking.Contribution;
import stillturning.assess.ranking.GateVerdict;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Sense;
import stillturning.assess.ranking.Standing;
import stillturning.model.Study.Weight;
import stillturning.report.ResultText;

/** What a ranking by other weights needs: values and what they are worth, requirements missed. */
final class Weighing {

    private Weighing() {}

    static Map<String, Object> tree(
            Assessment assessment, RankingResult ranking, List<Appraisal> appraisals) {
        List<Weight> weights = assessment.study().goals().weights();
        List<Object> criteria = new ArrayList<>();
        for (int i = 0; i < weights.size(); i++) {
            Sense sense = ranking.scales().get(i).sense();
            criteria.add(
                    List.of(
                            ranking.scales().get(i).criterion(),
                            weights.get(i).weight(),
                            sense == Sense.MORE_IS_BETTER ? 1 : -1));
        }
        String currency = assessment.study().heading().currency();
        List<Object> standings = new ArrayList<>();
        for (Appraisal appraisal : appraisals) {
            Standing standing = ranking.standing(appraisal.candidate().id());
            List<Object> values = new ArrayList<>();
            for (int i = 0; i < weights.size(); i++) {
                Contribution part = standing.contributions().get(i);
                values.add(
                        List.of(
                                finite(part.value()),
                                part.worth(),
                                ResultText.value(
                                        weights.get(i).criterion(), part.value(), currency)));
            }
            List<String> missed = standing.missedGates().stream().map(GateVerdict::gate).toList();
            standings.add(List.of(values, missed));
        }
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("criteria", criteria);
        tree.put("candidates", standings);
        return tree;
    }

    /** JSON has no infinity; a script reads it from its name. */
    private static Object finite(double value) {
        return Double.isInfinite(value) ? (Object) "Infinity" : (Object) value;
    }
}
