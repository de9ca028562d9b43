package stillturning.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.CandidateDifferences;
import stillturning.assess.CandidateDifferences.Shift;
import stillturning.assess.verdict.Outcome;
import stillturning.model.Study;
import stillturning.parts.Part;
import stillturning.report.OutcomeMark;
import stillturning.report.PartNames;
import stillturning.report.page.Page.Departure;
import stillturning.report.page.Page.Fact;

/** What each candidate has, lacks and suffers that the baseline does not, or the reverse. */
final class Departures {

    private static final int NAMED = 12;

    private Departures() {}

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
        return baseline.map(
                        b ->
                                appraisals.stream()
                                        .filter(a -> !a.equals(b))
                                        .map(a -> departure(CandidateDifferences.of(a, b)))
                                        .toList())
                .orElse(List.of());
    }

    private static Departure departure(CandidateDifferences contrast) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("parts added", named(contrast.added())));
        facts.add(new Fact("parts left out", named(contrast.leftOut())));
        facts.add(new Fact("parts of another kind or value", named(contrast.altered())));
        facts.add(new Fact("loads added", listed(loads(contrast.added()))));
        facts.add(new Fact("loads left out", listed(loads(contrast.leftOut()))));
        facts.add(new Fact("failures that end better", shifts(contrast, Shift::better)));
        facts.add(new Fact("failures that end worse", shifts(contrast, s -> !s.better())));
        facts.add(new Fact("failures of added parts that reach the engine", added(contrast)));
        return new Departure(
                contrast.candidate().candidate().title(),
                facts.stream().filter(f -> !f.value().isEmpty()).toList());
    }

    private static String named(List<Part> parts) {
        List<Part> inside = parts.stream().filter(p -> p.role() != Part.Role.LOAD).toList();
        return PartNames.byKind(inside, Departures::listed).entrySet().stream()
                .map(e -> e.getKey() + ": " + e.getValue())
                .collect(Collectors.joining("; "));
    }

    private static List<String> loads(List<Part> parts) {
        return parts.stream().filter(p -> p.role() == Part.Role.LOAD).map(Part::id).toList();
    }

    /** Failures that both have and that reach the engine in one of them. */
    private static String shifts(CandidateDifferences contrast, Predicate<Shift> wanted) {
        return counted(
                contrast.shifts().stream()
                        .filter(s -> reachesEngine(s.worse()) && wanted.test(s))
                        .map(
                                s ->
                                        s.failure()
                                                + " ("
                                                + word(s.before())
                                                + " \u2192 "
                                                + word(s.after())
                                                + ")")
                        .toList());
    }

    private static String added(CandidateDifferences contrast) {
        return counted(
                contrast.own().stream()
                        .filter(v -> reachesEngine(v.outcome()))
                        .map(v -> v.failure().name() + " (" + word(v.outcome()) + ")")
                        .toList());
    }

    private static boolean reachesEngine(Outcome outcome) {
        return outcome.compareTo(Outcome.REDUNDANCY_LOST) < 0;
    }

    private static String word(Outcome outcome) {
        return OutcomeMark.of(outcome).word();
    }

    private static String counted(List<String> names) {
        return names.isEmpty() ? "" : names.size() + ": " + listed(names);
    }

    private static String listed(List<String> names) {
        String shown = String.join(", ", names.subList(0, Math.min(NAMED, names.size())));
        return names.size() > NAMED ? shown + ", and " + (names.size() - NAMED) + " more" : shown;
    }
}
