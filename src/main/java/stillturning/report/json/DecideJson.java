package stillturning.report.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.Complexity;
import stillturning.assess.Guesses;
import stillturning.assess.Outcome;
import stillturning.assess.ranking.AppliedScale;
import stillturning.assess.ranking.Contribution;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Sense;
import stillturning.assess.ranking.Standing;
import stillturning.model.CriterionName;
import stillturning.report.Cautions;
import stillturning.report.NormalFlightTexts;
import stillturning.report.RankingOrder;
import stillturning.report.Reasons;

/** The shape of a ranked comparison in JSON. */
record DecideJson(
        int schemaVersion,
        String caution,
        StudyHead study,
        @Nullable String leader,
        boolean someCandidateMeetsAll,
        List<Criterion> criteria,
        List<CandidateResult> candidates,
        Robustness robustness,
        @Nullable GuessesJson guesses) {

    /** What stands above the study. */
    record StudyHead(
            String id,
            String title,
            boolean invented,
            String currency,
            @Nullable String baseline,
            List<Unassessed> unassessed) {}

    /** A candidate that could not be computed. */
    record Unassessed(String id, String reason) {}

    /** A criterion with its scale; an end is null where no candidate has a finite value. */
    record Criterion(
            String name,
            @Nullable Double weight,
            boolean moreIsBetter,
            @Nullable Double worst,
            @Nullable Double best) {}

    /** One candidate. */
    record CandidateResult(
            String id,
            String title,
            Place place,
            List<String> withNothingWrong,
            List<Gate> requirements,
            List<Value> values,
            Map<String, Integer> singleFailures,
            List<InBandJson.Pair> unselectivePairs,
            Beside beside,
            Burden burden) {}

    /** What is looked at beside the single failures. */
    record Beside(Shedding chargingLost, List<SwitchLeft> leftSwitches, List<Started> starts) {

        static Beside of(Appraisal.Cases cases) {
            return new Beside(
                    Shedding.of(cases.lasting()),
                    cases.leftSwitches().stream().map(SwitchLeft::of).toList(),
                    cases.starts().stream().map(Started::of).toList());
        }
    }

    /** Where it stands. */
    record Place(
            int rank,
            @Nullable Double points,
            boolean efficient,
            List<String> dominatedBy,
            List<@Nullable Double> rankShares,
            String reason) {}

    /** A hard requirement. */
    record Gate(String requirement, boolean met, String reason) {}

    /** Its value by one criterion; null and not limited where nothing limits it. */
    record Value(
            String criterion,
            @Nullable Double value,
            boolean limited,
            @Nullable Double worth,
            @Nullable Double points) {}

    /** What it weighs, costs, and asks of builder and pilot. */
    record Burden(
            @Nullable Double kilograms,
            @Nullable Double cableKilograms,
            @Nullable Double cableMetres,
            @Nullable Double price,
            int complexityIndex,
            Map<String, Integer> complexityCounts) {}

    /** How firmly the order stands. */
    record Robustness(int weightings, @Nullable Double shareError, List<Change> unseatedBy) {}

    /** A change of one weight at which the leader is drawn level. */
    record Change(
            String criterion,
            @Nullable Double fromWeight,
            @Nullable Double toWeight,
            String newLeader) {}

    static DecideJson of(Assessment assessment, Optional<Guesses> guesses) {
        Optional<RankingResult> ranking = assessment.ranking();
        return new DecideJson(
                JsonReport.SCHEMA_VERSION,
                Cautions.SHORT,
                head(assessment),
                ranking.map(r -> r.leader().name()).orElse(null),
                assessment.someCandidateMeetsAll(),
                ranking.map(r -> r.scales().stream().map(DecideJson::criterion).toList())
                        .orElse(List.of()),
                ranking.map(r -> candidates(assessment, r)).orElse(List.of()),
                ranking.map(DecideJson::robustness).orElse(new Robustness(0, null, List.of())),
                guesses.map(GuessesJson::of).orElse(null));
    }

    private static StudyHead head(Assessment assessment) {
        return new StudyHead(
                assessment.study().id(),
                assessment.study().heading().title(),
                assessment.study().heading().invented(),
                assessment.study().heading().currency(),
                assessment.study().goals().baseline().orElse(null),
                assessment.unassessed().stream()
                        .map(u -> new Unassessed(u.candidate(), u.reason()))
                        .toList());
    }

    private static Criterion criterion(AppliedScale scale) {
        return new Criterion(
                name(scale.criterion()),
                JsonNumbers.number(scale.weight()),
                scale.sense() == Sense.MORE_IS_BETTER,
                JsonNumbers.number(scale.worst()),
                JsonNumbers.number(scale.best()));
    }

    private static String name(String words) {
        for (CriterionName name : CriterionName.values()) {
            if (name.words().equals(words)) {
                return JsonNumbers.kebab(name);
            }
        }
        return words;
    }

    private static List<CandidateResult> candidates(Assessment assessment, RankingResult ranking) {
        Reasons reasons = new Reasons(assessment, ranking);
        return RankingOrder.of(assessment).stream()
                .map(a -> candidate(a, ranking, reasons.of(a.candidate().id())))
                .toList();
    }

    private static CandidateResult candidate(
            Appraisal appraisal, RankingResult ranking, String reason) {
        String id = appraisal.candidate().id();
        Standing standing = ranking.standing(id);
        return new CandidateResult(
                id,
                appraisal.candidate().title(),
                place(standing, ranking, reason),
                NormalFlightTexts.findings(appraisal.flight()),
                appraisal.met().stream()
                        .map(m -> new Gate(m.requirement(), m.met(), m.reasonInFull()))
                        .toList(),
                standing.contributions().stream().map(DecideJson::value).toList(),
                outcomes(appraisal),
                InBandJson.pairs(appraisal.selectivity()),
                Beside.of(appraisal.cases()),
                burden(appraisal));
    }

    private static Place place(Standing standing, RankingResult ranking, String reason) {
        List<@Nullable Double> shares = new ArrayList<>();
        ranking.robustness().shares().stream()
                .filter(s -> s.name().equals(standing.name()))
                .forEach(s -> s.byRank().forEach(x -> shares.add(JsonNumbers.number(x))));
        return new Place(
                standing.rank(),
                JsonNumbers.number(standing.total()),
                standing.efficient(),
                standing.dominatedBy(),
                shares,
                reason);
    }

    private static Value value(Contribution contribution) {
        return new Value(
                name(contribution.criterion()),
                JsonNumbers.number(contribution.value()),
                Double.isFinite(contribution.value()),
                JsonNumbers.number(contribution.worth()),
                JsonNumbers.number(contribution.points()));
    }

    private static Map<String, Integer> outcomes(Appraisal appraisal) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Outcome outcome : Outcome.values()) {
            counts.put(JsonNumbers.kebab(outcome), appraisal.with(outcome).size());
        }
        return counts;
    }

    private static Burden burden(Appraisal appraisal) {
        Complexity complexity = appraisal.measures().complexity();
        return new Burden(
                JsonNumbers.number(appraisal.measures().burdens().kilograms()),
                JsonNumbers.number(appraisal.measures().burdens().cableKilograms()),
                JsonNumbers.number(appraisal.measures().burdens().cableMetres()),
                JsonNumbers.number(appraisal.measures().burdens().price()),
                complexity.index(),
                complexity.counts());
    }

    private static Robustness robustness(RankingResult ranking) {
        return new Robustness(
                ranking.robustness().weightings(),
                JsonNumbers.number(ranking.robustness().shareError()),
                ranking.unseatedBy().stream()
                        .map(
                                c ->
                                        new Change(
                                                name(c.criterion()),
                                                JsonNumbers.number(c.from()),
                                                JsonNumbers.number(c.to()),
                                                c.newLeader()))
                        .toList());
    }
}
