package stillturning.desktop.view.breaking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.ItemCell;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.viewmodel.breaking.Breaking;
import stillturning.desktop.viewmodel.breaking.FailureChoice;

/** What can fail, under headings while nothing is searched. */
final class FailureList extends VBox {

    /** A failure, or a heading above several, for which there is no choice. */
    private record FailureEntry(String words, Optional<FailureChoice> choice) {}

    private final Breaking breaking;
    private final TextField search = new TextField();
    private final ListView<FailureEntry> list = new ListView<>();

    FailureList(Breaking breaking) {
        this.breaking = breaking;
        getStyleClass().add("area-pane");
        Controls.field(
                search, "failure-search", "main bus short …", "Find a failure by a few words");
        search.textProperty().bindBidirectional(breaking.search());
        search.addEventHandler(KeyEvent.KEY_PRESSED, this::leaveSearch);
        list.setId("failure-list");
        list.setAccessibleText("Failures; Enter picks one, Ctrl+Enter one more");
        list.setCellFactory(of -> new EntryCell());
        list.setPlaceholder(new Label("Nothing here fails by that name."));
        list.addEventHandler(
                KeyEvent.KEY_PRESSED,
                event -> {
                    if (event.getCode() == KeyCode.ENTER) {
                        take(event.isShortcutDown());
                        event.consume();
                    }
                });
        Label hint =
                Labels.remark("Click one to play it, Ctrl+click to let a second fail with it.");
        getChildren().addAll(Labels.title("What fails?"), search, Layout.high(list), hint);
        breaking.offered().addListener((ListChangeListener<FailureChoice>) change -> fill());
        breaking.picked().addListener((ListChangeListener<FailureChoice>) change -> list.refresh());
        fill();
    }

    private void leaveSearch(KeyEvent event) {
        if (event.getCode() == KeyCode.DOWN) {
            list.requestFocus();
            list.getSelectionModel().selectFirst();
        } else if (event.getCode() == KeyCode.ENTER && !breaking.offered().isEmpty()) {
            breaking.pick(breaking.offered().get(0));
        } else if (event.getCode() == KeyCode.ESCAPE) {
            search.clear();
        }
    }

    private void take(boolean also) {
        Optional.ofNullable(list.getSelectionModel().getSelectedItem())
                .ifPresent(entry -> pick(entry, also));
    }

    private void pick(FailureEntry entry, boolean also) {
        entry.choice.ifPresent(also ? breaking::alsoPick : breaking::pick);
    }

    private void fill() {
        List<FailureEntry> entries = new ArrayList<>();
        boolean searched = !breaking.search().get().isBlank();
        String above = "";
        for (FailureChoice choice : breaking.offered()) {
            String heading = choice.part().orElse(choice.kind());
            if (!searched && !heading.equals(above)) {
                String called = choice.part().map(breaking::called).orElse(heading);
                entries.add(new FailureEntry(called, Optional.empty()));
                above = heading;
            }
            String words = searched ? breaking.calledFailure(choice.name()) : choice.mode();
            entries.add(new FailureEntry(words, Optional.of(choice)));
        }
        list.getItems().setAll(entries);
    }

    private final class EntryCell extends ItemCell<FailureEntry> {
        private final Label words = Labels.wrapped("");

        EntryCell() {
            addEventHandler(
                    MouseEvent.MOUSE_CLICKED,
                    event -> {
                        if (getItem() != null) {
                            pick(getItem(), event.isShortcutDown());
                        }
                    });
        }

        @Override
        protected void clear() {
            super.clear();
            getStyleClass().removeAll("list-heading", "list-picked");
        }

        @Override
        protected void show(FailureEntry entry) {
            clear();
            boolean picked = entry.choice.filter(breaking.picked()::contains).isPresent();
            if (entry.choice.isEmpty()) {
                getStyleClass().add("list-heading");
            } else if (picked) {
                getStyleClass().add("list-picked");
            }
            boolean underHeading = entry.choice.isPresent() && breaking.search().get().isBlank();
            words.setText((picked ? "\u2716 " : "") + entry.words);
            words.getStyleClass().remove("list-below");
            if (underHeading) {
                words.getStyleClass().add("list-below");
            }
            setGraphic(words);
        }
    }
}
