package stillturning.cli.study;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stillturning.yaml.Problem;

/** Problems of a study as a person reads them. */
public final class ProblemText {

    private ProblemText() {}

    /** {@code 1 problem}, {@code 3 problems}. */
    public static String counted(List<Problem> problems) {
        return problems.size() + (problems.size() == 1 ? " problem" : " problems");
    }

    /** Each problem with the line that it is about and a caret under the place. */
    public static String of(List<Problem> problems) {
        Map<Path, String> texts = new HashMap<>();
        return problems.stream()
                .map(p -> of(p, texts.computeIfAbsent(p.file(), ProblemText::text)))
                .collect(Collectors.joining("\n"));
    }

    private static String of(Problem problem, String text) {
        return text.isBlank() ? problem.toString() : problem.shownIn(text);
    }

    // what cannot be read has a problem that says so, and no line to show
    private static String text(Path file) {
        try {
            return Files.isRegularFile(file) ? Files.readString(file) : "";
        } catch (IOException e) {
            return "";
        }
    }
}
