package stillturning.desktop.view.window;

import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import stillturning.desktop.draft.DraftState;
import stillturning.desktop.view.Chooser;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Settings;
import stillturning.model.Candidate;

/** Above the areas: menus, the study and its candidate that is open, whether it is saved. */
final class Header extends VBox {

    private final Menus menus;
    private final Label title = Labels.title("Stillturning");
    private final Chooser<String> candidates;
    private final Label saved = new Label();
    private final Button save;
    private final HBox line;
    private Optional<Desk> open = Optional.empty();

    Header(ObjectProperty<Settings> settings, Window window) {
        menus = new Menus(settings, window);
        candidates =
                new Chooser<>(
                        "Candidate that is open",
                        this::title,
                        id -> open.ifPresent(desk -> desk.open(id)));
        candidates.setId("candidates");
        candidates.setTooltip(new Tooltip("The candidate that is open"));
        Label word = new Label("Candidate");
        word.setLabelFor(candidates);
        save = Controls.button("Save", "save", window::save);
        save.getStyleClass().add("small");
        line = new HBox(title, word, candidates, Layout.gap(), saved, save);
        line.setAlignment(Pos.CENTER_LEFT);
        line.getStyleClass().add("header-line");
        getChildren().addAll(menus, line);
        clear();
    }

    /** Nothing is open. */
    void clear() {
        Showing.set(line, false);
        open = Optional.empty();
        menus.clear();
    }

    /** Follows an open study. */
    void follow(OpenStudy study) {
        Desk desk = study.desk();
        open = Optional.of(desk);
        Showing.set(line, true);
        menus.follow(desk);
        desk.candidate().addListener((of, before, now) -> list(desk));
        desk.read().addListener((of, before, now) -> list(desk));
        desk.texts().addListener((of, before, now) -> tell(now));
        list(desk);
        tell(desk.texts().get());
    }

    private void list(Desk desk) {
        title.setText(
                desk.study()
                        .map(s -> s.heading().title())
                        .orElse(String.valueOf(desk.draft().folder().getFileName())));
        String id = desk.candidate().get();
        candidates.offer(desk.candidates(), id.isEmpty() ? null : id);
    }

    private String title(String id) {
        return open.flatMap(Desk::study)
                .flatMap(s -> s.candidate(id))
                .map(Candidate::title)
                .orElse(id);
    }

    private void tell(DraftState state) {
        saved.setText(
                state.isSaved()
                        ? "saved"
                        : "\u25CF not saved: " + String.join(", ", state.unsaved()));
        save.setDisable(state.isSaved());
    }
}
