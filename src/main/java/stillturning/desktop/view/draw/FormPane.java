package stillturning.desktop.view.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import stillturning.desktop.viewmodel.draw.FormRow;
import stillturning.desktop.viewmodel.draw.PropertySheet;
import stillturning.desktop.viewmodel.draw.PropertySheet.Adding;

/** The values of what is chosen, each in a line that says what is wrong with it. */
final class FormPane extends VBox {

    private final PropertySheet sheet;
    private final VBox lines = new VBox();
    private final HBox adding = new HBox();
    private final TextField name = new TextField();
    private final ComboBox<String> kind = new ComboBox<>();

    FormPane(PropertySheet sheet) {
        this.sheet = sheet;
        getStyleClass().add("draw-form");
        Label title = new Label();
        title.setId("form-title");
        title.getStyleClass().add("title-4");
        title.textProperty().bind(sheet.title());
        Button back = new Button("\u2190 Back");
        back.setId("form-back");
        back.getStyleClass().add("flat");
        back.setOnAction(event -> sheet.back());
        back.visibleProperty().bind(sheet.inside());
        back.managedProperty().bind(sheet.inside());
        HBox head = new HBox(back, title);
        head.getStyleClass().add("in-line");
        head.setAlignment(Pos.CENTER_LEFT);
        lines.getStyleClass().add("field-lines");
        ScrollPane scroll = new ScrollPane(lines);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(head, scroll, adder());
        sheet.rows().addListener((ListChangeListener<FormRow>) change -> fill());
        sheet.adding().addListener((of, before, now) -> tell(now));
        fill();
        tell(sheet.adding().get());
    }

    private HBox adder() {
        Button add = new Button("Add");
        add.setId("form-add");
        add.setOnAction(event -> add());
        name.setId("form-name");
        name.setPromptText("name");
        name.setAccessibleText("Name of what is added");
        name.setOnAction(event -> add());
        kind.setAccessibleText("Kind of what is added");
        HBox.setHgrow(name, Priority.ALWAYS);
        adding.getStyleClass().add("in-line");
        adding.getChildren().addAll(name, kind, add);
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
        adding.setVisible(now.isPresent());
        adding.setManaged(now.isPresent());
        boolean named = now.filter(Adding::named).isPresent();
        name.setVisible(named);
        name.setManaged(named);
        List<String> kinds = now.map(Adding::kinds).orElse(List.of());
        kind.getItems().setAll(kinds);
        kind.setValue(kinds.isEmpty() ? null : kinds.get(0));
        kind.setVisible(!kinds.isEmpty());
        kind.setManaged(!kinds.isEmpty());
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
