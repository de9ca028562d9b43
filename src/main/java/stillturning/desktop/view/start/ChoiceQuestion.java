package stillturning.desktop.view.start;

import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;

/** A question of which one of a few answers is always chosen. */
final class ChoiceQuestion<T> extends HBox {

    /** One answer. */
    record ChoiceOption<T>(T value, String words) {}

    ChoiceQuestion(String question, ObjectProperty<T> answer, List<ChoiceOption<T>> answers) {
        getStyleClass().add("choices");
        setAccessibleRole(AccessibleRole.PARENT);
        ToggleGroup group = new ToggleGroup();
        for (ChoiceOption<T> given : answers) {
            RadioButton button = new RadioButton(given.words());
            button.setToggleGroup(group);
            button.setMinWidth(USE_PREF_SIZE);
            button.setAccessibleText(question + ": " + given.words());
            button.setSelected(given.value().equals(answer.get()));
            button.setOnAction(event -> answer.set(given.value()));
            answer.addListener((of, before, now) -> button.setSelected(given.value().equals(now)));
            getChildren().add(button);
        }
    }
}
