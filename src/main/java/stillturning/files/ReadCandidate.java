package stillturning.files;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.files.candidate.CandidateReader;
import stillturning.files.candidate.ChancesReader;
import stillturning.files.candidate.CheckedStudy;
import stillturning.files.candidate.Expanded;
import stillturning.files.entry.CandidateEntry;
import stillturning.files.finding.FileRemark;
import stillturning.files.finding.PartPlace;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.value.Assumption;
import stillturning.files.value.Range;
import stillturning.files.value.ValueLog;
import stillturning.files.value.Variation;
import stillturning.model.Candidate;
import stillturning.model.Chances.Odds;
import stillturning.model.Installation.FittedParts;
import stillturning.yaml.BindResult;
import stillturning.yaml.Problem;

/**
 * Everything that came of reading one candidate's file.
 *
 * @param supposedClasses class taken for protectors that name none, by kind
 * @param report to which nothing is added any more
 */
record ReadCandidate(
        Optional<Candidate> candidate,
        List<Expanded> expanded,
        FittedParts fit,
        Odds odds,
        Map<String, PartPlace> places,
        Map<String, String> supposedClasses,
        ProblemCollector report,
        ReadNotes told) {

    /** What is to be said about a file, and what its values are. */
    record ReadNotes(
            List<Problem> problems,
            List<FileRemark> remarks,
            List<Assumption> assumptions,
            List<Range> ranges) {

        static ReadNotes by(ProblemCollector report, ValueLog ledger) {
            return new ReadNotes(
                    List.copyOf(report.problems()),
                    List.copyOf(report.remarks()),
                    List.copyOf(ledger.assumptions()),
                    List.copyOf(ledger.ranges()));
        }
    }

    /** Reads what is bound, which must be there. */
    static ReadCandidate of(
            StudyFolder.File file,
            BindResult<CandidateEntry> bound,
            CheckedStudy frame,
            ChancesReader.StatedChances said,
            Variation variation) {
        ValueLog ledger = new ValueLog(file.name(), variation);
        ProblemCollector report = new ProblemCollector(bound.places());
        CandidateEntry entry = bound.value().orElseThrow();
        CandidateReader reader = new CandidateReader(file.id(), entry, frame, report, ledger);
        Optional<Candidate> candidate = reader.read(said);
        return new ReadCandidate(
                candidate,
                reader.expanded(),
                reader.fit(),
                reader.odds(),
                reader.places(),
                reader.supposedClasses(),
                report,
                ReadNotes.by(report, ledger));
    }
}
