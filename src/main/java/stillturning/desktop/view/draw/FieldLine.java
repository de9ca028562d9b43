package stillturning.desktop.view.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.viewmodel.draw.FormRow;
import stillturning.desktop.viewmodel.draw.PropertySheet;
import stillturning.yaml.notation.Checked;
import stillturning.yaml.notation.FieldInput;

/** One line of the form: a name, what is written, and what is wrong with it. */
final class FieldLine extends VBox {

    private static final PseudoClass DANGER = PseudoClass.getPseudoClass("danger");

    private final PropertySheet sheet;
    private final Label name = Labels.of("", "field-name");
    private final Label error = Labels.of("", "field-error", "text-small");
    private final Control control;
    private FormRow row;
    private boolean filling;

    FieldLine(PropertySheet sheet, FormRow row) {
        this.sheet = sheet;
        this.row = row;
        this.control = control();
        getStyleClass().add("field-line");
        control.setId("field-" + row.label().replace(' ', '-'));
        control.setMaxWidth(Double.MAX_VALUE);

        name.setText(row.label());
        name.setLabelFor(control);
        name.setMinWidth(0);

        error.setWrapText(true);
        HBox line = Layout.inLine(name, Layout.wide(control));
        line.setAlignment(Pos.BASELINE_LEFT);
        getChildren().addAll(line, error);
        String words = help(row);
        if (!words.isEmpty()) {
            Tooltip tooltip = new Tooltip(words);
            tooltip.setWrapText(true);
            tooltip.setMaxWidth(420);
            name.setTooltip(tooltip);
            control.setTooltip(tooltip);
        }
        control.setAccessibleText(row.label());
        control.setAccessibleHelp(words);
        show(row);
    }

    /** Whether a line made for one row can show another. */
    boolean fits(FormRow other) {
        return row.field().path().equals(other.field().path())
                && row.field().input().equals(other.field().input());
    }

    /** Shows a row of the same place. */
    void show(FormRow now) {
        row = now;
        filling = true;
        if (control instanceof TextField text) {
            if (!text.isFocused() || now.fault().isEmpty()) {
                setText(text, now.text());
            }
            text.setPromptText(now.otherwise());
        } else if (control instanceof ComboBox<?> box) {
            @SuppressWarnings("unchecked") // made for texts below
            ComboBox<String> choices = (ComboBox<String>) box;
            choices.setPromptText(now.otherwise());
            choices.setValue(now.text().isEmpty() ? null : now.text());
        } else if (control instanceof Button button) {
            int size = now.field().size();
            button.setText(size == 0 ? "none \u2026" : size + " \u2026");
        }
        filling = false;
        tell(now.fault());
    }

    private static void setText(TextField field, String text) {
        if (!field.getText().equals(text)) {
            field.setText(text);
        }
    }

    private static String help(FormRow row) {
        List<String> lines = new ArrayList<>();
        if (!row.words().isEmpty()) {
            lines.add(row.words());
        }
        String advice = row.field().input().advice(row.field().example());
        if (!advice.isEmpty()) {
            lines.add(advice);
        }
        return String.join("\n", lines);
    }

    private Control control() {
        FieldInput input = row.field().input();
        if (input.hasFormOfItsOwn()) {
            Button open = new Button();
            open.getStyleClass().add("flat");
            open.setAlignment(Pos.CENTER_LEFT);
            open.setOnAction(event -> sheet.open(row));
            return open;
        }
        return input.words().isEmpty() ? text() : box(input.words());
    }

    private ComboBox<String> box(List<String> words) {
        ComboBox<String> box = new ComboBox<>();
        if (!row.field().isRequired()) {
            box.getItems().add("");
        }
        box.getItems().addAll(words);
        box.setOnAction(
                event -> {
                    if (!filling) {
                        sheet.take(row, box.getValue() == null ? "" : box.getValue());
                    }
                });
        return box;
    }

    private TextField text() {
        TextField text = new TextField();
        text.textProperty()
                .addListener(
                        (of, before, now) -> {
                            if (!filling && text.isFocused()) {
                                tell(now.isBlank() ? Optional.empty() : sheet.fault(row, now));
                            }
                        });
        text.setOnAction(event -> sheet.take(row, text.getText()));
        text.setOnKeyPressed(
                event -> {
                    if (event.getCode() == KeyCode.ESCAPE) {
                        text.setText(row.text());
                        event.consume();
                    }
                });
        Controls.onLeave(text, () -> sheet.take(row, text.getText()));
        return text;
    }

    private void tell(Optional<Checked.TextFault> fault) {
        error.setText(fault.map(f -> "\u2716 " + f).orElse(""));
        Showing.set(error, fault.isPresent());
        control.pseudoClassStateChanged(DANGER, fault.isPresent());
    }
}
