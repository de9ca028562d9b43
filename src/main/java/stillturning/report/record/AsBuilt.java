package stillturning.report.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.reliability.asbuilt.Compared.Agreement;

/**
 * A candidate as it was built.
 *
 * @param date of the measurements; empty if nobody said
 * @param lines everything that was asked for, in the form's order
 * @param fit what a log says, if there was one
 * @param offers values that could be taken into the study
 * @param causes what would explain readings that do not keep to their prediction
 * @param remarks what else is to be said
 */
public record AsBuilt(
        Study study,
        Candidate candidate,
        String date,
        List<FormLine> lines,
        Optional<Fit> fit,
        List<ValueOffer> offers,
        Explained causes,
        List<String> remarks) {

    public AsBuilt {
        lines = List.copyOf(lines);
        offers = List.copyOf(offers);
        remarks = List.copyOf(remarks);
    }

    /** The same with more to be said. */
    public AsBuilt saying(List<String> more) {
        List<String> all = new ArrayList<>(remarks);
        all.addAll(more);
        return new AsBuilt(study, candidate, date, lines, fit, offers, causes, all);
    }

    /** The same measured on a day. */
    public AsBuilt on(String day) {
        return new AsBuilt(study, candidate, day, lines, fit, offers, causes, remarks);
    }

    /** The same with what would explain it. */
    public AsBuilt explained(Explained by) {
        return new AsBuilt(study, candidate, date, lines, fit, offers, by, remarks);
    }

    /** Those of a verdict. */
    public List<FormLine> with(Agreement verdict) {
        return lines.stream().filter(line -> line.compared().verdict() == verdict).toList();
    }
}
