package stillturning.desktop.viewmodel.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.desktop.draft.DraftStep;
import stillturning.desktop.viewmodel.Desk;
import stillturning.model.Study.Weight;
import stillturning.model.goal.CriterionName;
import stillturning.model.goal.ValueScale;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;
import stillturning.yaml.edit.YamlEdit;

/** A study that weighs by swing is written by swing again, the largest as 100. */
class StudyWeightsTest {

    private static final YamlDocument STUDY =
            YamlDocument.of(
                    Path.of("study.yaml"),
                    """
                    study: Swings
                    criteria:
                      weight: {acceptable: 30 kg, enough: 15 kg, swing: 100}
                      cost: {acceptable: 4000, enough: 1500, swing: 40}
                    """);

    private static List<DraftStep> steps(double weight, double cost, List<ValueScale> scales) {
        return StudyWeights.change(
                        STUDY,
                        List.of(
                                new Weight(CriterionName.WEIGHT, weight),
                                new Weight(CriterionName.COST, cost)),
                        scales)
                .steps();
    }

    private static DraftStep set(String path, YamlValue value) {
        return new DraftStep.Edit(Desk.STUDY_FILE, new YamlEdit.Set(path, value));
    }

    @Test
    void aSliderChangesTheSwing() {
        assertEquals(
                List.of(set("criteria.cost.swing", YamlValue.text("75"))),
                steps(100, 75, List.of()));
    }

    @Test
    void theLargestStaysAHundred() {
        assertEquals(
                List.of(set("criteria.cost.swing", YamlValue.text("80"))),
                steps(50, 40, List.of()));
    }

    @Test
    void anEditedScaleKeepsItsSwing() {
        ValueScale cost = ValueScale.stated(CriterionName.COST, 3000, Optional.empty(), 1500);
        assertEquals(
                List.of(
                        set(
                                "criteria.cost",
                                YamlValue.fields(
                                        YamlValue.field(
                                                "acceptable",
                                                ScaleField.text(CriterionName.COST, 3000)),
                                        YamlValue.field(
                                                "enough",
                                                ScaleField.text(CriterionName.COST, 1500)),
                                        YamlValue.field("swing", "40")))),
                steps(100, 40, List.of(cost)));
    }
}
