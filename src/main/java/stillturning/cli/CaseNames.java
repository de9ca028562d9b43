package stillturning.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stillturning.failure.Failure;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.yaml.Problem;

/**
 * What the study's cases mean: in each candidate every failure that the words fit best there, so
 * that nothing is left out where they fit several.
 */
final class CaseNames {

    private CaseNames() {}

    /** The failures that each case means in a candidate, in the study's order; none if empty. */
    static Map<String, List<Failure>> in(Candidate candidate, Study study) {
        FailureNames names = new FailureNames(List.of(candidate));
        Map<String, List<Failure>> meant = new LinkedHashMap<>();
        study.goals().cases().forEach(said -> meant.put(said, names.all(said)));
        return meant;
    }

    /** What was read, with a mistake for every case that no candidate has. */
    static ReadStudy checked(ReadStudy read, StudyReader reader) {
        return read.study().map(study -> read.with(mistakes(study, reader))).orElse(read);
    }

    private static List<Problem> mistakes(Study study, StudyReader reader) {
        FailureNames names = new FailureNames(study.candidates());
        List<Problem> mistakes = new ArrayList<>();
        for (int i = 0; i < study.goals().cases().size(); i++) {
            String said = study.goals().cases().get(i);
            boolean nowhere =
                    study.candidates().stream()
                            .allMatch(c -> new FailureNames(List.of(c)).all(said).isEmpty());
            if (nowhere) {
                mistakes.add(
                        reader.mistake(
                                "cases[" + i + "]",
                                "in no candidate anything fails by the name \"" + said + "\"",
                                remedy(names.nearest(said))));
            }
        }
        return mistakes;
    }

    private static String remedy(List<String> nearest) {
        String start = "name a part and how it fails, \"charging lost\" or \"master off\"";
        return nearest.isEmpty()
                ? start
                : start + "; nearest: " + nearest.stream().collect(Collectors.joining("; "));
    }
}
