package stillturning.assess.suggest;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate.Hit;
import stillturning.model.failure.Failure;

/**
 * What is to be mended of a candidate.
 *
 * @param failures single failures by name, with what comes of them now
 * @param requirements hard requirements, in words, that are missed now
 * @param others what else there is now and shall not be, in words: a pair of failures, a switch
 *     left wrong, a size
 */
public record Wanted(
        Map<String, Outcome> failures, List<String> requirements, List<String> others) {
    public Wanted {
        failures = Collections.unmodifiableMap(new LinkedHashMap<>(failures));
        requirements = List.copyOf(requirements);
        others = List.copyOf(others);
    }

    /** Failures and requirements alone. */
    public Wanted(Map<String, Outcome> failures, List<String> requirements) {
        this(failures, requirements, List.of());
    }

    /** Something that appraisals do not tell. */
    public static Wanted other(String words) {
        return new Wanted(Map.of(), List.of(), List.of(words));
    }

    /**
     * What comes first of all that is wrong with a candidate: the single failures that lose the
     * engine, or else the requirements that it misses.
     */
    public static Wanted first(Appraisal appraisal) {
        List<Verdict> lost = appraisal.with(Outcome.ENGINE_LOST);
        return lost.isEmpty() ? new Wanted(Map.of(), missed(appraisal)) : of(lost);
    }

    /** Single failures of a candidate. */
    public static Wanted of(List<Verdict> verdicts) {
        Map<String, Outcome> failures = new LinkedHashMap<>();
        verdicts.forEach(v -> failures.put(v.failure().name(), v.outcome()));
        return new Wanted(failures, List.of());
    }

    /** One requirement of a candidate. */
    public static Wanted of(RequirementMet requirement) {
        return new Wanted(Map.of(), List.of(requirement.requirement()));
    }

    static List<String> missed(Appraisal appraisal) {
        return appraisal.met().stream()
                .filter(met -> !met.met())
                .map(RequirementMet::requirement)
                .toList();
    }

    /** Whether there is nothing to mend. */
    public boolean isNothing() {
        return size() == 0;
    }

    /** How many things are to be mended. */
    public int size() {
        return failures.size() + requirements.size() + others.size();
    }

    /**
     * Failures that are not mended: what lost the engine is mended if it no longer does, and what
     * did less harm, if it does less than it did.
     *
     * @param verdicts on these failures, as far as the changed candidate has them
     */
    public List<Verdict> left(List<Verdict> verdicts) {
        return verdicts.stream()
                .filter(v -> failures.containsKey(v.failure().name()))
                .filter(v -> v.outcome().compareTo(before(v)) <= 0)
                .toList();
    }

    private Outcome before(Verdict verdict) {
        return failures.getOrDefault(verdict.failure().name(), Outcome.ENGINE_LOST);
    }

    /**
     * Failures that are not mended but moved: a new part of the same kind fails in the same way,
     * and then no less is lost.
     *
     * @param left those that are not mended anyway
     */
    private List<String> moved(Appraisal before, Appraisal after, List<Verdict> left) {
        Set<String> known = left.stream().map(v -> v.failure().name()).collect(Collectors.toSet());
        List<Verdict> own =
                new ArrayList<>(
                        after.singles().stream().filter(v -> isNew(v.failure(), before)).toList());
        List<String> moved = new ArrayList<>();
        for (Verdict mended : before.singles()) {
            String name = mended.failure().name();
            if (failures.containsKey(name) && !known.contains(name)) {
                Optional<Verdict> same =
                        own.stream()
                                .filter(v -> way(v, after).equals(way(mended, before)))
                                .filter(v -> v.outcome().compareTo(mended.outcome()) <= 0)
                                .findFirst();
                same.ifPresent(own::remove);
                same.ifPresent(v -> moved.add(name + ", now as " + v.failure().name()));
            }
        }
        return moved;
    }

    private static boolean isNew(Failure failure, Appraisal before) {
        return !failure.hits().isEmpty()
                && failure.hits().stream()
                        .allMatch(hit -> before.candidate().part(hit.part()).isEmpty());
    }

    /** Which kinds of parts fail in which way. */
    private static List<String> way(Verdict verdict, Appraisal of) {
        return verdict.failure().hits().stream()
                .map(hit -> kind(hit, of) + " " + hit.mode().key())
                .toList();
    }

    private static String kind(Hit hit, Appraisal of) {
        return of.candidate().part(hit.part()).map(part -> part.kind().word()).orElse("");
    }

    /**
     * Failures and requirements that are not mended in a changed candidate, in words.
     *
     * @param before the candidate as it was
     */
    public List<String> left(Appraisal before, Appraisal after) {
        List<Verdict> failing = left(after.singles());
        List<String> left = new ArrayList<>(failing.stream().map(v -> v.failure().name()).toList());
        left.addAll(moved(before, after, failing));
        Set<String> missed = missed(after).stream().collect(Collectors.toSet());
        requirements.stream().filter(missed::contains).forEach(left::add);
        return left;
    }
}
