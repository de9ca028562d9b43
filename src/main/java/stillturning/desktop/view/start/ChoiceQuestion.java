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
    record Choice<T>(T value, String words) {}

    ChoiceQuestion(String question, ObjectProperty<T> answer, List<Choice<T>> choices) {
        getStyleClass().add("choices");
        setAccessibleRole(AccessibleRole.PARENT);
        ToggleGroup group = new ToggleGroup();
        for (Choice<T> choice : choices) {
            RadioButton button = new RadioButton(choice.words());
            button.setToggleGroup(group);
            button.setAccessibleText(question + ": " + choice.words());
            button.setSelected(choice.value().equals(answer.get()));
            button.setOnAction(event -> answer.set(choice.value()));
            answer.addListener((of, before, now) -> button.setSelected(choice.value().equals(now)));
            getChildren().add(button);
        }
    }
}
