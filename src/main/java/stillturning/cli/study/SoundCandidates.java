package stillturning.cli.study;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.cli.terminal.Refusal;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.value.Variation;
import stillturning.yaml.Problem;

/**
 * A study without the candidates whose files have mistakes.
 *
 * @param found the study with the candidates that have none
 * @param mistaken the others
 */
public record SoundCandidates(FoundStudy found, List<Mistaken> mistaken) {

    /** A candidate whose file has mistakes, and the first of them. */
    public record Mistaken(String file, String reason) {}

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
        Map<Path, List<Problem>> byFile = new LinkedHashMap<>();
        read.problems()
                .forEach(p -> byFile.computeIfAbsent(p.file(), f -> new ArrayList<>()).add(p));
        List<Path> candidates = reader.candidateFiles();
        boolean others = byFile.size() < candidates.size();
        if (byFile.isEmpty() || !others || !candidates.containsAll(byFile.keySet())) {
            return new SoundCandidates(FoundStudy.sound(reader), List.of());
        }
        StudyReader rest = reader.without(byFile.keySet());
        ReadStudy again = rest.study(Variation.NONE);
        return again.study()
                .map(study -> new SoundCandidates(new FoundStudy(study, again, rest), all(byFile)))
                .orElseGet(() -> new SoundCandidates(FoundStudy.sound(reader), List.of()));
    }

    private static List<Mistaken> all(Map<Path, List<Problem>> byFile) {
        return byFile.entrySet().stream()
                .map(
                        e ->
                                new Mistaken(
                                        String.valueOf(e.getKey().getFileName()),
                                        reason(e.getValue())))
                .toList();
    }

    private static String reason(List<Problem> problems) {
        return ProblemText.counted(problems)
                + (problems.size() == 1 ? ": " : ", the first: ")
                + problems.get(0);
    }
}
