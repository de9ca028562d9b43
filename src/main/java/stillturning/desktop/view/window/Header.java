package stillturning.desktop.view.window;

import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import stillturning.desktop.draft.DraftState;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Settings;
import stillturning.model.Candidate;

/** Above the areas: menus, the study and its candidate that is open, whether it is saved. */
final class Header extends VBox {

    private final Menus menus;
    private final Label title = new Label("Stillturning");
    private final ComboBox<String> candidates = new ComboBox<>();
    private final Label saved = new Label();
    private final Button save = new Button("Save");
    private final HBox line;
    private boolean listing;

    Header(ObjectProperty<Settings> settings, WindowCommands commands) {
        menus = new Menus(settings, commands);
        title.getStyleClass().add("title-4");
        candidates.setId("candidates");
        candidates.setAccessibleText("Candidate that is open");
        candidates.setTooltip(new Tooltip("The candidate that is open"));
        Label word = new Label("Candidate");
        word.setLabelFor(candidates);
        save.setId("save");
        save.getStyleClass().add("small");
        save.setOnAction(event -> commands.save());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        line = new HBox(title, word, candidates, gap, saved, save);
        line.setAlignment(Pos.CENTER_LEFT);
        line.getStyleClass().add("header-line");
        getChildren().addAll(menus, line);
        clear();
    }

    /** Nothing is open. */
    void clear() {
        show(false);
        menus.clear();
    }

    private void show(boolean any) {
        line.setVisible(any);
        line.setManaged(any);
    }

    /** Follows an open study. */
    void follow(OpenStudy study) {
        Desk desk = study.desk();
        show(true);
        menus.follow(desk);
        candidates.setConverter(naming(desk));
        candidates.setOnAction(
                event -> {
                    if (!listing && candidates.getValue() != null) {
                        desk.open(candidates.getValue());
                    }
                });
        desk.candidate().addListener((of, before, now) -> list(desk));
        desk.read().addListener((of, before, now) -> list(desk));
        desk.texts().addListener((of, before, now) -> tell(now));
        list(desk);
        tell(desk.texts().get());
    }

    private void list(Desk desk) {
        listing = true;
        title.setText(
                desk.study()
                        .map(s -> s.heading().title())
                        .orElse(String.valueOf(desk.draft().folder().getFileName())));
        List<String> ids = desk.candidates();
        if (!candidates.getItems().equals(ids)) {
            candidates.getItems().setAll(ids);
        }
        candidates.setConverter(naming(desk));
        candidates.setValue(desk.candidate().get());
        listing = false;
    }

    private static StringConverter<String> naming(Desk desk) {
        return new StringConverter<>() {
            @Override
            public String toString(String id) {
                return id == null
                        ? ""
                        : desk.study()
                                .flatMap(s -> s.candidate(id))
                                .map(Candidate::title)
                                .orElse(id);
            }

            @Override
            public String fromString(String words) {
                return words;
            }
        };
    }

    private void tell(DraftState state) {
        saved.setText(
                state.isSaved()
                        ? "saved"
                        : "\u25CF not saved: " + String.join(", ", state.unsaved()));
        save.setDisable(state.isSaved());
    }
}
