package stillturning.cli.decide;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import stillturning.assess.Assessment;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.StudyAssessment;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.WrittenChanges;
import stillturning.files.StudyReader;
import stillturning.report.change.ChangeJson;
import stillturning.report.change.ChangeSheet;
import stillturning.report.change.TextChange;
import stillturning.report.terminal.BlockText;
import stillturning.yaml.YamlDocument;

/**
 * An earlier state of a study, to be held against the present one.
 *
 * @param written what is written otherwise now
 */
record Since(List<TextChange> written, Assessment before) {

    /**
     * Reads and assesses the earlier state.
     *
     * @param old folder of the study as it was, or a copy of one of its files
     * @throws Refusal if it is neither, or has a problem
     */
    static Since of(FoundStudy now, String old, CommandContext context) {
        Path path = context.path(old);
        FoundStudy then =
                Files.isRegularFile(path)
                        ? FoundStudy.sound(withFile(now.reader(), path, context))
                        : FoundStudy.of(old, context);
        return new Since(
                WrittenChanges.between(then.reader(), now.reader()),
                StudyAssessment.of(then, context));
    }

    private static StudyReader withFile(StudyReader now, Path copy, CommandContext context) {
        Path name = copy.getFileName();
        Path file =
                now.documents().stream()
                        .map(YamlDocument::file)
                        .filter(f -> f.getFileName().equals(name))
                        .findFirst()
                        .orElseThrow(
                                () ->
                                        new Refusal(
                                                "--since "
                                                        + context.shown(copy)
                                                        + ": the study has no file "
                                                        + name
                                                        + "; give a copy under the name that it"
                                                        + " had, or the folder of the earlier"
                                                        + " state"));
        try {
            return now.with(YamlDocument.of(file, YamlDocument.read(copy).text()));
        } catch (IOException e) {
            throw new Refusal("--since " + context.shown(copy) + " cannot be read: " + e);
        }
    }

    String json(Assessment after) {
        return ChangeJson.CHANGES.text(new ChangeJson.ChangedStudy(written, before, after));
    }

    void print(Assessment after, Output out) {
        out.section("What changed");
        out.lines(BlockText.lines(ChangeSheet.of(written, before, after), out.paint()));
    }
}
