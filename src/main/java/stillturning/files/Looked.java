package stillturning.files;

import java.util.Map;
import java.util.Optional;
import stillturning.files.CandidateReading.Told;
import stillturning.files.StudyFolder.File;
import stillturning.files.entry.CandidateEntry;
import stillturning.model.Candidate;
import stillturning.yaml.Bound;

/**
 * A candidate's file, and what was made of it.
 *
 * @param reading absent if the file's form has a mistake, or if the study's own cannot be read
 */
record Looked(File file, Bound<CandidateEntry> bound, Optional<CandidateReading> reading) {

    Optional<Candidate> candidate() {
        return reading.flatMap(CandidateReading::candidate);
    }

    Map<String, PartPlace> places() {
        return reading.map(CandidateReading::places).orElse(Map.of());
    }

    Optional<Told> told() {
        return reading.map(CandidateReading::told);
    }
}
