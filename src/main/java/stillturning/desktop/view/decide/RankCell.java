package stillturning.desktop.view.decide;

import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.ItemCell;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.viewmodel.decide.RankRow;
import stillturning.quantity.Formats;

/** One candidate in the ranking. */
final class RankCell extends ItemCell<RankRow> {

    private final Label rank = Labels.of("", "rank-number");
    private final Label title = Labels.of("", "rank-title");
    private final Label shift = Labels.of("", "rank-shift");
    private final Label marks = Labels.of("", "text-small", "text-muted");
    private final PointsBar bar = new PointsBar();
    private final HBox line;

    RankCell() {
        rank.setMinWidth(Region.USE_PREF_SIZE);
        title.setWrapText(true);
        title.setMinHeight(Region.USE_PREF_SIZE);
        shift.setMinWidth(Region.USE_PREF_SIZE);
        marks.setWrapText(true);
        marks.setMinHeight(Region.USE_PREF_SIZE);
        VBox words = new VBox(Layout.inLine(title, Layout.gap(), shift), bar, marks);
        words.getStyleClass().add("rank-words");
        words.setMinWidth(0);
        line = new HBox(rank, Layout.wide(words));
        line.getStyleClass().add("rank-line");
    }

    @Override
    protected void show(RankRow row) {
        rank.setText(String.valueOf(row.rank()));
        title.setText(row.title());
        shift.setText(row.shift());
        marks.setText(marks(row));
        bar.show(row.pieces());
        setGraphic(line);
        setAccessibleText("Rank " + row.rank() + ": " + row.title() + ", " + marks(row));
    }

    private static String marks(RankRow row) {
        String points = Formats.fixed(row.standing().total(), 3) + " points";
        return String.join("  \u00B7  ", points, row.requirements(), row.domination());
    }
}
