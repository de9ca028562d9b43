package stillturning.report.paper;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate.Hit;
import stillturning.parts.Alteration;
import stillturning.parts.element.Conductor;
import stillturning.report.OutcomeMark;

/** What mends a single point: by the failure's shape, and what it does where it is mended. */
final class Remedies {

    private static final String PART =
            "part it from what feeds the engine before that falters: a protector of its own close to"
                    + " each source, or a diode";
    private static final String SECOND_WAY = "a second way round it for what the engine needs";
    private static final String GUARD =
            "a guard that takes it off, or a second source that does not depend on it";

    private final List<Appraisal> all;

    Remedies(List<Appraisal> all) {
        this.all = all;
    }

    /** By its shape alone. */
    static String shape(Verdict verdict) {
        List<Hit> hits = verdict.failure().hits();
        if (hits.stream().anyMatch(hit -> hit.mode().shortsToStructure())) {
            return PART;
        }
        boolean opens =
                hits.stream()
                        .flatMap(hit -> hit.mode().alterations().stream())
                        .anyMatch(Remedies::opens);
        return opens ? SECOND_WAY : GUARD;
    }

    /** Whether less current passes: what is gone, or metal that has become a bad contact. */
    private static boolean opens(Alteration alteration) {
        return alteration.fold(
                removed -> true, put -> put.element() instanceof Conductor, added -> false);
    }

    /** The candidates, by their ranks, that the same failure neither stops nor needs a pilot in. */
    String elsewhere(Appraisal of, Verdict verdict) {
        Map<Outcome, List<String>> better = new EnumMap<>(Outcome.class);
        for (int i = 0; i < all.size(); i++) {
            String rank = String.valueOf(i + 1);
            if (!all.get(i).equals(of)) {
                same(all.get(i), verdict)
                        .map(Verdict::outcome)
                        .filter(outcome -> outcome.compareTo(Outcome.STOPS_UNLESS_PILOT_ACTS) > 0)
                        .ifPresent(
                                outcome ->
                                        better.computeIfAbsent(outcome, o -> new ArrayList<>())
                                                .add(rank));
            }
        }
        return better.isEmpty()
                ? "none that has this part"
                : better.entrySet().stream()
                        .map(e -> String.join(", ", e.getValue()) + " (" + word(e.getKey()) + ")")
                        .collect(Collectors.joining("; "));
    }

    private static String word(Outcome outcome) {
        return OutcomeMark.of(outcome).word();
    }

    private static Optional<Verdict> same(Appraisal other, Verdict verdict) {
        return other.singles().stream()
                .filter(v -> v.failure().name().equals(verdict.failure().name()))
                .findFirst();
    }
}
