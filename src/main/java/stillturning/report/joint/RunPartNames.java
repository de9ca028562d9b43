package stillturning.report.joint;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Parts named so that what hangs in one run is read as one thing. */
final class RunPartNames {

    /** What a line of a sketch adds to the name of what it feeds. */
    private static final Pattern OF_A_RUN =
            Pattern.compile("(.+)-((?:wire|breaker|fuse|return)(?:-\\d+)?)");

    private static final String ITSELF = "itself";

    private RunPartNames() {}

    /** {@code "injectors-a (itself, breaker, wire), pump-1-return"}, each once. */
    static String listed(Collection<String> parts) {
        return listed(parts, part -> part);
    }

    /** The same with what each is called. */
    static String listed(Collection<String> parts, UnaryOperator<String> called) {
        Map<String, List<String>> runs = new LinkedHashMap<>();
        for (String part : parts) {
            Matcher piece = OF_A_RUN.matcher(part);
            boolean ofARun = piece.matches();
            List<String> run =
                    runs.computeIfAbsent(ofARun ? piece.group(1) : part, r -> new ArrayList<>());
            String name = ofARun ? piece.group(2) : ITSELF;
            if (!run.contains(name)) {
                run.add(name);
            }
        }
        List<String> words = new ArrayList<>();
        runs.forEach((run, pieces) -> words.add(inWords(run, pieces, called)));
        return String.join(", ", words);
    }

    private static String inWords(String run, List<String> pieces, UnaryOperator<String> called) {
        if (pieces.size() == 1) {
            return called.apply(pieces.get(0).equals(ITSELF) ? run : run + "-" + pieces.get(0));
        }
        return called.apply(run) + " (" + String.join(", ", pieces) + ")";
    }
}
