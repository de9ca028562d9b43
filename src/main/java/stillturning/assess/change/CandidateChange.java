package stillturning.assess.change;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.assess.Appraisal;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.Assessment;
import stillturning.assess.verdict.Verdict;

/**
 * One candidate in two states of a study.
 *
 * @param before as it was; empty if it was not there or could not be computed
 * @param after as it is; empty if it is gone or cannot be computed
 */
public record CandidateChange(Optional<Appraisal> before, Optional<Appraisal> after) {

    /** An endurance that differs by less is the same. A guess. */
    private static final double SAME = 0.02;

    /** A failure that ends otherwise than before. */
    public record OutcomeChange(Verdict before, Verdict after) {

        /** Whether the engine fares better. */
        public boolean better() {
            int outcome = after.outcome().compareTo(before.outcome());
            return outcome == 0 ? seconds(after) > seconds(before) : outcome > 0;
        }
    }

    /** A requirement that is met or missed otherwise than before. */
    public record RequirementChange(RequirementMet before, RequirementMet after) {}

    /** Every candidate of either state, those that are there now first. */
    public static List<CandidateChange> between(Assessment before, Assessment after) {
        Stream<CandidateChange> now =
                after.appraisals().stream()
                        .map(
                                a ->
                                        new CandidateChange(
                                                before.of(a.candidate().id()), Optional.of(a)));
        Stream<CandidateChange> gone =
                before.appraisals().stream()
                        .filter(a -> after.of(a.candidate().id()).isEmpty())
                        .map(a -> new CandidateChange(Optional.of(a), Optional.empty()));
        return Stream.concat(now, gone).toList();
    }

    /** The candidate, as it is or as it was. */
    public Appraisal either() {
        return after.or(() -> before).orElseThrow();
    }

    /** Failures that end otherwise, in the candidate's order; those of which both states tell. */
    public List<OutcomeChange> outcomes() {
        Map<String, Verdict> was = verdicts(before);
        List<OutcomeChange> changed = new ArrayList<>();
        verdicts(after)
                .forEach(
                        (failure, now) ->
                                Optional.ofNullable(was.get(failure))
                                        .filter(then -> differs(then, now))
                                        .ifPresent(
                                                then -> changed.add(new OutcomeChange(then, now))));
        return changed;
    }

    private static boolean differs(Verdict then, Verdict now) {
        double was = seconds(then);
        double is = seconds(now);
        return then.outcome() != now.outcome()
                || (was != is && !(Math.abs(was - is) <= SAME * Math.max(was, is)));
    }

    private static double seconds(Verdict verdict) {
        return verdict.planned().engine().endurance().seconds();
    }

    /** Failures that are possible now and were not. */
    public List<Verdict> come() {
        return only(after, before);
    }

    /** Failures that were possible and are not any more. */
    public List<Verdict> gone() {
        return only(before, after);
    }

    private static List<Verdict> only(Optional<Appraisal> in, Optional<Appraisal> notIn) {
        Map<String, Verdict> others = verdicts(notIn);
        return in.isEmpty() || notIn.isEmpty()
                ? List.of()
                : verdicts(in).entrySet().stream()
                        .filter(e -> !others.containsKey(e.getKey()))
                        .map(Map.Entry::getValue)
                        .toList();
    }

    private static Map<String, Verdict> verdicts(Optional<Appraisal> of) {
        Map<String, Verdict> all = new LinkedHashMap<>();
        of.ifPresent(
                a ->
                        Stream.of(
                                        a.singles().stream(),
                                        Stream.of(a.chargingLost()),
                                        a.masterOff().stream())
                                .flatMap(some -> some)
                                .forEach(v -> all.put(v.failure().name(), v)));
        return all;
    }

    /** Requirements of both states that are met or missed otherwise. */
    public List<RequirementChange> requirements() {
        List<RequirementChange> changed = new ArrayList<>();
        for (RequirementMet now : after.map(Appraisal::met).orElse(List.of())) {
            before.map(Appraisal::met).orElse(List.of()).stream()
                    .filter(then -> then.requirement().equals(now.requirement()))
                    .filter(then -> then.met() != now.met())
                    .forEach(then -> changed.add(new RequirementChange(then, now)));
        }
        return changed;
    }
}
