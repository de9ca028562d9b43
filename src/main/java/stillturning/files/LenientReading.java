package stillturning.files;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.files.finding.CandidateReading;
import stillturning.files.finding.FileFinding;
import stillturning.model.Study;

/**
 * A study that may still have mistakes, for somebody who is at work on it.
 *
 * @param read the study, or everything that is wrong with it
 * @param sound the study with the candidates that have no mistake; absent if there is none, or if
 *     the study's own file has one. Without a baseline if that is among the broken
 * @param broken candidates that are left out of it
 * @param candidates every candidate as far as it can be read, by file name without ending
 * @param findings what is to be said about the study's own file and the folder
 */
public record LenientReading(
        ReadStudy read,
        Optional<Study> sound,
        List<String> broken,
        Map<String, CandidateReading> candidates,
        List<FileFinding> findings) {
    public LenientReading {
        broken = List.copyOf(broken);
        candidates = Collections.unmodifiableMap(new LinkedHashMap<>(candidates));
        findings = List.copyOf(findings);
    }
}
