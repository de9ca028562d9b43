package stillturning.report;

import java.util.List;
import java.util.Optional;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;

/** Candidates in the order in which everything lists them: the best first. */
public final class RankingOrder {
    private RankingOrder() {}

    /** The ranked order; that of the study where nothing was ranked. */
    public static List<Appraisal> of(Assessment assessment) {
        return assessment
                .ranking()
                .map(
                        ranking ->
                                ranking.standings().stream()
                                        .map(s -> assessment.of(s.name()))
                                        .flatMap(Optional::stream)
                                        .toList())
                .orElse(assessment.appraisals());
    }
}
