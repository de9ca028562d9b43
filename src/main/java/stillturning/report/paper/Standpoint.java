package stillturning.report.paper;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.report.FailureRows;
import stillturning.report.PrintedNames;
import stillturning.report.RankingOrder;

/** An assessment as its reader stands before it: the best first, and everything by its label. */
final class Standpoint {

    /** Gravest first; of equal ones that which leaves least time. */
    static final Comparator<Verdict> GRAVEST_FIRST = FailureRows.GRAVEST_FIRST;

    private final Assessment assessment;
    private final List<Appraisal> ranked;
    private final Map<String, PrintedNames> labels = new HashMap<>();

    Standpoint(Assessment assessment) {
        this.assessment = assessment;
        this.ranked = RankingOrder.of(assessment);
        ranked.forEach(a -> labels.put(a.candidate().id(), new PrintedNames(a.candidate())));
    }

    Assessment assessment() {
        return assessment;
    }

    /** Candidates that could be assessed, best first. */
    List<Appraisal> ranked() {
        return ranked;
    }

    /** The one that comes first; empty where none could be assessed. */
    Optional<Appraisal> chosen() {
        return ranked.stream().findFirst();
    }

    /** The labels of a candidate. */
    PrintedNames labels(Appraisal appraisal) {
        return labels.getOrDefault(
                appraisal.candidate().id(), new PrintedNames(appraisal.candidate()));
    }

    /** Single failures in which the engine ends or stops, or would if the pilot did nothing. */
    static List<Verdict> needingSomebody(Appraisal appraisal) {
        return appraisal.singles().stream()
                .filter(v -> !v.engineOwn())
                .filter(v -> v.outcome().compareTo(Outcome.STOPS_UNLESS_PILOT_ACTS) <= 0)
                .sorted(GRAVEST_FIRST)
                .toList();
    }
}
