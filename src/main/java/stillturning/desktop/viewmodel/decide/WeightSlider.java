package stillturning.desktop.viewmodel.decide;

import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import stillturning.model.goal.CriterionName;
import stillturning.quantity.Formats;

/**
 * How much one criterion counts, to be moved.
 *
 * @param criterion what it weighs
 * @param stated the study's own weight
 * @param value its weight against the others', at least 0
 * @param share its share of all weights, in per cent
 */
public record WeightSlider(
        CriterionName criterion, double stated, DoubleProperty value, StringProperty share) {

    WeightSlider(CriterionName criterion, double stated, double value) {
        this(criterion, stated, new SimpleDoubleProperty(value), new SimpleStringProperty(""));
    }

    /** Whether it was moved away from the study's own. */
    public boolean moved() {
        return value.get() != stated;
    }

    void shareOf(double sum) {
        share.set(sum > 0 ? Formats.percent(value.get() / sum) : "-");
    }
}
