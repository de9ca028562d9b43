package stillturning.desktop.viewmodel.draw;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.edits.StudyEdits;
import stillturning.desktop.viewmodel.Desk;
import stillturning.files.edit.ChangeRefused;
import stillturning.yaml.YamlDocument;

/** Changes of what all candidates share. */
final class StudyChanges {

    private final Desk desk;

    StudyChanges(Desk desk) {
        this.desk = desk;
    }

    /** Edits of the study and of every candidate. */
    StudyEdits edits() throws ChangeRefused {
        return new StudyEdits(study(), documents(desk.candidates()));
    }

    private YamlDocument study() throws ChangeRefused {
        return desk.draft()
                .document(Desk.STUDY_FILE)
                .orElseThrow(() -> new ChangeRefused("there is no " + Desk.STUDY_FILE));
    }

    private List<YamlDocument> documents(List<String> candidates) {
        return candidates.stream()
                .flatMap(c -> desk.draft().document(Desk.file(c)).stream())
                .toList();
    }

    /** A load that the open candidate has yet to feed, and that the others leave out. */
    Change newLoad(String name, String zone) throws ChangeRefused {
        Map<String, String> settings = new LinkedHashMap<>();
        settings.put("zone", zone);
        settings.put("draws", "1 A (guess)");
        settings.put("minimum", "9 V (guess)");
        List<String> others =
                desk.candidates().stream().filter(c -> !c.equals(desk.candidate().get())).toList();
        Change change = new StudyEdits(study(), documents(others)).addLoad(name, settings);
        return new Change(
                change.name(),
                change.steps(),
                change.parts(),
                List.of(
                        "What it draws and its minimum are guesses: put yours in their place, and"
                                + " join it to a feed. The other candidates leave it out."));
    }
}
