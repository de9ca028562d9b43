package stillturning.dossier;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.report.answer.FirstAnswer.LeftOut;
import stillturning.yaml.Problem;

/** Files with mistakes, as candidates that an answer says nothing about. */
public final class MistakenFiles {

    private MistakenFiles() {}

    /** One for each file that has a problem, with the first of them. */
    public static List<LeftOut> of(List<Problem> problems) {
        Map<Path, List<Problem>> byFile = new LinkedHashMap<>();
        problems.forEach(p -> byFile.computeIfAbsent(p.file(), f -> new ArrayList<>()).add(p));
        return byFile.entrySet().stream()
                .map(
                        e ->
                                new LeftOut(
                                        String.valueOf(e.getKey().getFileName()),
                                        reason(e.getValue())))
                .toList();
    }

    private static String reason(List<Problem> problems) {
        return (problems.size() == 1 ? "1 problem: " : problems.size() + " problems, the first: ")
                + problems.get(0);
    }
}
