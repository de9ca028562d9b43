package stillturning.desktop.viewmodel.decide;

import java.util.ArrayList;
import java.util.List;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.Step;
import stillturning.desktop.viewmodel.Desk;
import stillturning.files.entry.StudyEntry;
import stillturning.model.CriterionName;
import stillturning.model.Study.Weight;
import stillturning.model.goal.ValueScale;
import stillturning.report.drawing.plot.Ticks;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;
import stillturning.yaml.edit.YamlEdit;

/** Weights and scales written into a study's file, everything else as it is. */
final class StudyWeights {

    private static final String WEIGHTS = "weights";
    private static final String CRITERIA = "criteria";

    private StudyWeights() {}

    /** The change that writes these weights and scales. */
    static Change change(YamlDocument study, List<Weight> weights, List<ValueScale> scales) {
        List<YamlEdit> edits = new ArrayList<>(edits(study, weights));
        edits.addAll(scaleEdits(study, scales));
        return new Change(
                scales.isEmpty() ? "Change the weights" : "Change weights and scales",
                edits.stream().map(edit -> (Step) new Step.Edit(Desk.STUDY_FILE, edit)).toList());
    }

    private static List<YamlEdit> scaleEdits(YamlDocument study, List<ValueScale> scales) {
        if (scales.isEmpty()) {
            return List.of();
        }
        if (study.places().tree(CRITERIA).isEmpty()) {
            YamlValue.Field[] fields =
                    scales.stream()
                            .map(s -> new YamlValue.Field(StudyEntry.key(s.criterion()), ends(s)))
                            .toArray(YamlValue.Field[]::new);
            return List.of(new YamlEdit.AddField("", CRITERIA, YamlValue.fields(fields)));
        }
        return scales.stream()
                .map(
                        s -> {
                            String key = StudyEntry.key(s.criterion());
                            String path = DocumentPlaces.under(CRITERIA, key);
                            return study.places().tree(path).isPresent()
                                    ? (YamlEdit) new YamlEdit.Set(path, ends(s))
                                    : new YamlEdit.AddField(CRITERIA, key, ends(s));
                        })
                .toList();
    }

    private static YamlValue ends(ValueScale scale) {
        CriterionName criterion = scale.criterion();
        List<YamlValue.Field> fields = new ArrayList<>();
        fields.add(YamlValue.field("acceptable", ScaleField.text(criterion, scale.acceptable())));
        scale.halfway()
                .map(h -> YamlValue.field("halfway", ScaleField.text(criterion, h)))
                .ifPresent(fields::add);
        fields.add(YamlValue.field("enough", ScaleField.text(criterion, scale.enough())));
        return new YamlValue.Fields(fields);
    }

    private static List<YamlEdit> edits(YamlDocument study, List<Weight> weights) {
        if (weights.stream().allMatch(w -> study.textAt(path(w)).isEmpty())) {
            YamlValue.Field[] fields =
                    weights.stream()
                            .map(w -> YamlValue.field(StudyEntry.key(w.criterion()), text(w)))
                            .toArray(YamlValue.Field[]::new);
            return List.of(new YamlEdit.AddField("", WEIGHTS, YamlValue.fields(fields)));
        }
        List<YamlEdit> edits = new ArrayList<>();
        for (Weight weight : weights) {
            String path = path(weight);
            YamlValue value = YamlValue.text(text(weight));
            if (study.textAt(path).isEmpty()) {
                edits.add(
                        new YamlEdit.AddField(WEIGHTS, StudyEntry.key(weight.criterion()), value));
            } else if (!study.textAt(path).get().equals(text(weight))) {
                edits.add(new YamlEdit.Set(path, value));
            }
        }
        return edits;
    }

    private static String path(Weight weight) {
        return DocumentPlaces.under(WEIGHTS, StudyEntry.key(weight.criterion()));
    }

    private static String text(Weight weight) {
        return Ticks.text(weight.weight());
    }
}
