package stillturning.cli.suggest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import stillturning.assess.suggest.Suggestion;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.suggest.Suggested;
import stillturning.files.edit.CandidateEdits;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.move.Drawn;
import stillturning.report.suggest.SuggestionWords;
import stillturning.yaml.YamlDocument;

/** Writes a suggestion beside the other candidates of its study. */
final class NewCandidateFile {

    private NewCandidateFile() {}

    /**
     * Writes it under a name that no file has.
     *
     * @return the file
     */
    static Path written(Suggested suggested, int index) {
        Drawn drawn = suggested.drawings().get(index);
        Suggestion suggestion = suggested.suggestions().found().get(index);
        Path like = drawn.text().file();
        String id = drawn.candidate().id() + "-changed";
        Path file = like.resolveSibling(id + ".yaml");
        for (int count = 2; Files.exists(file); count++) {
            file = like.resolveSibling(id + "-" + count + ".yaml");
        }
        try {
            YamlDocument.of(file, text(drawn, suggestion)).save();
            return file;
        } catch (IOException e) {
            throw new Refusal(file.getFileName() + " cannot be written: " + e.getMessage());
        } catch (ChangeRefused e) {
            throw new Refusal(e.why());
        }
    }

    /** The drawing with a title and a reason of its own. */
    private static String text(Drawn drawn, Suggestion suggestion) throws ChangeRefused {
        String title = drawn.candidate().title();
        YamlDocument titled = edits(drawn, drawn.text()).title(title + ", changed").after();
        return edits(drawn, titled)
                .setAt(
                        "",
                        "about",
                        "Made from \"" + title + "\": " + SuggestionWords.moves(suggestion) + ".")
                .after()
                .text();
    }

    private static CandidateEdits edits(Drawn drawn, YamlDocument now) {
        return new CandidateEdits(now, drawn.studyText());
    }
}
