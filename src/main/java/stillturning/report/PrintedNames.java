package stillturning.report;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.Cue;
import stillturning.model.Procedure;
import stillturning.model.failure.Failure;
import stillturning.parts.Lever;

/**
 * What a person calls the things of a candidate, in the place of the names in its file. Parts that
 * are called alike keep their names, since nobody could tell them apart.
 */
public final class PrintedNames {

    private final Map<String, String> labels = new LinkedHashMap<>();
    private final Map<String, String> plain = new HashMap<>();
    private final Pattern names;

    /** The labels of a candidate. */
    public PrintedNames(Candidate candidate) {
        Set<String> shared = shared(candidate);
        candidate
                .parts()
                .forEach(
                        part ->
                                put(
                                        part.id(),
                                        shared.contains(part.tag().label())
                                                ? part.id()
                                                : part.tag().label()));
        Stream.of(
                        candidate.cockpit().cues().stream().map(Cue::name),
                        candidate.cockpit().procedures().stream().map(Procedure::name),
                        candidate.parts().stream()
                                .flatMap(part -> part.levers().stream())
                                .map(Lever::name))
                .flatMap(name -> name)
                .forEach(name -> put(name, name.replace('-', ' ')));
        names = names();
    }

    /** Labels that several parts have. */
    private static Set<String> shared(Candidate candidate) {
        Set<String> once = new HashSet<>();
        return candidate.parts().stream()
                .map(part -> part.tag().label())
                .filter(label -> !once.add(label))
                .collect(Collectors.toSet());
    }

    /** A plain word may stand in a sentence for itself; a hyphen is a mark of a name. */
    private void put(String name, String label) {
        if (name.indexOf('-') > 0 && name.indexOf('.') < 0) {
            labels.putIfAbsent(name, label.isBlank() ? name.replace('-', ' ') : label);
        } else if (!label.isBlank()) {
            plain.putIfAbsent(name, label);
        }
    }

    private Pattern names() {
        return Pattern.compile(
                "(?<![\\w-])("
                        + labels.keySet().stream()
                                .sorted(Comparator.comparingInt(name -> -name.length()))
                                .map(Pattern::quote)
                                .collect(Collectors.joining("|"))
                        + ")(?![\\w-])");
    }

    /** A sentence in which names are replaced. */
    public String in(String sentence) {
        return labels.isEmpty()
                ? sentence
                : names.matcher(sentence)
                        .replaceAll(
                                found -> Matcher.quoteReplacement(label(found.group(), sentence)));
    }

    /** A part by its name alone, or words in which names are replaced. */
    public String cell(String words) {
        return plain.getOrDefault(words, in(words));
    }

    private String label(String name, String otherwise) {
        return labels.getOrDefault(name, otherwise);
    }

    /** A failure. */
    public String of(Failure failure) {
        return in(failure.name());
    }
}
