package stillturning.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.assess.Assess;
import stillturning.failure.Failure;
import stillturning.failure.FailureCatalogue;
import stillturning.failure.FailureWords;
import stillturning.model.Candidate;
import stillturning.parts.FailureMode;
import stillturning.parts.Part;
import stillturning.yaml.LooseNames;
import stillturning.yaml.LooseNames.Name;
import stillturning.yaml.LooseNames.Named;

/**
 * What "main bus short" means: the failures of one part, in the candidates that have it. A part's
 * name alone means all its failure modes.
 */
final class FailureNames {

    private static final int NAMED = 12;
    private static final int NEAREST = 5;

    private final List<Candidate> candidates;

    /** What takes several parts, by candidate; asked only for what names no part. */
    private final Map<String, List<Failure>> causes;

    FailureNames(Collection<Candidate> candidates) {
        this(candidates, Map.of());
    }

    /**
     * @param causes what takes several parts at once, by candidate
     */
    FailureNames(Collection<Candidate> candidates, Map<String, List<Failure>> causes) {
        this.candidates = List.copyOf(candidates);
        this.causes = Map.copyOf(causes);
    }

    /** A part or operating case, and the failures of it that are meant; all of them if empty. */
    private record Meant(String part, String failure) {
        static final String ANY = "";

        boolean holds(Failure of) {
            return failure.equals(ANY) || failure.equals(of.name());
        }

        String words() {
            return failure.equals(ANY) ? part : failure;
        }
    }

    /**
     * The failures meant, by the id of each candidate that has any.
     *
     * @throws Refusal if nothing or more than one part fits
     */
    Map<String, List<Failure>> find(String said) {
        List<Named<Meant>> names = names();
        List<Meant> best = LooseNames.best(said, names);
        List<String> parts = best.stream().map(Meant::part).distinct().toList();
        List<String> shared = parts.isEmpty() ? LooseNames.best(said, causeNames()) : List.of();
        if (!shared.isEmpty()) {
            return causes(said, shared);
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
        Map<String, List<Failure>> found = new LinkedHashMap<>();
        for (Candidate candidate : candidates) {
            List<Failure> failures =
                    failures(candidate, parts.get(0)).stream()
                            .filter(f -> wanted.contains(Meant.ANY) || wanted.contains(f.name()))
                            .toList();
            if (!failures.isEmpty()) {
                found.put(candidate.id(), failures);
            }
        }
        return found;
    }

    /** Every failure that the words fit best, whatever parts they are of; empty if none. */
    List<Failure> all(String said) {
        List<Meant> best = LooseNames.best(said, names());
        return candidates.stream()
                .flatMap(
                        candidate ->
                                best.stream()
                                        .flatMap(
                                                meant ->
                                                        failures(candidate, meant.part()).stream()
                                                                .filter(meant::holds)))
                .distinct()
                .toList();
    }

    /** Parts and operating cases that share most words with what was said, best first. */
    List<String> nearest(String said) {
        return LooseNames.nearest(said, names()).stream()
                .map(Meant::words)
                .distinct()
                .limit(NEAREST)
                .toList();
    }

    private List<Named<String>> causeNames() {
        return causes.values().stream()
                .flatMap(List::stream)
                .map(Failure::name)
                .distinct()
                .map(name -> new Named<>(name, List.of(Name.of(name))))
                .toList();
    }

    /** An event that may end in several ways means each of them. */
    private Map<String, List<Failure>> causes(String said, List<String> names) {
        if (names.stream().map(FailureNames::event).distinct().count() > 1) {
            throw new Refusal(ambiguous(said, names.stream()));
        }
        Map<String, List<Failure>> found = new LinkedHashMap<>();
        for (Candidate candidate : candidates) {
            List<Failure> own =
                    causes.getOrDefault(candidate.id(), List.of()).stream()
                            .filter(failure -> names.contains(failure.name()))
                            .toList();
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
        String start = "nothing here fails by the name \"" + said + "\"";
        return nearest.isEmpty()
                ? start + "; name a part, or leave --failure out to see them all"
                : start + "; nearest:" + listed(nearest.stream());
    }

    private static String ambiguous(String said, Stream<String> best) {
        return "\"" + said + "\" may mean any of these; say more:" + listed(best);
    }

    private static String listed(Stream<String> names) {
        List<String> all = names.distinct().toList();
        String shown = all.stream().limit(NAMED).map(w -> "\n  " + w).collect(Collectors.joining());
        return all.size() > NAMED ? shown + "\n  and " + (all.size() - NAMED) + " more" : shown;
    }

    /** Everything that can be made to happen in a candidate. */
    static List<Failure> all(Candidate candidate) {
        List<Failure> all = new ArrayList<>(FailureCatalogue.singlesOf(candidate));
        all.addAll(FailureCatalogue.operatingCasesOf(candidate));
        all.add(Assess.chargingLost(candidate));
        return all;
    }

    private static List<Failure> failures(Candidate candidate, String part) {
        if (part.equals(Assess.CHARGING_LOST)) {
            return List.of(Assess.chargingLost(candidate));
        }
        if (part.equals(FailureCatalogue.MASTER_OFF)) {
            return FailureCatalogue.operatingCasesOf(candidate);
        }
        return FailureCatalogue.singlesOf(candidate).stream()
                .filter(failure -> failure.hits().get(0).part().equals(part))
                .toList();
    }

    private List<Named<Meant>> names() {
        Map<Meant, Set<Name>> names = new LinkedHashMap<>();
        for (Candidate candidate : candidates) {
            candidate.parts().forEach(part -> add(names, part));
        }
        List<Named<Meant>> all = new ArrayList<>();
        all.add(named(Assess.CHARGING_LOST, "charging lost", "no charging"));
        if (candidates.stream().anyMatch(c -> !c.cockpit().masterOff().isEmpty())) {
            all.add(named(FailureCatalogue.MASTER_OFF, "master off", FailureCatalogue.MASTER_OFF));
        }
        names.forEach((meant, called) -> all.add(new Named<>(meant, List.copyOf(called))));
        return all;
    }

    private static Named<Meant> named(String operatingCase, String... names) {
        return new Named<>(
                new Meant(operatingCase, Meant.ANY), Stream.of(names).map(Name::of).toList());
    }

    private static List<Name> names(String called, FailureMode mode) {
        return FailureWords.of(mode).stream().map(words -> new Name(called, words)).toList();
    }

    private static void add(Map<Meant, Set<Name>> names, Part part) {
        for (String called : List.of(part.id(), part.tag().label())) {
            names.computeIfAbsent(new Meant(part.id(), Meant.ANY), m -> new LinkedHashSet<>())
                    .add(Name.of(called));
            for (FailureMode mode : part.failureModes()) {
                String failure = Failure.of(new Candidate.Hit(part.id(), mode)).name();
                names.computeIfAbsent(new Meant(part.id(), failure), m -> new LinkedHashSet<>())
                        .addAll(names(called, mode));
            }
        }
    }
}
