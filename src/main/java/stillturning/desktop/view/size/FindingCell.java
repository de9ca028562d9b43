package stillturning.desktop.view.size;

import java.util.Locale;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.ItemCell;
import stillturning.desktop.viewmodel.size.FindingRow;
import stillturning.desktop.viewmodel.size.Sizes;

/** A finding: how grave, about what, what is wrong, what mends it, and where to look. */
final class FindingCell extends ItemCell<FindingRow> {

    private final Label mark = new Label();
    private final Label about = new Label();
    private final Label wrong = new Label();
    private final Label mend = new Label();
    private final Hyperlink drawing = new Hyperlink("Show in Draw");
    private final Hyperlink file = new Hyperlink();
    private final HBox line;

    FindingCell(Sizes sizes) {
        mark.setMinWidth(Region.USE_PREF_SIZE);
        about.getStyleClass().add("finding-about");
        wrong.setWrapText(true);
        wrong.setMinHeight(Region.USE_PREF_SIZE);
        mend.setWrapText(true);
        mend.setMinHeight(Region.USE_PREF_SIZE);
        mend.getStyleClass().add("text-muted");
        drawing.setMinWidth(Region.USE_PREF_SIZE);
        file.setMinWidth(Region.USE_PREF_SIZE);
        drawing.setOnAction(event -> sizes.draw(getItem()));
        file.setOnAction(event -> sizes.read(getItem()));
        about.setWrapText(true);
        about.setMinHeight(Region.USE_PREF_SIZE);
        about.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(about, Priority.ALWAYS);
        HBox head = new HBox(about, drawing, file);
        head.getStyleClass().add("in-line");
        VBox words = new VBox(head, wrong, mend);
        words.setMinWidth(0);
        HBox.setHgrow(words, Priority.ALWAYS);
        line = new HBox(mark, words);
        line.getStyleClass().add("finding-line");
    }

    @Override
    protected void show(FindingRow row) {
        mark.setText(row.mark());
        mark.getStyleClass()
                .setAll(
                        "label",
                        "finding-mark",
                        "finding-" + row.gravity().name().toLowerCase(Locale.ROOT));
        about.setText(row.about());
        wrong.setText(row.wrong());
        mend.setText("Mend: " + row.mend());
        shown(drawing, row.part().isPresent());
        shown(file, row.place().isPresent());
        row.place().ifPresent(place -> file.setText(place.toString()));
        setGraphic(line);
        setAccessibleText(
                row.mark() + ", " + row.about() + ": " + row.wrong() + ". Mend: " + row.mend());
    }

    private static void shown(Hyperlink link, boolean shown) {
        link.setVisible(shown);
        link.setManaged(shown);
    }
}
