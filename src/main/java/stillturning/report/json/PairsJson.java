package stillturning.report.json;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import stillturning.assess.Verdict;
import stillturning.model.Candidate.Hit;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.reliability.chance.ChanceRange;
import stillturning.reliability.chance.Estimate;
import stillturning.reliability.chance.Importance;
import stillturning.reliability.combined.Event;
import stillturning.reliability.cutset.CutSets;
import stillturning.reliability.likelihood.ChanceEstimate;
import stillturning.reliability.likelihood.SetShare;
import stillturning.report.Cautions;
import stillturning.report.joint.CombinedFindings;
import stillturning.report.joint.CombinedFindings.PairToKnow;

/** The shape of what events do together, and how likely it is, in JSON. */
record PairsJson(
        int schemaVersion,
        String caution,
        String study,
        List<OfCandidate> candidates,
        List<String> untold) {

    /** One candidate; events have numbers by their order. */
    record OfCandidate(
            String candidate,
            List<One> events,
            Search search,
            List<Weighed> sets,
            List<List<Integer>> engineOwn,
            Chances chances,
            @Nullable Pair pairToKnow,
            List<String> supposed) {}

    /** One event. */
    record One(String name, String kind, List<String> parts) {}

    /** What was searched, and what came of it beside the sets. */
    record Search(
            int order,
            long asked,
            int stories,
            boolean complete,
            List<Undone> undone,
            List<Untold> untold) {}

    /** A set that one more event undoes. */
    record Undone(List<Integer> set, int by) {}

    /** A set for which nobody could say. */
    record Untold(List<Integer> set, String reason) {}

    /** A set and what it adds. */
    record Weighed(List<Integer> set, @Nullable Double perFlight, @Nullable Double share) {}

    /** How likely the end of the engine is, and what that hangs on. */
    record Chances(
            @Nullable Double flightSeconds,
            Estimated runUpBeforeEveryFlight,
            Estimated neverARunUp,
            List<Weight> parts,
            List<Weight> others) {}

    /** The average flight and the last before all inspections. */
    record Estimated(
            Point perFlight,
            Range perFlightRange,
            Point perHour,
            Range perHourRange,
            Point lastFlight,
            Range lastFlightRange) {}

    /** With every rate at its mean. */
    record Point(
            String basis,
            @Nullable Double value,
            @Nullable Double low,
            @Nullable Double high,
            @Nullable Double rareEventSum) {}

    /** With every rate anywhere in its spread. */
    record Range(@Nullable Double low5, @Nullable Double median, @Nullable Double high95) {}

    /** How much hangs on one thing. */
    record Weight(
            String name,
            @Nullable Double criticality,
            @Nullable Double birnbaum,
            @Nullable Double fussellVesely,
            @Nullable Double riskAchievement,
            @Nullable Double riskReduction) {}

    /** The pair to know, and each of the two alone. */
    record Pair(List<Integer> set, Told together, List<Told> alone) {}

    /** What a failure comes to, the pilot as planned. */
    record Told(String failure, String outcome, Lasting lasts) {}

    static PairsJson of(Study study, List<CombinedFindings> found, List<String> untold) {
        return new PairsJson(
                JsonReport.SCHEMA_VERSION,
                Cautions.SHORT,
                study.id(),
                found.stream().map(PairsJson::of).toList(),
                untold);
    }

    private static OfCandidate of(CombinedFindings found) {
        return new OfCandidate(
                found.candidate().id(),
                found.joint().events().stream().map(PairsJson::one).toList(),
                search(found),
                found.likely().worst().stream().map(PairsJson::weighed).toList(),
                found.likely().engineOwn(),
                chances(found),
                found.pair().map(PairsJson::pair).orElse(null),
                found.likely().supposed());
    }

    private static One one(Event event) {
        Failure failure = event.failure();
        return new One(
                event.name(),
                JsonNumbers.kebab(event.kind()),
                failure.hits().stream().map(Hit::part).distinct().toList());
    }

    private static Search search(CombinedFindings found) {
        CutSets sets = found.joint().sets();
        List<Untold> untold = new ArrayList<>();
        for (int i = 0; i < sets.untold().size(); i++) {
            untold.add(new Untold(sets.untold().get(i), found.joint().untold().get(i)));
        }
        return new Search(
                sets.order(),
                sets.asked(),
                found.joint().stories(),
                sets.complete(),
                sets.healings().stream().map(h -> new Undone(h.set(), h.by())).toList(),
                untold);
    }

    private static Weighed weighed(SetShare share) {
        return new Weighed(
                share.events(),
                JsonNumbers.chance(share.perFlight()),
                JsonNumbers.chance(share.share()));
    }

    private static Chances chances(CombinedFindings found) {
        return new Chances(
                JsonNumbers.number(found.likely().checked().point().flightSeconds()),
                estimated(found.likely().checked()),
                estimated(found.likely().unchecked()),
                found.likely().parts().stream().map(s -> weight(s.name(), s.importance())).toList(),
                found.likely().causes().stream()
                        .map(s -> weight(s.name(), s.importance()))
                        .toList());
    }

    private static Estimated estimated(ChanceEstimate of) {
        return new Estimated(
                point(of.point().average()),
                range(of.ranges().average()),
                point(of.point().averagePerHour()),
                range(of.ranges().averagePerHour()),
                point(of.point().last()),
                range(of.ranges().last()));
    }

    private static Point point(Estimate estimate) {
        return new Point(
                JsonNumbers.kebab(estimate.basis()),
                JsonNumbers.chance(estimate.value()),
                JsonNumbers.chance(estimate.low()),
                JsonNumbers.chance(estimate.high()),
                JsonNumbers.chance(estimate.rareEventSum()));
    }

    private static Range range(ChanceRange range) {
        return new Range(
                JsonNumbers.chance(range.low5()),
                JsonNumbers.chance(range.median()),
                JsonNumbers.chance(range.high95()));
    }

    private static Weight weight(String name, Importance importance) {
        return new Weight(
                name,
                JsonNumbers.chance(importance.criticality()),
                JsonNumbers.chance(importance.birnbaum()),
                JsonNumbers.chance(importance.fussellVeselySum()),
                JsonNumbers.chance(importance.riskAchievement()),
                JsonNumbers.chance(importance.riskReduction()));
    }

    private static Pair pair(PairToKnow pair) {
        return new Pair(
                pair.events(),
                told(pair.together()),
                List.of(told(pair.one()), told(pair.other())));
    }

    private static Told told(Verdict verdict) {
        return new Told(
                verdict.failure().name(),
                JsonNumbers.kebab(verdict.outcome()),
                Lasting.of(verdict.planned().engine().endurance()));
    }
}
