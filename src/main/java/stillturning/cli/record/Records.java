package stillturning.cli.record;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.ProblemText;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.record.Recorded;
import stillturning.dossier.record.ValueOffers;
import stillturning.files.StudyReader;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.record.MeasuredEntry;
import stillturning.files.record.MeasuredFile;
import stillturning.files.value.Variation;
import stillturning.report.record.ValueOffer;
import stillturning.yaml.Problem;
import stillturning.yaml.YamlDocument;

/** The record of a candidate and the files of its study, to be written. */
final class Records {

    private final FoundStudy found;
    private final MeasuredFile file;
    private final CommandContext context;

    Records(FoundStudy found, String candidate, CommandContext context) {
        this.found = found;
        this.context = context;
        Path folder = Recorded.folder(found.reader()).orElseGet(() -> context.path(""));
        try {
            this.file = MeasuredFile.of(folder, candidate);
        } catch (IOException e) {
            throw new Refusal("the record of " + candidate + " cannot be read: " + e);
        }
    }

    /** Refuses a record that somebody has spoilt. */
    void check() {
        if (!file.problems().isEmpty()) {
            throw new Refusal(
                    ProblemText.counted(file.problems())
                            + " in the record; nothing was added\n"
                            + ProblemText.of(file.problems()));
        }
    }

    /** Adds an entry; what was done, in words. */
    String add(MeasuredEntry entry) {
        String shown = context.shown(file.file());
        if (entry.date().isEmpty()) {
            return "Nothing was added to the record, since nobody says on which day this was"
                    + " measured: say it in the form, or with --date.";
        }
        if (entry.items().stream().allMatch(item -> item.measured().isEmpty())) {
            return "Nothing was measured, so nothing was added to the record.";
        }
        try {
            return file.add(entry)
                    ? "Added to the record: " + shown
                    : "The record has just this entry already; nothing was added: " + shown;
        } catch (IOException e) {
            throw new Refusal(shown + " cannot be written: " + e.getMessage());
        }
    }

    /** Writes measured values into the study's files; what was done, in words. */
    List<String> save(List<ValueOffer> offers) {
        List<YamlDocument> changed;
        try {
            changed = ValueOffers.taken(found.reader(), offers);
        } catch (ChangeRefused refused) {
            throw new Refusal(refused.why());
        }
        StudyReader then = found.reader();
        for (YamlDocument document : changed) {
            then = then.with(document);
        }
        List<Problem> problems = then.study(Variation.NONE).problems();
        if (!problems.isEmpty()) {
            throw new Refusal(
                    "with the measured values the study would have "
                            + ProblemText.counted(problems)
                            + "; no value was written\n"
                            + ProblemText.of(problems));
        }
        List<String> done = new ArrayList<>();
        for (YamlDocument document : changed) {
            String shown = context.shown(document.file());
            try {
                document.save();
            } catch (IOException e) {
                throw new Refusal(shown + " cannot be written: " + e.getMessage());
            }
            done.add("Written: " + shown + "; as it was: " + shown + "~");
        }
        return done;
    }
}
