package stillturning.desktop.view.draw;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.Observable;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.ItemCell;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.viewmodel.draw.Board;
import stillturning.files.finding.FileFinding;

/** What is to be said about the candidate; a click goes to the part. */
final class FindingsPane extends VBox {

    FindingsPane(Board board, Consumer<FileFinding> go) {
        getStyleClass().add("draw-findings");
        Label head = Labels.title("");
        ListView<FileFinding> list = new ListView<>(board.findings().all());
        list.setId("findings");
        list.setAccessibleText("Findings; Enter goes to the part");
        list.getStyleClass().addAll("dense", "few-findings");
        list.setPlaceholder(
                Labels.empty("Nothing to be mended. What is wrong with the drawing shows here."));
        list.setCellFactory(view -> new FindingLine(board, go));
        Controls.onEnter(list, go);
        getChildren().addAll(head, Layout.high(list));
        board.findings().all().addListener((Observable of) -> count(head, board));
        count(head, board);
    }

    private static void count(Label head, Board board) {
        long mistakes = board.findings().all().stream().filter(FileFinding::mistake).count();
        long remarks = board.findings().all().size() - mistakes;
        head.setText(
                mistakes == 0 && remarks == 0
                        ? "Findings"
                        : "Findings: "
                                + mistakes
                                + (mistakes == 1 ? " mistake, " : " mistakes, ")
                                + remarks
                                + (remarks == 1 ? " remark" : " remarks"));
    }

    private static final class FindingLine extends ItemCell<FileFinding> {
        private final Label sign = new Label();
        private final Label words = Labels.wrapped("");
        private final Label mend = Labels.remark("");
        private final HBox line;
        private final Board board;

        FindingLine(Board board, Consumer<FileFinding> go) {
            this.board = board;
            VBox both = new VBox(words, mend);
            both.setMinWidth(0);
            line = new HBox(sign, Layout.wide(both));
            line.getStyleClass().add("finding-line");
            setOnMouseClicked(event -> Optional.ofNullable(getItem()).ifPresent(go));
        }

        @Override
        protected void show(FileFinding finding) {
            sign.setText(finding.mistake() ? "\u2716" : "\u25CB");
            sign.getStyleClass()
                    .setAll("label", finding.mistake() ? "finding-wrong" : "finding-note");
            String about = board.findings().names().about(finding);
            String said = board.findings().names().words(finding);
            words.setText(about.isEmpty() ? said : about + ": " + said);
            mend.setText(finding.mend());
            Showing.set(mend, !finding.mend().isEmpty());
            setGraphic(line);
            String kind = finding.mistake() ? "mistake, " : "remark, ";
            setAccessibleText(
                    kind
                            + words.getText()
                            + (finding.mend().isEmpty() ? "" : "; " + finding.mend()));
        }
    }
}
