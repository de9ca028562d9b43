package stillturning.desktop.viewmodel.draw;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import stillturning.desktop.draft.Change;
import stillturning.desktop.viewmodel.Desk;
import stillturning.files.edit.CandidateEdits;
import stillturning.files.edit.ChangeRefused;

/**
 * A load that was to be deleted from a candidate. It is the study's: the candidate can do without
 * it, or it goes from the study and from every candidate.
 */
public final class LoadToDelete {

    private final Consumer<ChangeWork> maker;
    private final Edits edits;
    private final Desk desk;
    private final ReadOnlyObjectWrapper<Optional<String>> asked =
            new ReadOnlyObjectWrapper<>(Optional.empty());

    /** Edits of the open candidate. */
    interface Edits {
        CandidateEdits now() throws ChangeRefused;
    }

    /**
     * @param maker makes a change
     */
    LoadToDelete(Consumer<ChangeWork> maker, Edits edits, Desk desk) {
        this.maker = maker;
        this.edits = edits;
        this.desk = desk;
    }

    /** The load; empty where none was to be deleted last. */
    public ReadOnlyObjectProperty<Optional<String>> asked() {
        return asked.getReadOnlyProperty();
    }

    void ask(Optional<String> load) {
        asked.set(load);
    }

    /** Leaves it out of the open candidate. */
    public void leaveOut() {
        asked.get().ifPresent(load -> maker.accept(() -> Change.of(edits.now().leaveOut(load))));
    }

    /** Deletes it from the study, and from every candidate. */
    public void deleteEverywhere() {
        asked.get()
                .ifPresent(
                        load ->
                                maker.accept(
                                        () -> new StudyChanges(desk).edits().deleteLoad(load)));
    }
}
