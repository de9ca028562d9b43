package stillturning.desktop.viewmodel.decide;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import stillturning.model.Study.Weight;
import stillturning.model.goal.CriterionName;

/** The weights of a study, each on a slider, beside those that the study states. */
public final class Weights {

    /** Largest weight of a slider, unless the study has a larger one. */
    private static final double USUAL_MOST = 10;

    private final ObservableList<WeightSlider> sliders = FXCollections.observableArrayList();
    private final ObservableList<WeightSlider> slidersShown =
            FXCollections.unmodifiableObservableList(sliders);
    private final ReadOnlyBooleanWrapper moved = new ReadOnlyBooleanWrapper();
    private final Runnable follow;
    private boolean settling;

    /**
     * @param follow run after each change of a weight
     */
    Weights(Runnable follow) {
        this.follow = follow;
    }

    /** One for each criterion, in the study's order. */
    public ObservableList<WeightSlider> sliders() {
        return slidersShown;
    }

    /** Whether any differs from the study's. */
    public ReadOnlyBooleanProperty moved() {
        return moved.getReadOnlyProperty();
    }

    /** The largest weight that a slider reaches. */
    public double most() {
        return sliders.stream().mapToDouble(WeightSlider::stated).reduce(USUAL_MOST, Math::max);
    }

    /** The weights as they stand on the sliders. */
    public List<Weight> now() {
        return sliders.stream().map(s -> new Weight(s.criterion(), s.value().get())).toList();
    }

    /** Brings all back to the study's. */
    public void reset() {
        settle(() -> sliders.forEach(s -> s.value().set(s.stated())));
    }

    /**
     * Takes the weights of a study as it is now. Sliders that the user has moved stay where they
     * are, unless the study has come to say the same.
     */
    void take(List<Weight> stated) {
        if (same(stated)) {
            return;
        }
        Map<CriterionName, Double> moves = new EnumMap<>(CriterionName.class);
        sliders.stream()
                .filter(WeightSlider::moved)
                .forEach(s -> moves.put(s.criterion(), s.value().get()));
        List<WeightSlider> made = new ArrayList<>();
        for (Weight weight : stated) {
            double at = moves.getOrDefault(weight.criterion(), weight.weight());
            made.add(new WeightSlider(weight.criterion(), weight.weight(), at));
        }
        made.forEach(s -> s.value().addListener((value, from, to) -> changed()));
        settle(() -> sliders.setAll(made));
    }

    private boolean same(List<Weight> stated) {
        return sliders.stream()
                .map(s -> new Weight(s.criterion(), s.stated()))
                .toList()
                .equals(stated);
    }

    private void settle(Runnable change) {
        settling = true;
        change.run();
        settling = false;
        changed();
    }

    private void changed() {
        if (settling) {
            return;
        }
        double sum = sliders.stream().mapToDouble(s -> s.value().get()).sum();
        sliders.forEach(s -> s.shareOf(sum));
        moved.set(sliders.stream().anyMatch(WeightSlider::moved));
        follow.run();
    }
}
