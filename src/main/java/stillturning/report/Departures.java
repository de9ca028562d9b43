package stillturning.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.Outcome;
import stillturning.model.Study;
import stillturning.parts.Load;
import stillturning.parts.Part;
import stillturning.parts.Wire;
import stillturning.report.page.Page.Departure;
import stillturning.report.page.Page.Fact;

/** What each candidate has, lacks and suffers that the baseline does not, or the reverse. */
final class Departures {

    private static final int NAMED = 12;

    private final Appraisal baseline;
    private final Map<String, Part> baselineParts;
    private final Map<String, Outcome> baselineOutcomes;

    private Departures(Appraisal baseline) {
        this.baseline = baseline;
        baselineParts = parts(baseline);
        baselineOutcomes = outcomes(baseline);
    }

    /** Empty where the study names no baseline or it could not be computed. */
    static List<Departure> of(Study study, List<Appraisal> appraisals) {
        Optional<Appraisal> baseline =
                study.goals()
                        .baseline()
                        .flatMap(
                                id ->
                                        appraisals.stream()
                                                .filter(a -> a.candidate().id().equals(id))
                                                .findFirst());
        return baseline.map(Departures::new)
                .map(
                        d ->
                                appraisals.stream()
                                        .filter(a -> !a.equals(d.baseline))
                                        .map(d::departure)
                                        .toList())
                .orElse(List.of());
    }

    private Departure departure(Appraisal appraisal) {
        Map<String, Part> own = parts(appraisal);
        Map<String, Outcome> outcomes = outcomes(appraisal);
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("parts added", named(own, id -> !baselineParts.containsKey(id))));
        facts.add(new Fact("parts left out", named(baselineParts, id -> !own.containsKey(id))));
        facts.add(new Fact("parts of another kind or value", named(own, id -> changed(own, id))));
        facts.add(new Fact("loads added", listed(loads(own, baselineParts))));
        facts.add(new Fact("loads left out", listed(loads(baselineParts, own))));
        facts.add(new Fact("failures that end better", compared(outcomes, 1)));
        facts.add(new Fact("failures that end worse", compared(outcomes, -1)));
        facts.add(new Fact("failures of added parts that reach the engine", added(outcomes)));
        return new Departure(
                appraisal.candidate().title(),
                facts.stream().filter(f -> !f.value().isEmpty()).toList());
    }

    private static Map<String, Part> parts(Appraisal appraisal) {
        Map<String, Part> parts = new LinkedHashMap<>();
        appraisal.candidate().parts().forEach(p -> parts.put(p.id(), p));
        return parts;
    }

    private static Map<String, Outcome> outcomes(Appraisal appraisal) {
        Map<String, Outcome> outcomes = new LinkedHashMap<>();
        FailureRows.all(appraisal).forEach(v -> outcomes.put(v.failure().name(), v.outcome()));
        return outcomes;
    }

    private boolean changed(Map<String, Part> own, String id) {
        Part before = baselineParts.get(id);
        return before != null && !before.equals(own.get(id));
    }

    /** Parts by kind, wires only counted, since they follow from the others. */
    private static String named(Map<String, Part> parts, Predicate<String> wanted) {
        Map<String, List<String>> byKind = new TreeMap<>();
        parts.forEach(
                (id, part) -> {
                    if (wanted.test(id) && !(part instanceof Load)) {
                        byKind.computeIfAbsent(FailureRows.kind(part), k -> new ArrayList<>())
                                .add(id);
                    }
                });
        String wires = FailureRows.kind(Wire.class);
        return byKind.entrySet().stream()
                .map(
                        e ->
                                e.getKey().equals(wires)
                                        ? wires + ": " + e.getValue().size()
                                        : e.getKey() + ": " + listed(e.getValue()))
                .collect(Collectors.joining("; "));
    }

    private static List<String> loads(Map<String, Part> here, Map<String, Part> there) {
        return here.values().stream()
                .filter(p -> p instanceof Load && !there.containsKey(p.id()))
                .map(Part::id)
                .toList();
    }

    /** Failures that both have, with the outcome in the candidate above or below the baseline's. */
    private String compared(Map<String, Outcome> outcomes, int sign) {
        List<String> names = new ArrayList<>();
        outcomes.forEach(
                (failure, outcome) -> {
                    Outcome before = baselineOutcomes.getOrDefault(failure, outcome);
                    Outcome worse = before.compareTo(outcome) < 0 ? before : outcome;
                    boolean grave = worse.compareTo(Outcome.REDUNDANCY_LOST) < 0;
                    if (grave && Integer.signum(outcome.compareTo(before)) == sign) {
                        String words = OutcomeMark.of(before).word() + " \u2192 ";
                        names.add(failure + " (" + words + OutcomeMark.of(outcome).word() + ")");
                    }
                });
        return counted(names);
    }

    private String added(Map<String, Outcome> outcomes) {
        List<String> names = new ArrayList<>();
        outcomes.forEach(
                (failure, outcome) -> {
                    if (!baselineOutcomes.containsKey(failure)
                            && outcome.compareTo(Outcome.REDUNDANCY_LOST) < 0) {
                        names.add(failure + " (" + OutcomeMark.of(outcome).word() + ")");
                    }
                });
        return counted(names);
    }

    private static String counted(List<String> names) {
        return names.isEmpty() ? "" : names.size() + ": " + listed(names);
    }

    private static String listed(List<String> names) {
        String shown = String.join(", ", names.subList(0, Math.min(NAMED, names.size())));
        return names.size() > NAMED ? shown + ", and " + (names.size() - NAMED) + " more" : shown;
    }
}
