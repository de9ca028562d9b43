package stillturning.desktop.draft.edits;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.Draft;
import stillturning.desktop.draft.DraftState;
import stillturning.files.ReadStudy;
import stillturning.files.edit.CandidateEdits;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.edit.FileChange;
import stillturning.files.value.Variation;
import stillturning.model.Candidate;
import stillturning.parts.Part;
import stillturning.yaml.YamlDocument;

/** A study under test, and what is asked of it again and again. */
record Bench(Draft draft) {

    static Bench open(Path folder) throws IOException {
        return new Bench(Draft.open(folder));
    }

    CandidateEdits shaping(String candidate) {
        return new CandidateEdits(
                draft.document(candidate + ".yaml").orElseThrow(),
                draft.document("study.yaml").orElseThrow());
    }

    StudyEdits study() {
        List<YamlDocument> candidates = new ArrayList<>();
        for (String file : draft.state().texts().keySet()) {
            if (!file.equals("study.yaml")) {
                candidates.add(draft.document(file).orElseThrow());
            }
        }
        return new StudyEdits(draft.document("study.yaml").orElseThrow(), candidates);
    }

    DraftState make(FileChange change) throws ChangeRefused {
        return make(Change.of(change));
    }

    DraftState make(Change change) throws ChangeRefused {
        return draft.make(change);
    }

    ReadStudy read() {
        return draft.reader().study(Variation.NONE);
    }

    List<String> candidates() {
        return draft.state().texts().keySet().stream()
                .filter(f -> !f.equals("study.yaml"))
                .map(f -> f.replace(".yaml", ""))
                .toList();
    }

    Candidate candidate(String id) {
        ReadStudy read = read();
        return read
                .study()
                .orElseThrow(() -> new AssertionError(String.valueOf(read.problems())))
                .candidates()
                .stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    List<String> parts(String candidate) {
        return candidate(candidate).parts().stream().map(Part::id).toList();
    }

    String text(String candidate) {
        return requireNonNull(draft.state().texts().get(candidate + ".yaml"));
    }

    List<String> problems() {
        return read().problems().stream().map(p -> p.path() + ": " + p.wrong()).toList();
    }
}
