package stillturning.desktop.viewmodel.draw;

import java.util.Optional;
import java.util.stream.Collectors;
import stillturning.files.finding.FileFinding;
import stillturning.model.Candidate;
import stillturning.report.PrintedNames;

/** Findings as a person reads them: labels where parts are named. */
public final class FindingNames {

    private final Optional<PrintedNames> names;

    /**
     * @param candidate that they are about, if it can be read
     */
    FindingNames(Optional<Candidate> candidate) {
        this.names = candidate.map(PrintedNames::new);
    }

    /** The parts that one is about, in a row; empty if it is about none. */
    public String about(FileFinding finding) {
        return finding.parts().stream()
                .map(part -> names.map(n -> n.cell(part)).orElse(part))
                .collect(Collectors.joining(", "));
    }

    /**
     * What it says; a mistake keeps the names as they are written, since there one has to write.
     */
    public String words(FileFinding finding) {
        return finding.mistake()
                ? finding.words()
                : names.map(n -> n.in(finding.words())).orElse(finding.words());
    }
}
