package stillturning.desktop.viewmodel.decide;

import java.util.List;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import stillturning.model.goal.ValueScale;

/** From where to where the values of each criterion run, to be edited, beside the study's own. */
public final class Scales {

    private final ObservableList<ScaleField> fields = FXCollections.observableArrayList();
    private final ObservableList<ScaleField> fieldsShown =
            FXCollections.unmodifiableObservableList(fields);
    private final ReadOnlyBooleanWrapper moved = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper refusal = new ReadOnlyStringWrapper("");
    private final Runnable follow;

    /**
     * @param follow run after each change of a text
     */
    Scales(Runnable follow) {
        this.follow = follow;
    }

    /** One for each criterion, in the study's order. */
    public ObservableList<ScaleField> fields() {
        return fieldsShown;
    }

    /** Whether any differs from the study's. */
    public ReadOnlyBooleanProperty moved() {
        return moved.getReadOnlyProperty();
    }

    /** What is wrong with what is written; empty if nothing is. */
    public ReadOnlyStringProperty refusal() {
        return refusal.getReadOnlyProperty();
    }

    /** The scales as edited, those that are neither stated nor edited left out. */
    List<ValueScale> now() {
        return fields.stream().map(ScaleField::now).filter(ValueScale::stated).toList();
    }

    /** Those that were edited, soundly. */
    List<ValueScale> edited() {
        return fields.stream()
                .filter(field -> !field.now().equals(field.before()))
                .map(ScaleField::now)
                .toList();
    }

    /** Brings all back to the study's. */
    public void reset() {
        fields.forEach(ScaleField::reset);
    }

    /** Takes the scales of a study as it is now; what was edited is kept if they are the same. */
    void take(List<ValueScale> stated) {
        if (fields.stream().map(ScaleField::before).toList().equals(stated)) {
            return;
        }
        List<ScaleField> made = stated.stream().map(ScaleField::of).toList();
        for (ScaleField field : made) {
            field.acceptable().addListener((value, from, to) -> changed());
            field.enough().addListener((value, from, to) -> changed());
        }
        fields.setAll(made);
        settle();
    }

    private void changed() {
        settle();
        follow.run();
    }

    private void settle() {
        moved.set(fields.stream().anyMatch(ScaleField::moved));
        refusal.set(
                fields.stream()
                        .map(ScaleField::refusal)
                        .filter(words -> !words.isEmpty())
                        .findFirst()
                        .orElse(""));
    }
}
