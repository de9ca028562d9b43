package stillturning.assess;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.parts.Part;

/**
 * What one candidate has, lacks and suffers that another does not.
 *
 * @param added parts that only the candidate has, in its order
 * @param leftOut parts that only the other has, in its order
 * @param altered parts of one name that are not alike, as the candidate has them
 * @param shifts failures that both can have and that do not come to the same
 * @param own failures that only the candidate can have
 * @param spared failures that only the other can have
 */
public record CandidateDifferences(
        Appraisal candidate,
        Appraisal reference,
        List<Part> added,
        List<Part> leftOut,
        List<Part> altered,
        List<Shift> shifts,
        List<Verdict> own,
        List<Verdict> spared) {

    /**
     * One failure in two candidates.
     *
     * @param before what it comes to in the one that is compared with
     * @param after what it comes to in the candidate
     */
    public record Shift(String failure, Outcome before, Outcome after) {

        /** Whether it ends better in the candidate. */
        public boolean better() {
            return after.compareTo(before) > 0;
        }

        /** The worse of the two. */
        public Outcome worse() {
            return better() ? before : after;
        }
    }

    public CandidateDifferences {
        added = List.copyOf(added);
        leftOut = List.copyOf(leftOut);
        altered = List.copyOf(altered);
        shifts = List.copyOf(shifts);
        own = List.copyOf(own);
        spared = List.copyOf(spared);
    }

    /**
     * A candidate beside another of the same study.
     *
     * @param reference the one that it is compared with
     */
    public static CandidateDifferences of(Appraisal candidate, Appraisal reference) {
        Map<String, Part> here = parts(candidate);
        Map<String, Part> there = parts(reference);
        Map<String, Verdict> suffered = verdicts(candidate);
        Map<String, Verdict> before = verdicts(reference);
        return new CandidateDifferences(
                candidate,
                reference,
                missingIn(there, here),
                missingIn(here, there),
                here.values().stream()
                        .filter(p -> there.containsKey(p.id()) && !p.equals(there.get(p.id())))
                        .toList(),
                shifts(suffered, before),
                missingIn(before, suffered),
                missingIn(suffered, before));
    }

    private static <T> List<T> missingIn(Map<String, T> few, Map<String, T> all) {
        return all.entrySet().stream()
                .filter(e -> !few.containsKey(e.getKey()))
                .map(Map.Entry::getValue)
                .toList();
    }

    private static List<Shift> shifts(Map<String, Verdict> after, Map<String, Verdict> before) {
        List<Shift> shifts = new ArrayList<>();
        after.forEach(
                (failure, verdict) -> {
                    Verdict other = before.getOrDefault(failure, verdict);
                    if (other.outcome() != verdict.outcome()) {
                        shifts.add(new Shift(failure, other.outcome(), verdict.outcome()));
                    }
                });
        return shifts;
    }

    private static Map<String, Part> parts(Appraisal appraisal) {
        Map<String, Part> parts = new LinkedHashMap<>();
        appraisal.candidate().parts().forEach(p -> parts.put(p.id(), p));
        return parts;
    }

    private static Map<String, Verdict> verdicts(Appraisal appraisal) {
        Map<String, Verdict> verdicts = new LinkedHashMap<>();
        Stream.of(
                        Stream.of(appraisal.chargingLost()),
                        appraisal.masterOff().stream(),
                        appraisal.singles().stream())
                .flatMap(all -> all)
                .forEach(v -> verdicts.put(v.failure().name(), v));
        return verdicts;
    }
}
