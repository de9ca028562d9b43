package stillturning.cli.breaking;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.NamedFailures;
import stillturning.dossier.NamedFailures.Meant;
import stillturning.model.Candidate;
import stillturning.model.failure.Failure;
import stillturning.yaml.LooseNames;
import stillturning.yaml.LooseNames.LooseName;
import stillturning.yaml.LooseNames.Named;

/**
 * What "main bus short" means: the failures of one part, in the candidates that have it. A part's
 * name alone means all its failure modes.
 */
final class FailureNames {

    private static final int NAMED = 12;
    private static final int LONGEST_SHOWN = 200;

    private final List<Candidate> candidates;
    private final NamedFailures named;

    /** What takes several parts, by candidate; asked only for what names no part. */
    private final Map<String, List<Failure>> causes;

    /**
     * @param causes what takes several parts at once, by candidate
     */
    FailureNames(Collection<Candidate> candidates, Map<String, List<Failure>> causes) {
        this.candidates = List.copyOf(candidates);
        this.named = new NamedFailures(candidates);
        this.causes = Map.copyOf(causes);
    }

    /**
     * The failures meant, by the id of each candidate that has any.
     *
     * @throws Refusal if nothing or more than one part fits
     */
    Map<String, List<Failure>> find(String said) {
        List<LooseNames.Named<Meant>> names = named.names();
        List<Meant> best = LooseNames.best(said, names);
        List<String> parts = best.stream().map(Meant::part).distinct().toList();
        List<String> shared = parts.isEmpty() ? LooseNames.best(said, causeNames()) : List.of();
        if (!shared.isEmpty()) {
            return causes(said, shared);
        }
        List<String> ways = parts.isEmpty() ? waysToFail(said, names) : List.of();
        if (!ways.isEmpty()) {
            throw new Refusal(
                    "nothing here fails by the name "
                            + quoted(said)
                            + "; what is named there fails in these ways:"
                            + listed(ways.stream()));
        }
        if (parts.isEmpty()) {
            throw new Refusal(
                    unknown(
                            said,
                            Stream.concat(
                                            LooseNames.nearest(said, names).stream()
                                                    .map(Meant::part),
                                            LooseNames.nearest(said, causeNames()).stream())
                                    .toList()));
        }
        if (parts.size() > 1) {
            throw new Refusal(ambiguous(said, best.stream().map(Meant::words)));
        }
        Set<String> wanted = best.stream().map(Meant::failure).collect(Collectors.toSet());
        return found(
                candidate ->
                        NamedFailures.failures(candidate, parts.get(0)).stream()
                                .filter(
                                        f ->
                                                wanted.contains(Meant.ANY)
                                                        || wanted.contains(f.name())));
    }

    /** The ways in which a part fails that was named together with what it does not do. */
    private static List<String> waysToFail(String said, List<Named<Meant>> names) {
        List<Named<Meant>> parts =
                names.stream().filter(n -> n.thing().failure().equals(Meant.ANY)).toList();
        List<String> named =
                LooseNames.naming(said, parts).stream().map(Meant::part).distinct().toList();
        return names.stream()
                .map(Named::thing)
                .filter(m -> named.contains(m.part()) && !m.failure().equals(Meant.ANY))
                .map(Meant::failure)
                .toList();
    }

    private List<Named<String>> causeNames() {
        return causes.values().stream()
                .flatMap(List::stream)
                .map(Failure::name)
                .distinct()
                .map(name -> new Named<>(name, List.of(LooseName.of(name))))
                .toList();
    }

    /** An event that may end in several ways means each of them. */
    private Map<String, List<Failure>> causes(String said, List<String> names) {
        if (names.stream().map(FailureNames::event).distinct().count() > 1) {
            throw new Refusal(ambiguous(said, names.stream()));
        }
        return found(
                candidate ->
                        causes.getOrDefault(candidate.id(), List.of()).stream()
                                .filter(failure -> names.contains(failure.name())));
    }

    /** Failures by the id of each candidate that has any. */
    private Map<String, List<Failure>> found(Function<Candidate, Stream<Failure>> failures) {
        Map<String, List<Failure>> found = new LinkedHashMap<>();
        for (Candidate candidate : candidates) {
            List<Failure> own = failures.apply(candidate).toList();
            if (!own.isEmpty()) {
                found.put(candidate.id(), own);
            }
        }
        return found;
    }

    private static String event(String cause) {
        int end = cause.indexOf(": ");
        return end < 0 ? cause : cause.substring(0, end);
    }

    private static String unknown(String said, List<String> nearest) {
        String start = "nothing here fails by the name " + quoted(said);
        return nearest.isEmpty()
                ? start + "; name a part, or leave --failure out to see them all"
                : start + "; nearest:" + listed(nearest.stream());
    }

    private static String ambiguous(String said, Stream<String> best) {
        return quoted(said) + " may mean any of these; say more:" + listed(best);
    }

    private static String quoted(String said) {
        boolean shown = said.length() <= LONGEST_SHOWN;
        return "\"" + (shown ? said : said.substring(0, LONGEST_SHOWN) + " ...") + "\"";
    }

    private static String listed(Stream<String> names) {
        List<String> all = names.distinct().toList();
        String shown = all.stream().limit(NAMED).map(w -> "\n  " + w).collect(Collectors.joining());
        return all.size() > NAMED ? shown + "\n  and " + (all.size() - NAMED) + " more" : shown;
    }
}
