package stillturning.desktop.view.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.viewmodel.draw.FormRow;
import stillturning.desktop.viewmodel.draw.PropertySheet;
import stillturning.desktop.viewmodel.draw.PropertySheet.Adding;

/** The values of what is chosen, each in a line that says what is wrong with it. */
final class FormPane extends VBox {

    private final PropertySheet sheet;
    private final VBox lines = new VBox();
    private final HBox adding = Layout.inLine();
    private final TextField name = new TextField();
    private final ComboBox<String> kind = new ComboBox<>();

    FormPane(PropertySheet sheet) {
        this.sheet = sheet;
        getStyleClass().add("draw-form");
        Label title = Labels.title("");
        title.setId("form-title");
        title.textProperty().bind(sheet.title());
        Button back = Controls.button("\u2190 Back", "form-back", sheet::back);
        back.getStyleClass().add("flat");
        Showing.whileTrue(back, sheet.inside());
        lines.getStyleClass().add("field-lines");
        ScrollPane scroll = new ScrollPane(lines);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        getChildren().addAll(Layout.inLine(back, title), Layout.high(scroll), adder());
        sheet.rows().addListener((ListChangeListener<FormRow>) change -> fill());
        sheet.adding().addListener((of, before, now) -> tell(now));
        fill();
        tell(sheet.adding().get());
    }

    private HBox adder() {
        Controls.field(name, "form-name", "name", "Name of what is added");
        name.setOnAction(event -> add());
        kind.setAccessibleText("Kind of what is added");
        Button add = Controls.button("Add", "form-add", this::add);
        adding.getChildren().addAll(Layout.wide(name), kind, add);
        return adding;
    }

    private void add() {
        boolean unnamed = name.isVisible() && name.getText().isBlank();
        if (!unnamed) {
            sheet.add(name.getText().strip(), Optional.ofNullable(kind.getValue()));
            name.clear();
        }
    }

    private void tell(Optional<Adding> now) {
        Showing.set(adding, now.isPresent());
        Showing.set(name, now.filter(Adding::named).isPresent());
        List<String> kinds = now.map(Adding::kinds).orElse(List.of());
        kind.getItems().setAll(kinds);
        kind.setValue(kinds.isEmpty() ? null : kinds.get(0));
        Showing.set(kind, !kinds.isEmpty());
    }

    /** Keeps the line that somebody is in, so that its caret stays. */
    private void fill() {
        List<FieldLine> before = lines.getChildren().stream().map(FieldLine.class::cast).toList();
        List<FieldLine> now = new ArrayList<>();
        for (FormRow row : sheet.rows()) {
            Optional<FieldLine> kept = before.stream().filter(l -> l.fits(row)).findFirst();
            kept.ifPresent(l -> l.show(row));
            now.add(kept.orElseGet(() -> new FieldLine(sheet, row)));
        }
        if (!before.equals(now)) {
            lines.getChildren().setAll(now);
        }
    }
}
