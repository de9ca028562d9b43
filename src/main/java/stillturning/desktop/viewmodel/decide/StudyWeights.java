package stillturning.desktop.viewmodel.decide;

import java.util.ArrayList;
import java.util.List;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.Step;
import stillturning.desktop.viewmodel.Desk;
import stillturning.files.entry.StudyEntry;
import stillturning.model.Study.Weight;
import stillturning.report.drawing.plot.Ticks;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;
import stillturning.yaml.edit.YamlEdit;

/** Weights written into a study's file, everything else as it is. */
final class StudyWeights {

    private static final String WEIGHTS = "weights";

    private StudyWeights() {}

    /** The change that writes these weights. */
    static Change change(YamlDocument study, List<Weight> weights) {
        return new Change(
                "Change the weights",
                edits(study, weights).stream()
                        .map(edit -> (Step) new Step.Edit(Desk.STUDY_FILE, edit))
                        .toList());
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
