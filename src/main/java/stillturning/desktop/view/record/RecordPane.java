package stillturning.desktop.view.record;

import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.view.decide.BlockPane;
import stillturning.desktop.viewmodel.record.EntryGroup;
import stillturning.desktop.viewmodel.record.Recording;

/** What was measured: blanks to fill in by group, and what came of holding it to the prediction. */
public final class RecordPane {

    private static final double LETTERS_OF_DAY = 10;
    private static final double ENTRIES_SHARE = 0.6;

    private final Recording recording;
    private final ListView<EntryGroup> groups = new ListView<>();
    private final EntryFields fields;
    private final BlockPane said = new BlockPane("record-said");
    private final BorderPane view = new BorderPane();

    /**
     * @param back leads back to where the user came from
     */
    public RecordPane(Recording recording, Runnable back) {
        this.recording = recording;
        this.fields = new EntryFields(recording::keep, groups::refresh);
        view.setId("record");
        view.getStyleClass().add("record");
        view.setTop(new VBox(head(back), of(), notices()));
        view.setCenter(sheets());
        recording.built().addListener((value, from, to) -> tell());
        recording
                .groups()
                .addListener((ListChangeListener.Change<? extends EntryGroup> c) -> refill());
        view.sceneProperty().addListener((value, from, to) -> recording.look(to != null));
        refill();
        tell();
    }

    /** What is shown. */
    public Region view() {
        return view;
    }

    private HBox head(Runnable back) {
        Label title = Labels.of("", "title-4");
        title.setMinWidth(0);
        title.textProperty().bind(Bindings.concat("What was measured: ", recording.title()));
        ProgressIndicator turning = new ProgressIndicator();
        turning.getStyleClass().add("turning");
        Showing.whileTrue(turning, recording.working());
        HBox head =
                Layout.inLine(
                        title,
                        turning,
                        Layout.gap(),
                        Controls.button("Back to the page", "record-back", back));
        head.getStyleClass().add("size-head");
        return head;
    }

    private HBox of() {
        TextField day = new TextField();
        Controls.field(day, "record-day", "2026-05-17", "Day of the measurements");
        day.setPrefColumnCount((int) LETTERS_OF_DAY);
        day.textProperty().bindBidirectional(recording.date());
        TextField by = new TextField();
        Controls.field(by, "record-by", "name", "Who measured");
        by.textProperty().bindBidirectional(recording.by());
        Controls.onLeave(by, recording::keep);
        Button compare = Controls.button("_Compare", "record-compare", recording::compare);
        compare.getStyleClass().add("accent");
        Button add = Controls.button("_Add to the record", "record-add", recording::record);
        add.disableProperty().bind(recording.built().map(b -> b.isEmpty()));
        Button take = Controls.button("_Take into the study", "record-take", recording::offer);
        take.disableProperty().bind(recording.built().map(b -> b.isEmpty()));
        Button clear = Controls.button("_Empty all", "record-clear", recording::clear);
        HBox line =
                Layout.inLine(
                        Layout.named("Day", day),
                        Layout.named("By", by),
                        Layout.gap(),
                        compare,
                        add,
                        take,
                        clear);
        line.getStyleClass().add("size-head");
        return line;
    }

    private VBox notices() {
        Label advice = Labels.notice("record-advice", "accent");
        advice.textProperty().bind(recording.advice());
        Label refusal = Labels.notice("record-refusal", "warning");
        refusal.textProperty().bind(recording.refusal());
        return new VBox(refusal, advice);
    }

    private SplitPane sheets() {
        groups.setId("record-groups");
        groups.setAccessibleText("Groups of blanks");
        groups.getStyleClass().addAll("dense", "record-groups");
        groups.setCellFactory(list -> new GroupCell());
        groups.getSelectionModel()
                .selectedItemProperty()
                .addListener((value, from, to) -> fields.show(to));
        ScrollPane entries = new ScrollPane();
        Layout.scroll(entries, fields.view());
        ScrollPane told = new ScrollPane();
        said.getStyleClass().add("record-fields");
        Layout.scroll(told, said);
        BorderPane left = new BorderPane(entries);
        left.setLeft(groups);
        SplitPane split = new SplitPane(left, told);
        split.setDividerPositions(ENTRIES_SHARE);
        return split;
    }

    private void refill() {
        int at = Math.max(0, groups.getSelectionModel().getSelectedIndex());
        groups.getItems().setAll(recording.groups());
        if (at < groups.getItems().size()) {
            groups.getSelectionModel().select(at);
        }
        fields.show(groups.getSelectionModel().getSelectedItem());
    }

    private void tell() {
        said.show(recording.blocks());
        groups.refresh();
    }

    /** A group with how much of it is filled in. */
    private static final class GroupCell extends ListCell<EntryGroup> {
        @Override
        protected void updateItem(@Nullable EntryGroup group, boolean empty) {
            super.updateItem(group, empty);
            if (empty || group == null) {
                setText("");
                return;
            }
            String count = group.filled() + " of " + group.entries().size();
            String wrong = group.mistakes() == 0 ? "" : ", \u2717 " + group.mistakes();
            setText(group.title() + " (" + count + wrong + ")");
        }
    }
}
