package stillturning.desktop.view.breaking;

import java.util.ArrayList;
import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import stillturning.desktop.viewmodel.breaking.Breaking;
import stillturning.desktop.viewmodel.breaking.FailureChoice;

/** What can fail, under headings while nothing is searched. */
final class FailureList extends VBox {

    /** A heading, or a choice. */
    private sealed interface Item {
        record Heading(String words) implements Item {}

        record Failing(FailureChoice choice, boolean underPart) implements Item {}
    }

    private final Breaking breaking;
    private final TextField search = new TextField();
    private final ListView<Item> list = new ListView<>();

    FailureList(Breaking breaking) {
        this.breaking = breaking;
        getStyleClass().add("area-pane");
        Label title = new Label("What fails?");
        title.getStyleClass().add("title-4");
        search.setId("failure-search");
        search.setPromptText("main bus short …");
        search.setAccessibleText("Find a failure by a few words");
        search.textProperty().bindBidirectional(breaking.search());
        search.addEventHandler(KeyEvent.KEY_PRESSED, this::leaveSearch);
        list.setId("failure-list");
        list.setAccessibleText("Failures; Enter picks one, Ctrl+Enter one more");
        list.setCellFactory(of -> new Cell());
        list.setPlaceholder(new Label("Nothing here fails by that name."));
        list.addEventHandler(
                KeyEvent.KEY_PRESSED,
                event -> {
                    if (event.getCode() == KeyCode.ENTER) {
                        take(event.isShortcutDown());
                        event.consume();
                    }
                });
        VBox.setVgrow(list, Priority.ALWAYS);
        Label hint = new Label("Click one to play it, Ctrl+click to let a second fail with it.");
        hint.setWrapText(true);
        hint.setMinHeight(USE_PREF_SIZE);
        hint.getStyleClass().addAll("text-small", "text-muted");
        getChildren().addAll(title, search, list, hint);
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
        if (list.getSelectionModel().getSelectedItem() instanceof Item.Failing failing) {
            pick(failing.choice, also);
        }
    }

    private void pick(FailureChoice choice, boolean also) {
        if (also) {
            breaking.alsoPick(choice);
        } else {
            breaking.pick(choice);
        }
    }

    private void fill() {
        List<Item> items = new ArrayList<>();
        boolean searched = !breaking.search().get().isBlank();
        String above = "";
        for (FailureChoice choice : breaking.offered()) {
            String heading = choice.part().orElse(choice.kind());
            if (!searched && !heading.equals(above)) {
                items.add(new Item.Heading(heading));
                above = heading;
            }
            items.add(new Item.Failing(choice, !searched));
        }
        list.getItems().setAll(items);
    }

    private final class Cell extends ListCell<Item> {

        Cell() {
            setWrapText(true);
            setPrefWidth(0);
            addEventHandler(
                    MouseEvent.MOUSE_CLICKED,
                    event -> {
                        if (getItem() instanceof Item.Failing failing) {
                            pick(failing.choice, event.isShortcutDown());
                        }
                    });
        }

        @Override
        protected void updateItem(@Nullable Item item, boolean empty) {
            super.updateItem(item, empty);
            getStyleClass().removeAll("list-heading", "list-picked");
            if (empty || item == null) {
                setText("");
            } else if (item instanceof Item.Heading heading) {
                getStyleClass().add("list-heading");
                setText(heading.words);
            } else if (item instanceof Item.Failing failing) {
                boolean picked = breaking.picked().contains(failing.choice);
                if (picked) {
                    getStyleClass().add("list-picked");
                }
                FailureChoice choice = failing.choice;
                String words = failing.underPart ? choice.mode() : choice.name();
                setText((picked ? "\u2716 " : failing.underPart ? "   " : "") + words);
            }
        }
    }
}
