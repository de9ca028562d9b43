package stillturning.files.goal;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillturning.files.entry.CriteriaEntry;
import stillturning.files.entry.StudyEntry;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.model.Study;
import stillturning.model.goal.ComplexityCount;
import stillturning.model.goal.ComplexityWeights;
import stillturning.model.goal.CriterionName;
import stillturning.model.goal.CriterionOrder;
import stillturning.model.goal.MeanWeights;
import stillturning.model.goal.Preferences;
import stillturning.model.goal.ValueScale;
import stillturning.yaml.DocumentPlaces;

/** Reads what a study prefers: weights, their order, scales, and what adds to complexity. */
public final class PreferencesReader {

    /** How much each criterion counts where nobody says so. A guess. */
    private static final Map<CriterionName, Double> USUAL_WEIGHTS =
            Map.of(
                    CriterionName.ENGINE_STOPS, 5.0,
                    CriterionName.PILOT_NEEDED, 3.0,
                    CriterionName.ENDURANCE, 3.0,
                    CriterionName.WEIGHT, 2.0,
                    CriterionName.COMPLEXITY, 2.0,
                    CriterionName.COST, 1.0);

    private static final Pattern OVER = Pattern.compile("(\\S+)\\s+over\\s+(\\S+)");

    private final StudyEntry study;
    private final ProblemCollector report;

    public PreferencesReader(StudyEntry study, ProblemCollector report) {
        this.study = study;
        this.report = report;
    }

    /** A statement such as "weight over cost"; empty if it is none, or names no criterion. */
    public static Optional<CriterionOrder> statement(String said) {
        Matcher parts = OVER.matcher(said.strip());
        return parts.matches()
                ? StudyEntry.criterion(parts.group(1))
                        .flatMap(
                                h ->
                                        StudyEntry.criterion(parts.group(2))
                                                .map(l -> new CriterionOrder(h, l)))
                : Optional.empty();
    }

    /** The preferences; what is wrong is told and left out. */
    public Preferences read() {
        List<CriterionOrder> importances = importances();
        return new Preferences(weights(importances), scales(), importances, complexity());
    }

    private List<ValueScale> scales() {
        List<ValueScale> scales = new ArrayList<>();
        CriteriaEntry written = study.criteria();
        for (CriterionName criterion : CriterionName.values()) {
            written.of(criterion).flatMap(ends -> scale(criterion, ends)).ifPresent(scales::add);
        }
        return scales;
    }

    private Optional<ValueScale> scale(CriterionName criterion, CriteriaEntry.ScaleEnds ends) {
        String path = DocumentPlaces.under("criteria", StudyEntry.key(criterion));
        double sign = criterion.moreIsBetter() ? 1 : -1;
        if (!(sign * ends.enough() > sign * ends.acceptable())) {
            report.problem(
                    DocumentPlaces.under(path, "enough"),
                    "what is enough is no better than what is acceptable",
                    criterion.moreIsBetter()
                            ? "write more for enough than for acceptable"
                            : "write less for enough than for acceptable");
            return Optional.empty();
        }
        Optional<Double> halfway = ends.halfway();
        if (halfway.filter(
                        h ->
                                !(sign * h > sign * ends.acceptable()
                                        && sign * h < sign * ends.enough()))
                .isPresent()) {
            report.problem(
                    DocumentPlaces.under(path, "halfway"),
                    "it is not between what is acceptable and what is enough",
                    "write a value between them, or leave it out where every step counts the same");
            return Optional.empty();
        }
        return Optional.of(ValueScale.stated(criterion, ends.acceptable(), halfway, ends.enough()));
    }

    private ComplexityWeights complexity() {
        Map<ComplexityCount, Double> stated = new EnumMap<>(ComplexityCount.class);
        study.complexity()
                .forEach(
                        (key, weight) ->
                                StudyEntry.count(key)
                                        .ifPresentOrElse(
                                                count -> stated.put(count, weight),
                                                () -> unknownCount(key)));
        return new ComplexityWeights(stated);
    }

    private void unknownCount(String key) {
        report.unknown(
                Spot.atKey(DocumentPlaces.under("complexity", key)),
                "count",
                key,
                List.of(ComplexityCount.values()).stream().map(StudyEntry::key).toList());
    }

    private List<CriterionOrder> importances() {
        List<CriterionOrder> importances = new ArrayList<>();
        for (int i = 0; i < study.importance().size(); i++) {
            importance(i, study.importance().get(i)).ifPresent(importances::add);
        }
        if (!importances.isEmpty()
                && MeanWeights.of(List.of(CriterionName.values()), importances).isEmpty()) {
            report.problem(
                    "importance",
                    "no weights agree with all of these statements",
                    "take out one of those that lead in a circle");
            return List.of();
        }
        return importances;
    }

    private Optional<CriterionOrder> importance(int index, String said) {
        String path = DocumentPlaces.item("importance", index);
        Matcher parts = OVER.matcher(said.strip());
        if (!parts.matches()) {
            report.problem(
                    path,
                    "\"" + said + "\" does not say what matters more than what",
                    "write: weight over cost");
            return Optional.empty();
        }
        Optional<CriterionName> heavier = criterion(path, parts.group(1));
        Optional<CriterionName> lighter = criterion(path, parts.group(2));
        return heavier.flatMap(h -> lighter.map(l -> new CriterionOrder(h, l)));
    }

    private Optional<CriterionName> criterion(String path, String key) {
        Optional<CriterionName> known = StudyEntry.criterion(key);
        if (known.isEmpty()) {
            report.unknown(new Spot(path, 0), "criterion", key, keys());
        }
        return known;
    }

    /** What criteria are called in files. */
    public static List<String> keys() {
        return List.of(CriterionName.values()).stream().map(StudyEntry::key).toList();
    }

    private List<Study.Weight> weights(List<CriterionOrder> known) {
        List<Study.Weight> weights = weights();
        if (study.weights().isEmpty() && swings().isEmpty() && !known.isEmpty()) {
            return MeanWeights.of(List.of(CriterionName.values()), known).orElse(weights);
        }
        known.stream()
                .filter(k -> weight(weights, k.heavier()) < weight(weights, k.lighter()))
                .forEach(this::contradicted);
        return weights;
    }

    private void contradicted(CriterionOrder known) {
        report.problem(
                swings().isEmpty()
                        ? DocumentPlaces.under("weights", StudyEntry.key(known.lighter()))
                        : DocumentPlaces.under(
                                DocumentPlaces.under("criteria", StudyEntry.key(known.lighter())),
                                "swing"),
                "it weighs more than "
                        + StudyEntry.key(known.heavier())
                        + ", and importance says the reverse",
                "change a weight, or take the statement out");
    }

    private static double weight(List<Study.Weight> weights, CriterionName criterion) {
        return weights.stream()
                .filter(w -> w.criterion() == criterion)
                .mapToDouble(Study.Weight::weight)
                .sum();
    }

    private Map<CriterionName, Double> swings() {
        Map<CriterionName, Double> swings = new EnumMap<>(CriterionName.class);
        for (CriterionName criterion : CriterionName.values()) {
            study.criteria()
                    .of(criterion)
                    .flatMap(CriteriaEntry.ScaleEnds::swing)
                    .ifPresent(swing -> swings.put(criterion, swing));
        }
        return swings;
    }

    private List<Study.Weight> bySwing(Map<CriterionName, Double> swings) {
        if (!study.weights().isEmpty()) {
            report.problem(
                    "weights",
                    "criteria have swings too, so there are two answers to what counts how much",
                    "take out the weights, or every swing");
        } else {
            Swings.mistake(swings)
                    .ifPresent(
                            wrong ->
                                    report.problem(
                                            "criteria",
                                            "no swing is 100",
                                            "give the most important one 100"));
        }
        return Swings.weights(swings);
    }

    private List<Study.Weight> weights() {
        Map<CriterionName, Double> swings = swings();
        if (!swings.isEmpty()) {
            return bySwing(swings);
        }
        if (study.weights().isEmpty()) {
            return List.of(CriterionName.values()).stream()
                    .map(c -> new Study.Weight(c, USUAL_WEIGHTS.getOrDefault(c, 1.0)))
                    .toList();
        }
        List<Study.Weight> weights = new ArrayList<>();
        study.weights()
                .forEach(
                        (key, weight) ->
                                StudyEntry.criterion(key)
                                        .ifPresentOrElse(
                                                c -> weights.add(new Study.Weight(c, weight)),
                                                () -> unknownCriterion(key)));
        if (study.weights().values().stream().allMatch(w -> w == 0)) {
            report.problem("weights", "no criterion counts", "give one of them more than 0");
        }
        return weights;
    }

    private void unknownCriterion(String key) {
        report.unknown(Spot.atKey(DocumentPlaces.under("weights", key)), "criterion", key, keys());
    }
}
