package stillturning.cli.study;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import stillturning.dossier.NamedFailures;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.model.Study;
import stillturning.yaml.Problem;

/** Makes sure that each of a study's cases means something. */
final class CaseNames {

    private CaseNames() {}

    /** What was read, with a mistake for every case that no candidate has. */
    static ReadStudy checked(ReadStudy read, StudyReader reader) {
        return read.study().map(study -> read.with(mistakes(study, reader))).orElse(read);
    }

    private static List<Problem> mistakes(Study study, StudyReader reader) {
        List<NamedFailures> each =
                study.candidates().stream().map(c -> new NamedFailures(List.of(c))).toList();
        List<Problem> mistakes = new ArrayList<>();
        for (int i = 0; i < study.goals().cases().size(); i++) {
            String said = study.goals().cases().get(i);
            if (each.stream().allMatch(names -> names.all(said).isEmpty())) {
                mistakes.add(
                        reader.mistake(
                                "cases[" + i + "]",
                                "in no candidate anything fails by the name \"" + said + "\"",
                                remedy(new NamedFailures(study.candidates()).nearest(said))));
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
