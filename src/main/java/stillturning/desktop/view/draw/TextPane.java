package stillturning.desktop.view.draw;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.fxmisc.flowless.VirtualizedScrollPane;
import org.fxmisc.richtext.CodeArea;
import org.fxmisc.richtext.LineNumberFactory;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.draw.Board;
import stillturning.desktop.viewmodel.draw.SideText;
import stillturning.files.FileFinding;

/** The candidate's file beside its diagram: lines with numbers and marks; the caret chooses. */
final class TextPane extends VBox {

    private final Board board;
    private final SideText text;
    private final CodeArea area = new CodeArea();
    private final Label refused = new Label();
    private Map<Integer, List<FileFinding>> marks = Map.of();
    private boolean filling;

    TextPane(Desk desk, Board board) {
        this.board = board;
        this.text = new SideText(desk);
        getStyleClass().add("draw-text");
        area.setId("side-text");
        area.setAccessibleText("Text of the candidate's file");
        area.setParagraphGraphicFactory(graphics());
        area.textProperty().addListener((of, before, now) -> typed(now));
        area.currentParagraphProperty().addListener((of, before, now) -> caretAt(now + 1));
        refused.setWrapText(true);
        refused.getStyleClass().add("field-error");
        refused.managedProperty().bind(refused.visibleProperty());
        refused.visibleProperty().bind(refused.textProperty().isNotEmpty());
        VirtualizedScrollPane<CodeArea> scroll = new VirtualizedScrollPane<>(area);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(scroll, refused);
        desk.texts().addListener((of, before, now) -> fill());
        desk.candidate()
                .addListener(
                        (of, before, now) -> {
                            fill();
                            mark();
                        });
        desk.reading().addListener((of, before, now) -> mark());
        board.chosen().addListener((javafx.beans.Observable of) -> follow());
        fill();
        mark();
    }

    private void typed(String now) {
        if (!filling) {
            refused.setText(text.type(now).orElse(""));
        }
    }

    private void fill() {
        String now = text.text();
        if (!area.getText().equals(now)) {
            filling = true;
            int caret = area.getCaretPosition();
            area.replaceText(now);
            area.moveTo(Math.min(caret, now.length()));
            filling = false;
        }
    }

    private void mark() {
        Map<Integer, List<FileFinding>> now = text.marks();
        if (!now.equals(marks)) {
            marks = now;
            area.setParagraphGraphicFactory(graphics());
        }
    }

    private void caretAt(int line) {
        if (!filling && area.isFocused()) {
            text.partAt(line).ifPresent(part -> board.choose(List.of(part)));
        }
    }

    private void follow() {
        if (!area.isFocused() && board.chosen().size() == 1) {
            goTo(board.lineOf(board.chosen().get(0)));
        }
    }

    /** Puts the caret into a line, counted from 1. */
    void goTo(int line) {
        if (line >= 1 && line <= area.getParagraphs().size()) {
            area.moveTo(line - 1, 0);
            area.requestFollowCaret();
        }
    }

    private IntFunction<Node> graphics() {
        IntFunction<Node> numbers = LineNumberFactory.get(area);
        return index -> {
            Optional<List<FileFinding>> found = Optional.ofNullable(marks.get(index + 1));
            boolean mistake = found.stream().flatMap(List::stream).anyMatch(FileFinding::mistake);
            Label sign = new Label(found.isEmpty() ? " " : mistake ? "\u2716" : "\u25CB");
            sign.getStyleClass().addAll("line-mark", mistake ? "finding-wrong" : "finding-note");
            found.ifPresent(
                    f ->
                            sign.setTooltip(
                                    new Tooltip(
                                            String.join(
                                                    "\n",
                                                    f.stream()
                                                            .map(FileFinding::sentence)
                                                            .toList()))));
            return new HBox(numbers.apply(index), sign);
        };
    }
}
