package stillturning.desktop.viewmodel.draw;

import java.util.List;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import stillturning.files.finding.FileFinding;
import stillturning.model.Candidate;

/** What is found in the open candidate and in the study, mistakes first. */
public final class Findings {

    private final ObservableList<FileFinding> all = FXCollections.observableArrayList();
    private final ObservableList<FileFinding> shown = FXCollections.unmodifiableObservableList(all);
    private FindingNames names = new FindingNames(Optional.empty());

    /**
     * @param candidate that they are about, if it can be read
     */
    void show(List<FileFinding> found, Optional<Candidate> candidate) {
        names = new FindingNames(candidate);
        all.setAll(found);
    }

    /** All of them. */
    public ObservableList<FileFinding> all() {
        return shown;
    }

    /** What they call the parts of the open candidate. */
    public FindingNames names() {
        return names;
    }
}
