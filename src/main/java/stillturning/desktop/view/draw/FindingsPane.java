package stillturning.desktop.view.draw;

import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import stillturning.desktop.view.WordyCell;
import stillturning.desktop.viewmodel.draw.Board;
import stillturning.files.FileFinding;

/** What is to be said about the candidate; a click goes to the part. */
final class FindingsPane extends VBox {

    FindingsPane(Board board, Consumer<FileFinding> go) {
        getStyleClass().add("draw-findings");
        Label head = new Label();
        head.getStyleClass().add("title-4");
        ListView<FileFinding> list = new ListView<>(board.findings());
        list.setId("findings");
        list.setAccessibleText("Findings; Enter goes to the part");
        list.getStyleClass().add("dense");
        Label none = new Label("Nothing to be mended. What is wrong with the drawing shows here.");
        none.setWrapText(true);
        none.getStyleClass().add("empty-words");
        list.setPlaceholder(none);
        list.setCellFactory(view -> new Cell(go));
        list.setOnKeyPressed(
                event -> {
                    FileFinding finding = list.getSelectionModel().getSelectedItem();
                    if (event.getCode() == KeyCode.ENTER && finding != null) {
                        go.accept(finding);
                    }
                });
        VBox.setVgrow(list, Priority.ALWAYS);
        getChildren().addAll(head, list);
        board.findings().addListener((javafx.beans.Observable of) -> count(head, board));
        count(head, board);
    }

    private static void count(Label head, Board board) {
        long mistakes = board.findings().stream().filter(FileFinding::mistake).count();
        long remarks = board.findings().size() - mistakes;
        head.setText(
                mistakes == 0 && remarks == 0
                        ? "Findings"
                        : "Findings: "
                                + mistakes
                                + (mistakes == 1 ? " mistake, " : " mistakes, ")
                                + remarks
                                + (remarks == 1 ? " remark" : " remarks"));
    }

    private static final class Cell extends WordyCell<FileFinding> {
        private final Label sign = new Label();
        private final Label words = new Label();
        private final Label mend = new Label();
        private final HBox line;

        Cell(Consumer<FileFinding> go) {
            words.setWrapText(true);
            words.setMinHeight(USE_PREF_SIZE);
            mend.setWrapText(true);
            mend.setMinHeight(USE_PREF_SIZE);
            mend.getStyleClass().addAll("text-muted", "text-small");
            VBox both = new VBox(words, mend);
            both.setMinWidth(0);
            HBox.setHgrow(both, Priority.ALWAYS);
            line = new HBox(sign, both);
            line.getStyleClass().add("finding-line");
            setOnMouseClicked(
                    event -> {
                        if (getItem() != null) {
                            go.accept(getItem());
                        }
                    });
        }

        @Override
        protected void updateItem(@Nullable FileFinding finding, boolean empty) {
            super.updateItem(finding, empty);
            if (empty || finding == null) {
                setGraphic(null);
                setAccessibleText(null);
                return;
            }
            sign.setText(finding.mistake() ? "\u2716" : "\u25CB");
            sign.getStyleClass()
                    .setAll("label", finding.mistake() ? "finding-wrong" : "finding-note");
            String about = String.join(", ", finding.parts());
            words.setText(about.isEmpty() ? finding.words() : about + ": " + finding.words());
            mend.setText(finding.mend());
            mend.setVisible(!finding.mend().isEmpty());
            mend.setManaged(!finding.mend().isEmpty());
            setGraphic(line);
            setAccessibleText(
                    (finding.mistake() ? "mistake, " : "remark, ")
                            + about
                            + ": "
                            + finding.sentence());
        }
    }
}
