package stillturning.desktop.viewmodel.explain;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.DraftStep;
import stillturning.desktop.viewmodel.Desk;
import stillturning.yaml.YamlDocument;

/** The builder's rationale as it is typed: one text, a blank line between two paragraphs. */
public final class Rationale {

    /** What undo calls a change of it. */
    public static final String CHANGE = "Change the rationale";

    private final Desk desk;
    private final StringProperty text = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper count = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper error = new ReadOnlyStringWrapper("");

    /** What the file said when text and file last agreed. */
    private Paragraphs agreed;

    Rationale(Desk desk) {
        this.desk = desk;
        agreed = written();
        text.set(agreed.text());
        typed(text.get());
        text.addListener((of, before, now) -> typed(now));
        desk.texts().addListener((of, before, now) -> look());
    }

    /** The text; what is typed reaches the study with {@link #commit()}. */
    public StringProperty text() {
        return text;
    }

    /** How long it is, in words. */
    public ReadOnlyStringProperty count() {
        return count.getReadOnlyProperty();
    }

    /** Why the text cannot be written; empty if it can. */
    public ReadOnlyStringProperty error() {
        return error.getReadOnlyProperty();
    }

    /**
     * Brings what was typed into the study, as one change; does nothing if there is nothing new.
     *
     * @return whether the study changed
     */
    public boolean commit() {
        Paragraphs now = Paragraphs.typed(text.get());
        if (now.equals(agreed) || !now.unwritable().isEmpty()) {
            return false;
        }
        Optional<YamlDocument> study = file();
        if (study.isEmpty()) {
            error.set("There is no study.yaml to keep it in; begin a study first.");
            return false;
        }
        Paragraphs before = agreed;
        // listeners of the change ask at once whether text and file agree
        agreed = now;
        DraftStep step = new DraftStep.Edit(Desk.STUDY_FILE, now.edit(study.get()));
        Optional<String> refusal = desk.attempt(new Change(CHANGE, List.of(step)));
        if (refusal.isPresent()) {
            agreed = before;
        }
        error.set(refusal.orElse(""));
        return refusal.isEmpty();
    }

    /** Takes what the study says now, unless more was typed. */
    private void look() {
        Paragraphs there = written();
        boolean open = !Paragraphs.typed(text.get()).equals(agreed);
        if (!there.equals(agreed) && !open) {
            agreed = there;
            text.set(there.text());
        }
    }

    private Paragraphs written() {
        return file().map(Paragraphs::of).orElse(new Paragraphs(List.of()));
    }

    private Optional<YamlDocument> file() {
        return desk.draft().document(Desk.STUDY_FILE);
    }

    private void typed(String now) {
        Paragraphs all = Paragraphs.typed(now);
        count.set(all.counted());
        error.set(all.unwritable().orElse(""));
    }
}
