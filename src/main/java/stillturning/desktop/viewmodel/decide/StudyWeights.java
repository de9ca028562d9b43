package stillturning.desktop.viewmodel.decide;

import java.util.ArrayList;
import java.util.List;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.DraftStep;
import stillturning.desktop.viewmodel.Desk;
import stillturning.files.entry.StudyEntry;
import stillturning.files.goal.Swings;
import stillturning.model.Study.Weight;
import stillturning.model.goal.CriterionName;
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
        boolean swings = weights.stream().anyMatch(w -> study.textAt(swing(w)).isPresent());
        List<Weight> written = swings ? bySwing(weights) : weights;
        List<YamlEdit> edits =
                new ArrayList<>(
                        swings ? swingEdits(study, written, scales) : edits(study, weights));
        edits.addAll(scaleEdits(study, scales, swings ? written : List.of()));
        return new Change(
                scales.isEmpty() ? "Change the weights" : "Change weights and scales",
                edits.stream()
                        .map(edit -> (DraftStep) new DraftStep.Edit(Desk.STUDY_FILE, edit))
                        .toList());
    }

    /** The largest is 100, as files want it. */
    private static List<Weight> bySwing(List<Weight> weights) {
        double most = weights.stream().mapToDouble(Weight::weight).max().orElse(0);
        return weights.stream()
                .map(w -> new Weight(w.criterion(), most > 0 ? w.weight() / most * Swings.MOST : 0))
                .toList();
    }

    /** Swings of criteria whose ends are written too go with these. */
    private static List<YamlEdit> swingEdits(
            YamlDocument study, List<Weight> swings, List<ValueScale> scales) {
        return swings.stream()
                .filter(w -> scales.stream().noneMatch(s -> s.criterion() == w.criterion()))
                .filter(w -> study.textAt(swing(w)).filter(t -> !t.equals(text(w))).isPresent())
                .map(w -> (YamlEdit) new YamlEdit.Set(swing(w), YamlValue.text(text(w))))
                .toList();
    }

    private static String swing(Weight weight) {
        String criterion = DocumentPlaces.under(CRITERIA, StudyEntry.key(weight.criterion()));
        return DocumentPlaces.under(criterion, "swing");
    }

    private static List<YamlEdit> scaleEdits(
            YamlDocument study, List<ValueScale> scales, List<Weight> swings) {
        if (scales.isEmpty()) {
            return List.of();
        }
        if (study.places().tree(CRITERIA).isEmpty()) {
            YamlValue.Field[] fields =
                    scales.stream()
                            .map(
                                    s ->
                                            new YamlValue.Field(
                                                    StudyEntry.key(s.criterion()), ends(s, swings)))
                            .toArray(YamlValue.Field[]::new);
            return List.of(new YamlEdit.AddField("", CRITERIA, YamlValue.fields(fields)));
        }
        return scales.stream()
                .map(
                        s -> {
                            String key = StudyEntry.key(s.criterion());
                            String path = DocumentPlaces.under(CRITERIA, key);
                            return study.places().tree(path).isPresent()
                                    ? (YamlEdit) new YamlEdit.Set(path, ends(s, swings))
                                    : new YamlEdit.AddField(CRITERIA, key, ends(s, swings));
                        })
                .toList();
    }

    private static YamlValue ends(ValueScale scale, List<Weight> swings) {
        CriterionName criterion = scale.criterion();
        List<YamlValue.Field> fields = new ArrayList<>();
        fields.add(YamlValue.field("acceptable", ScaleField.text(criterion, scale.acceptable())));
        scale.halfway()
                .map(h -> YamlValue.field("halfway", ScaleField.text(criterion, h)))
                .ifPresent(fields::add);
        fields.add(YamlValue.field("enough", ScaleField.text(criterion, scale.enough())));
        swings.stream()
                .filter(w -> w.criterion() == criterion)
                .map(w -> YamlValue.field("swing", text(w)))
                .forEach(fields::add);
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
