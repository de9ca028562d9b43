package stillturning.cli.suggest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.suggest.Suggested;
import stillturning.dossier.suggest.SuggestedFile;
import stillturning.files.edit.ChangeRefused;
import stillturning.yaml.YamlDocument;

/** Writes a suggestion beside the other candidates of its study. */
final class NewCandidateFile {

    private static final String ENDING = ".yaml";

    private NewCandidateFile() {}

    /**
     * Writes it under a name that no file has.
     *
     * @return the file
     */
    static Path written(Suggested suggested, int index) {
        SuggestedFile made = SuggestedFile.of(suggested, index);
        Path like = made.drawn().text().file();
        String name = made.name(id -> Files.exists(like.resolveSibling(id + ENDING)));
        Path file = like.resolveSibling(name + ENDING);
        try {
            YamlDocument.of(file, made.text()).save();
            return file;
        } catch (IOException e) {
            throw new Refusal(file.getFileName() + " cannot be written: " + e.getMessage());
        } catch (ChangeRefused e) {
            throw new Refusal(e.why());
        }
    }
}
