package stillturning.cli.study;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.MistakenFiles;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.value.Variation;
import stillturning.report.answer.FirstAnswer.LeftOut;
import stillturning.yaml.Problem;

/**
 * A study without the candidates whose files have mistakes.
 *
 * @param found the study with the candidates that have none
 * @param mistaken the others
 */
public record SoundCandidates(FoundStudy found, List<LeftOut> mistaken) {

    public SoundCandidates {
        mistaken = List.copyOf(mistaken);
    }

    /**
     * The candidates of this reader's study that have no mistake.
     *
     * @throws Refusal with all problems if the study's own file has one, or every candidate
     */
    static SoundCandidates of(StudyReader reader) {
        ReadStudy read = FoundStudy.checked(reader);
        Set<Path> mistaken =
                read.problems().stream()
                        .map(Problem::file)
                        .collect(Collectors.toCollection(LinkedHashSet::new));
        List<Path> candidates = reader.candidateFiles();
        boolean others = mistaken.size() < candidates.size();
        if (mistaken.isEmpty() || !others || !candidates.containsAll(mistaken)) {
            return new SoundCandidates(FoundStudy.sound(reader), List.of());
        }
        StudyReader rest = reader.without(mistaken);
        ReadStudy again = rest.study(Variation.NONE);
        return again.study()
                .map(
                        study ->
                                new SoundCandidates(
                                        new FoundStudy(study, again, rest),
                                        MistakenFiles.of(read.problems())))
                .orElseGet(() -> new SoundCandidates(FoundStudy.sound(reader), List.of()));
    }
}
