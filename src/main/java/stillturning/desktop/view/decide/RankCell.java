package stillturning.desktop.view.decide;

import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import stillturning.desktop.viewmodel.decide.RankRow;
import stillturning.quantity.Formats;

/** One candidate in the ranking. */
final class RankCell extends ListCell<RankRow> {

    private final Label rank = new Label();
    private final Label title = new Label();
    private final Label shift = new Label();
    private final Label marks = new Label();
    private final PointsBar bar = new PointsBar();
    private final HBox line;

    RankCell() {
        rank.getStyleClass().add("rank-number");
        rank.setMinWidth(Region.USE_PREF_SIZE);
        title.getStyleClass().add("rank-title");
        title.setMinWidth(0);
        shift.getStyleClass().add("rank-shift");
        shift.setMinWidth(Region.USE_PREF_SIZE);
        marks.getStyleClass().addAll("text-small", "text-muted");
        marks.setMinWidth(0);
        Region between = new Region();
        HBox.setHgrow(between, Priority.ALWAYS);
        HBox head = new HBox(title, between, shift);
        head.getStyleClass().add("in-line");
        VBox words = new VBox(head, bar, marks);
        words.getStyleClass().add("rank-words");
        words.setMinWidth(0);
        HBox.setHgrow(words, Priority.ALWAYS);
        line = new HBox(rank, words);
        line.getStyleClass().add("rank-line");
        // the list is as wide as its cells, so that titles are cut and nothing scrolls sideways
        setPrefWidth(0);
    }

    @Override
    protected void updateItem(@Nullable RankRow row, boolean empty) {
        super.updateItem(row, empty);
        if (empty || row == null) {
            setGraphic(null);
            setAccessibleText(null);
            return;
        }
        rank.setText(String.valueOf(row.rank()));
        title.setText(row.title());
        shift.setText(row.shift());
        marks.setText(marks(row));
        bar.show(row.pieces());
        setGraphic(line);
        setAccessibleText("Rank " + row.rank() + ": " + row.title() + ", " + marks(row));
    }

    private static String marks(RankRow row) {
        String missed =
                row.missed() == 0
                        ? "\u2713 meets every requirement"
                        : "\u2716 misses " + row.missed();
        return Formats.fixed(row.points(), 3)
                + " points  \u00B7  "
                + missed
                + "  \u00B7  "
                + row.domination();
    }
}
