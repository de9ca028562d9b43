package stillturning.dossier;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.assess.Assessment;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Standing;
import stillturning.files.ReadStudy;
import stillturning.files.value.Assumption;
import stillturning.report.pair.ValueMarks;
import stillturning.yaml.notation.Origin;

/** Looks at the marks of the values of candidates' own files. */
public final class MarkedValues {

    private static final String PARTS = "parts.";

    private MarkedValues() {}

    /** Of the first in a ranking and the next; empty where there is none. */
    public static Optional<ValueMarks> ofFirstTwo(Assessment assessment, ReadStudy read) {
        List<Standing> order = assessment.ranking().map(RankingResult::standings).orElse(List.of());
        return order.size() < 2
                ? Optional.empty()
                : Optional.of(between(read, order.get(0).name(), order.get(1).name()));
    }

    /** Of two candidates, by their ids. */
    public static ValueMarks between(ReadStudy read, String one, String other) {
        Map<String, Assumption> here = own(read, one);
        Map<String, Assumption> there = own(read, other);
        return new ValueMarks(
                guesses(here), guesses(there), onlyGuessed(here, there), onlyGuessed(there, here));
    }

    private static Map<String, Assumption> own(ReadStudy read, String candidate) {
        Map<String, Assumption> own = new LinkedHashMap<>();
        read.assumptions().stream()
                .filter(a -> a.file().equals(candidate + ".yaml"))
                .forEach(a -> own.put(a.path(), a));
        return own;
    }

    private static int guesses(Map<String, Assumption> own) {
        return (int) own.values().stream().filter(a -> a.origin() == Origin.GUESSED).count();
    }

    private static List<String> onlyGuessed(
            Map<String, Assumption> here, Map<String, Assumption> there) {
        List<String> only = new ArrayList<>();
        here.forEach(
                (path, value) ->
                        Optional.ofNullable(there.get(path))
                                .filter(other -> value.isGuess() && !other.isGuess())
                                .ifPresent(other -> only.add(words(path))));
        return List.copyOf(only);
    }

    /** {@code parts.main-battery.capacity} is the capacity of the main battery. */
    private static String words(String path) {
        String plain = path.startsWith(PARTS) ? path.substring(PARTS.length()) : path;
        return plain.replace('.', ' ').replace('-', ' ');
    }
}
