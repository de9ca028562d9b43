package stillturning.desktop.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import javafx.geometry.Orientation;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Lists whose cells are as high as their words know how long they are, whatever their size. */
class ItemCellTest {

    private static final Logger CONTROLS = Logger.getLogger("javafx.scene.control");
    private static final int ROWS = 7;
    private static final double WIDTH = 300;
    private static final double NARROW = 20;

    private final List<String> complaints = new ArrayList<>();
    private final Handler listening =
            new Handler() {
                @Override
                public void publish(LogRecord record) {
                    complaints.add(record.getMessage());
                }

                @Override
                public void flush() {}

                @Override
                public void close() {}
            };

    private static final class WordsCell extends ItemCell<String> {
        private final Label words = Labels.wrapped("");
        private final HBox row = new HBox(new VBox(words, Labels.wrapped("and more")));

        @Override
        protected void show(String item) {
            words.setText(item);
            setGraphic(row);
        }
    }

    @BeforeAll
    static void toolkit() {
        OnStage.start();
    }

    @BeforeEach
    void listen() {
        CONTROLS.addHandler(listening);
    }

    @AfterEach
    void listenNoMore() {
        CONTROLS.removeHandler(listening);
    }

    @Test
    void aListThatWasNarrowAtFirstKnowsHowLongItIs() {
        ListView<String> list = list();
        Stage stage = shown(list, 200);
        double share = OnStage.on(() -> bar(list).getVisibleAmount());
        close(stage);
        assertTrue(share > 0.3 && share < 1, () -> "a part of " + share + " is in sight");
    }

    @Test
    void nothingIsComplainedOfWhileAListIsOffTheScreen() {
        ListView<String> list = list();
        Stage stage = shown(list, 200);
        OnStage.on(
                () -> {
                    ((VBox) list.getParent()).getChildren().clear();
                    list.getItems().setAll("another", "list", "of words");
                    list.scrollTo(0);
                    list.layout();
                    return true;
                });
        close(stage);
        assertEquals(List.of(), complaints);
    }

    private static ScrollBar bar(ListView<String> list) {
        return list.lookupAll(".scroll-bar").stream()
                .map(ScrollBar.class::cast)
                .filter(b -> b.getOrientation() == Orientation.VERTICAL)
                .findFirst()
                .orElseThrow();
    }

    private static ListView<String> list() {
        return OnStage.on(
                () -> {
                    ListView<String> list = new ListView<>();
                    list.setCellFactory(of -> new WordsCell());
                    for (int row = 0; row < ROWS; row++) {
                        list.getItems()
                                .add("Two alternators and two batteries " + "long ".repeat(row));
                    }
                    return list;
                });
    }

    /** A list that is narrow at first, as panes are before a window has found its shape. */
    private static Stage shown(ListView<String> list, double height) {
        return OnStage.on(
                () -> {
                    Stage stage = new Stage();
                    stage.setScene(new Scene(new VBox(list), WIDTH, 500));
                    list.setMaxHeight(height);
                    list.setMaxWidth(NARROW);
                    stage.show();
                    list.getScene().getRoot().layout();
                    list.setMaxWidth(WIDTH);
                    list.getScene().getRoot().layout();
                    return stage;
                });
    }

    private static void close(Stage stage) {
        OnStage.on(
                () -> {
                    stage.close();
                    return true;
                });
    }
}
