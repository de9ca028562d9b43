package stillturning.report.paper;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.Cue;
import stillturning.model.Procedure;
import stillturning.model.failure.Failure;
import stillturning.parts.Lever;

/** What a person calls the things of a candidate, in the place of the names in its file. */
public final class PrintedNames {

    private final Map<String, String> labels = new LinkedHashMap<>();
    private final Pattern names;

    /** The labels of a candidate. */
    public PrintedNames(Candidate candidate) {
        candidate.parts().forEach(part -> put(part.id(), part.tag().label()));
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

    /** A plain word may stand in a sentence for itself; a hyphen is a mark of a name. */
    private void put(String name, String label) {
        if (name.indexOf('-') > 0 && name.indexOf('.') < 0) {
            labels.putIfAbsent(name, label.isBlank() ? name.replace('-', ' ') : label);
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

    private String label(String name, String otherwise) {
        return labels.getOrDefault(name, otherwise);
    }

    /** A failure. */
    public String of(Failure failure) {
        return in(failure.name());
    }
}
