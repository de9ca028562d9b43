package stillturning.files.finding;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import stillturning.files.entry.CandidateEntry;
import stillturning.files.entry.RunText;
import stillturning.files.entry.RunText.NamedTerminal;
import stillturning.files.entry.RunText.RunItem;
import stillturning.files.entry.RunText.Through;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.Problem;

/** Finds out which parts of a candidate a message is about. */
public final class FileFindings {

    private final Optional<CandidateEntry> candidate;
    private final Map<String, PartPlace> places;
    private final Function<String, Optional<String>> textAt;

    /**
     * @param candidate the file as far as it can be read
     * @param places where each part is asked for
     * @param textAt the text at a path of the file
     */
    public FileFindings(
            Optional<CandidateEntry> candidate,
            Map<String, PartPlace> places,
            Function<String, Optional<String>> textAt) {
        this.candidate = candidate;
        this.places = places;
        this.textAt = textAt;
    }

    /** Findings about no candidate. */
    public static List<FileFinding> aboutNoPart(
            Collection<Problem> problems, Collection<FileRemark> remarks) {
        FileFindings none = new FileFindings(Optional.empty(), Map.of(), path -> Optional.empty());
        List<FileFinding> findings = new ArrayList<>();
        problems.forEach(p -> findings.add(none.of(p, Optional.empty())));
        remarks.forEach(r -> findings.add(none.of(r)));
        return findings;
    }

    public FileFinding of(Problem problem, Optional<String> subject) {
        return new FileFinding(
                true,
                problem.file(),
                problem.line(),
                problem.column(),
                problem.path(),
                problem.wrong(),
                problem.right(),
                subject.map(List::of).orElseGet(() -> partsAt(problem.path())));
    }

    public FileFinding of(FileRemark remark) {
        return new FileFinding(
                false,
                remark.file(),
                remark.line(),
                remark.column(),
                remark.path(),
                remark.words(),
                "",
                partsAt(remark.path()));
    }

    private List<String> partsAt(String path) {
        List<String> keys = DocumentPlaces.keys(path);
        if (keys.size() < 2) {
            return List.of();
        }
        String key = keys.get(1);
        return switch (keys.get(0)) {
            case "parts", "loads", "wires", "arms", "fails" -> List.of(key);
            case "links" ->
                    run(DocumentPlaces.under("links", key), candidate.map(c -> c.links().get(key)));
            case "feeds" -> feed(key);
            case "returns", "leaves-out" -> named(path);
            case "positions" -> keys.size() > 2 ? List.of(partOf(keys.get(2))) : List.of();
            case "sees" -> cue(DocumentPlaces.under("sees", key));
            case "procedures" ->
                    keys.size() > 3 && keys.get(2).equals("moves")
                            ? List.of(partOf(keys.get(3)))
                            : keys.size() > 2 ? named(path) : List.of();
            default -> List.of();
        };
    }

    private List<String> feed(String key) {
        Set<String> parts = new LinkedHashSet<>();
        parts.add(partOf(key));
        parts.addAll(
                run(DocumentPlaces.under("feeds", key), candidate.map(c -> c.feeds().get(key))));
        return List.copyOf(parts);
    }

    /** What a run makes; where it makes nothing, what it names. */
    private List<String> run(String path, Optional<RunText> run) {
        List<String> made =
                places.entrySet().stream()
                        .filter(e -> e.getValue().path().equals(path))
                        .map(Map.Entry::getKey)
                        .toList();
        return made.isEmpty() ? run.map(FileFindings::namedIn).orElse(List.of()) : made;
    }

    private static List<String> namedIn(RunText run) {
        Set<String> parts = new LinkedHashSet<>();
        parts.add(run.from().part());
        for (RunItem item : run.items()) {
            if (item instanceof Through through) {
                parts.add(through.anchor().part());
            }
        }
        run.to().map(NamedTerminal::part).ifPresent(parts::add);
        return List.copyOf(parts);
    }

    private List<String> cue(String path) {
        return List.of("at", "alternator", "load").stream()
                .flatMap(key -> named(DocumentPlaces.under(path, key)).stream())
                .toList();
    }

    private List<String> named(String path) {
        return textAt.apply(path).map(FileFindings::partOf).stream().toList();
    }

    private static String partOf(String terminal) {
        int point = terminal.indexOf('.');
        return point < 0 ? terminal : terminal.substring(0, point);
    }
}
