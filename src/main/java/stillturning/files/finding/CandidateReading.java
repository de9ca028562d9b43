package stillturning.files.finding;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.model.HalfDrawn;

/**
 * A candidate's file as far as it can be read.
 *
 * @param drawing what can be shown of it; absent only if the study's own file cannot be read
 * @param findings what is to be said about it, in the order of the file
 * @param places where each part is asked for
 */
public record CandidateReading(
        Optional<HalfDrawn> drawing, List<FileFinding> findings, Map<String, PartPlace> places) {
    public CandidateReading {
        findings = List.copyOf(findings);
        places = Map.copyOf(places);
    }

    /** Whether it can be computed, as far as its own file goes. */
    public boolean isSound() {
        return findings.stream().noneMatch(FileFinding::mistake);
    }
}
