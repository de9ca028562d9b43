package stillturning.desktop.view.record;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Showing;
import stillturning.desktop.viewmodel.record.Entry;
import stillturning.desktop.viewmodel.record.EntryGroup;

/** The blanks of one group, each with its field. */
final class EntryFields {

    private final Runnable left;
    private final Runnable typed;
    private final VBox view = new VBox();

    /**
     * @param left what happens when a field is left
     * @param typed what happens when something is typed
     */
    EntryFields(Runnable left, Runnable typed) {
        this.left = left;
        this.typed = typed;
        view.getStyleClass().add("record-fields");
    }

    Region view() {
        return view;
    }

    void show(@Nullable EntryGroup group) {
        List<Entry> entries = group == null ? List.of() : group.entries();
        view.getChildren().setAll(entries.stream().map(this::line).toList());
    }

    private VBox line(Entry entry) {
        TextField field = new TextField();
        Controls.field(field, "entry-" + entry.path(), entry.example(), entry.says());
        field.textProperty().bindBidirectional(entry.written());
        field.textProperty().addListener((of, before, now) -> typed.run());
        Controls.onLeave(field, left);
        Label says = Labels.wrapped(entry.says());
        says.setLabelFor(field);
        Label verdict = Labels.wrapped(entry.verdict(), "text-bold");
        Showing.whileTrue(verdict, entry.verdict().isNotEmpty());
        Label mistake = Labels.wrapped(entry.mistake(), "danger", "text");
        Showing.whileTrue(mistake, entry.mistake().isNotEmpty());
        return new VBox(says, field, Labels.remark(entry.predicted()), verdict, mistake);
    }
}
