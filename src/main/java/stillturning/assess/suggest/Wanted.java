package stillturning.assess.suggest;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
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

    /** The single failures that lose the engine, and the requirements that are missed. */
    public static Wanted all(Appraisal appraisal) {
        return new Wanted(of(appraisal.with(Outcome.ENGINE_LOST)).failures, missed(appraisal));
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

    /** All that is to be mended, by name or in words. */
    public List<String> names() {
        return Stream.of(failures.keySet(), requirements, others)
                .flatMap(Collection::stream)
                .toList();
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
     * @param known those that are not mended anyway
     * @return each with the one that it moved to
     */
    private Map<String, String> moved(Appraisal before, Appraisal after, Set<String> known) {
        List<Verdict> own =
                new ArrayList<>(
                        after.singles().stream().filter(v -> isNew(v.failure(), before)).toList());
        Map<String, String> moved = new LinkedHashMap<>();
        for (Verdict mended : before.singles()) {
            String name = mended.failure().name();
            if (failures.containsKey(name) && !known.contains(name)) {
                Optional<Verdict> same =
                        own.stream()
                                .filter(v -> way(v, after).equals(way(mended, before)))
                                .filter(v -> v.outcome().compareTo(mended.outcome()) <= 0)
                                .findFirst();
                same.ifPresent(own::remove);
                same.ifPresent(v -> moved.put(name, v.failure().name()));
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
     * What a changed candidate mends.
     *
     * @param mended failures and requirements by name
     * @param left the others in words, with what became of them
     */
    public record Mended(List<String> mended, List<String> left) {
        public Mended {
            mended = List.copyOf(mended);
            left = List.copyOf(left);
        }

        /** The same with something else that is mended or not. */
        public Mended with(String other, boolean isLeft) {
            List<String> more = new ArrayList<>(isLeft ? left : mended);
            more.add(other);
            return isLeft ? new Mended(mended, more) : new Mended(more, left);
        }
    }

    /**
     * What a changed candidate mends of the failures and requirements.
     *
     * @param before the candidate as it was
     */
    public Mended mended(Appraisal before, Appraisal after) {
        Set<String> failing = new LinkedHashSet<>();
        left(after.singles()).forEach(v -> failing.add(v.failure().name()));
        Map<String, String> moved = moved(before, after, failing);
        Set<String> missed = Set.copyOf(missed(after));
        List<String> left = new ArrayList<>(failing);
        moved.forEach((name, now) -> left.add(name + ", now as " + now));
        requirements.stream().filter(missed::contains).forEach(left::add);
        List<String> mended =
                Stream.concat(failures.keySet().stream(), requirements.stream())
                        .filter(name -> !failing.contains(name) && !moved.containsKey(name))
                        .filter(name -> !missed.contains(name))
                        .toList();
        return new Mended(mended, left);
    }
}
