package stillturning.desktop.viewmodel.decide;

import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleDoubleProperty;
import stillturning.model.CriterionName;
import stillturning.quantity.Formats;

/** How much one criterion counts, to be moved. */
public final class WeightSlider {

    private final CriterionName criterion;
    private final double stated;
    private final DoubleProperty value;
    private final ReadOnlyStringWrapper share = new ReadOnlyStringWrapper("");

    /**
     * @param stated the study's own weight
     */
    WeightSlider(CriterionName criterion, double stated, double value) {
        this.criterion = criterion;
        this.stated = stated;
        this.value = new SimpleDoubleProperty(value);
    }

    /** What it weighs. */
    public CriterionName criterion() {
        return criterion;
    }

    /** Its weight against the others', at least 0. */
    public DoubleProperty value() {
        return value;
    }

    /** The study's own weight. */
    public double stated() {
        return stated;
    }

    /** Whether it was moved away from the study's own. */
    public boolean moved() {
        return value.get() != stated;
    }

    /** Its share of all weights, in per cent. */
    public ReadOnlyStringProperty share() {
        return share.getReadOnlyProperty();
    }

    void shareOf(double sum) {
        share.set(sum > 0 ? Formats.percent(value.get() / sum) : "-");
    }
}
