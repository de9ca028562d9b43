package stillturning.desktop.view.draw;

import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import javafx.beans.Observable;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.fxmisc.flowless.VirtualizedScrollPane;
import org.fxmisc.richtext.CodeArea;
import org.fxmisc.richtext.LineNumberFactory;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.draw.Board;
import stillturning.desktop.viewmodel.draw.SideText;
import stillturning.files.finding.FileFinding;

/** The candidate's file beside its diagram: lines with numbers and marks; the caret chooses. */
final class TextPane extends VBox {

    private final Board board;
    private final SideText text;
    private final CodeArea area = new CodeArea();
    private final Label refused = Labels.of("", "field-error");
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
        Showing.whileTrue(refused, refused.textProperty().isNotEmpty());
        VirtualizedScrollPane<CodeArea> scroll = new VirtualizedScrollPane<>(area);
        getChildren().addAll(Layout.high(scroll), refused);
        desk.texts().addListener((of, before, now) -> fill());
        desk.candidate()
                .addListener(
                        (of, before, now) -> {
                            fill();
                            mark();
                        });
        desk.reading().addListener((of, before, now) -> mark());
        board.chosen().addListener((Observable of) -> follow());
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
            List<FileFinding> found = marks.getOrDefault(index + 1, List.of());
            boolean mistake = found.stream().anyMatch(FileFinding::mistake);
            Label sign =
                    Labels.of(
                            found.isEmpty() ? " " : mistake ? "\u2716" : "\u25CB",
                            "line-mark",
                            mistake ? "finding-wrong" : "finding-note");
            if (!found.isEmpty()) {
                String words =
                        found.stream().map(FileFinding::sentence).collect(Collectors.joining("\n"));
                sign.setTooltip(new Tooltip(words));
            }
            return new HBox(numbers.apply(index), sign);
        };
    }
}
