package stillturning.dossier.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.files.record.FilledForm;
import stillturning.files.record.FormReader;
import stillturning.report.record.AsBuilt;
import stillturning.report.record.Fit;
import stillturning.yaml.Problem;
import stillturning.yaml.YamlDocument;

/**
 * What somebody entered, in a file or on a screen: one way of reading it for both.
 *
 * @param form to be used only if there is no problem
 * @param problems by place
 */
public record Entered(AskedFor asked, FilledForm form, List<Problem> problems) {

    public Entered {
        problems = List.copyOf(problems);
    }

    /** A form as it was filled in. */
    public static Entered of(AskedFor asked, YamlDocument document) {
        FormReader.ReadForm read =
                FormReader.read(
                        document,
                        asked.candidate().id(),
                        asked.read().fingerprint(),
                        asked.blanks());
        List<Problem> problems = new ArrayList<>(read.problems());
        problems.addAll(Held.problems(asked, read.form(), document));
        problems.sort(null);
        return new Entered(asked, read.form(), problems);
    }

    /**
     * It held against what is predicted.
     *
     * @param date of the measurements; empty if nobody said
     */
    public AsBuilt held(String date, Optional<Fit> fit) {
        return Held.of(asked, date, Optional.of(form), fit);
    }
}
