package stillturning.desktop.view.breaking;

import javafx.css.PseudoClass;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import stillturning.desktop.view.ItemCell;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.viewmodel.breaking.Breaking;
import stillturning.report.EventLines.EventLine;

/** The story in words; a line is where one can go, and the present one is marked. */
final class StoryPane extends VBox {

    /** Room beside the words of a line (pixels). */
    private static final double EDGES = 18;

    private static final PseudoClass AHEAD = PseudoClass.getPseudoClass("ahead");

    private final Breaking breaking;
    private final ListView<EventLine> lines = new ListView<>();
    private int present = -1;
    private boolean following;

    StoryPane(Breaking breaking) {
        this.breaking = breaking;
        lines.setId("story-lines");
        lines.setAccessibleText("The story, event by event");
        lines.setCellFactory(of -> new LineCell());
        lines.setPlaceholder(
                Labels.empty(
                        "Pick a failure on the left, or a part in the diagram and then how it"
                                + " fails. What follows is told here, event by event."));
        getChildren().add(Layout.high(lines));
        lines.getSelectionModel()
                .selectedItemProperty()
                .addListener((of, before, now) -> goTo(now));
        breaking.scrubber().seconds().addListener((of, before, now) -> follow());
    }

    /** Tells the story again. */
    void tell() {
        following = true;
        if (breaking.picked().isEmpty()) {
            lines.getItems().clear();
        } else {
            lines.getItems().setAll(breaking.lines());
        }
        present = -1;
        following = false;
        follow();
    }

    private void goTo(@Nullable EventLine line) {
        if (line != null && !following) {
            breaking.scrubber().playing().set(false);
            breaking.scrubber().to(line.seconds());
        }
    }

    private void follow() {
        double now = breaking.scrubber().seconds().get();
        int last = -1;
        for (EventLine line : lines.getItems()) {
            last += line.seconds() <= now ? 1 : 0;
        }
        if (last == present) {
            return;
        }
        present = last;
        following = true;
        EventLine chosen = lines.getSelectionModel().getSelectedItem();
        boolean stays = last >= 0 && chosen != null && chosen.seconds() == at(last);
        if (!stays) {
            lines.getSelectionModel().clearAndSelect(last);
            lines.scrollTo(Math.max(0, last - 3));
        }
        lines.refresh();
        following = false;
    }

    private double at(int line) {
        return lines.getItems().get(line).seconds();
    }

    private final class LineCell extends ItemCell<EventLine> {
        private final Label time = Labels.of("", "story-time");
        private final Label words = Labels.wrapped("");
        private final Label chain = Labels.of("", "story-chain");
        private final GridPane row = new GridPane();

        LineCell() {
            row.getColumnConstraints().addAll(Layout.asWideAsWords(), Layout.growing());
            row.getStyleClass().add("story-line");
            GridPane.setValignment(time, VPos.TOP);
            row.addRow(0, time, words);
            row.add(chain, 1, 1);
            row.prefWidthProperty().bind(widthProperty().subtract(EDGES));
        }

        @Override
        protected void clear() {
            super.clear();
            pseudoClassStateChanged(AHEAD, false);
        }

        @Override
        protected void show(EventLine line) {
            setGraphic(row);
            double now = breaking.scrubber().seconds().get();
            pseudoClassStateChanged(AHEAD, line.seconds() > now);
            time.setText(line.time());
            words.setText((line.kind().isAct() ? "\u25B8 " : "") + line.event());
            chain.setText(
                    line.because() > 0
                            ? line.number() + ", because of " + line.because()
                            : String.valueOf(line.number()));
            setAccessibleText(line.time() + ": " + line.event());
        }
    }
}
