package stillturning.files.goal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.files.entry.CriteriaEntry;
import stillturning.files.entry.StudyEntry;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.model.CriterionName;
import stillturning.model.Study;
import stillturning.model.goal.Preferences;
import stillturning.model.goal.ValueScale;
import stillturning.yaml.DocumentPlaces;

/** Reads what a study prefers: weights and scales. */
public final class PreferencesReader {

    /** How much each criterion counts where nobody says so. A guess. */
    private static final Map<CriterionName, Double> USUAL_WEIGHTS =
            Map.of(
                    CriterionName.ENGINE_STOPS, 5.0,
                    CriterionName.PILOT_NEEDED, 3.0,
                    CriterionName.ENDURANCE, 3.0,
                    CriterionName.WEIGHT, 2.0,
                    CriterionName.COMPLEXITY, 2.0,
                    CriterionName.COST, 1.0);

    private final StudyEntry study;
    private final ProblemCollector report;

    public PreferencesReader(StudyEntry study, ProblemCollector report) {
        this.study = study;
        this.report = report;
    }

    /** The preferences; what is wrong is told and left out. */
    public Preferences read() {
        return new Preferences(weights(), scales());
    }

    private List<ValueScale> scales() {
        List<ValueScale> scales = new ArrayList<>();
        CriteriaEntry written = study.criteria();
        for (CriterionName criterion : CriterionName.values()) {
            written.of(criterion).flatMap(ends -> scale(criterion, ends)).ifPresent(scales::add);
        }
        return scales;
    }

    private Optional<ValueScale> scale(CriterionName criterion, CriteriaEntry.Ends ends) {
        String path = DocumentPlaces.under("criteria", StudyEntry.key(criterion));
        double sign = criterion.moreIsBetter() ? 1 : -1;
        if (!(sign * ends.enough() > sign * ends.acceptable())) {
            report.problem(
                    DocumentPlaces.under(path, "enough"),
                    "what is enough is no better than what is acceptable",
                    criterion.moreIsBetter()
                            ? "write more for enough than for acceptable"
                            : "write less for enough than for acceptable");
            return Optional.empty();
        }
        Optional<Double> halfway = ends.halfway();
        if (halfway.filter(
                        h ->
                                !(sign * h > sign * ends.acceptable()
                                        && sign * h < sign * ends.enough()))
                .isPresent()) {
            report.problem(
                    DocumentPlaces.under(path, "halfway"),
                    "it is not between what is acceptable and what is enough",
                    "write a value between them, or leave it out where every step counts the same");
            return Optional.empty();
        }
        return Optional.of(ValueScale.stated(criterion, ends.acceptable(), halfway, ends.enough()));
    }

    private List<Study.Weight> weights() {
        if (study.weights().isEmpty()) {
            return List.of(CriterionName.values()).stream()
                    .map(c -> new Study.Weight(c, USUAL_WEIGHTS.getOrDefault(c, 1.0)))
                    .toList();
        }
        List<Study.Weight> weights = new ArrayList<>();
        study.weights()
                .forEach(
                        (key, weight) ->
                                StudyEntry.criterion(key)
                                        .ifPresentOrElse(
                                                c -> weights.add(new Study.Weight(c, weight)),
                                                () -> unknownCriterion(key)));
        if (study.weights().values().stream().allMatch(w -> w == 0)) {
            report.problem("weights", "no criterion counts", "give one of them more than 0");
        }
        return weights;
    }

    private void unknownCriterion(String key) {
        report.unknown(
                Spot.atKey(DocumentPlaces.under("weights", key)),
                "criterion",
                key,
                List.of(CriterionName.values()).stream().map(StudyEntry::key).toList());
    }
}
