package stillturning.files;

import java.util.Map;
import java.util.Optional;
import stillturning.files.StudyFolder.File;
import stillturning.files.entry.CandidateEntry;
import stillturning.files.finding.PartPlace;
import stillturning.files.finding.ProblemCollector;
import stillturning.model.Candidate;
import stillturning.yaml.BindResult;

/**
 * A candidate's file, what was made of it, and what was said about it.
 *
 * @param candidate present exactly if the file has no mistake and the study's own can be read
 * @param report what was said beyond the form of the file
 * @param places where each part is asked for, as far as that was looked at
 */
record ReadAttempt(
        File file,
        BindResult<CandidateEntry> bound,
        Optional<Candidate> candidate,
        ProblemCollector report,
        Map<String, PartPlace> places) {

    /**
     * What became of a file.
     *
     * @param begun what was read; empty where it could not be begun
     */
    static ReadAttempt of(
            File file, BindResult<CandidateEntry> bound, Optional<ReadCandidate> begun) {
        return new ReadAttempt(
                file,
                bound,
                begun.flatMap(ReadCandidate::candidate),
                begun.map(ReadCandidate::report)
                        .orElseGet(() -> new ProblemCollector(bound.places())),
                begun.map(ReadCandidate::places).orElse(Map.of()));
    }
}
