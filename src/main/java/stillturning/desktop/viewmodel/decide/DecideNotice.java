package stillturning.desktop.viewmodel.decide;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Results;
import stillturning.model.Study.Weight;
import stillturning.report.UntoldTexts;

/** What has to be said about a ranking before it is read. */
final class DecideNotice {

    private DecideNotice() {}

    static String of(Desk desk, List<Weight> weights) {
        Results results = desk.results().get();
        if (results.assessment().isEmpty()) {
            return missing(desk, results);
        }
        if (weights.stream().allMatch(w -> w.weight() == 0)) {
            return "Nothing counts now, so the ranks are those of before. Give one criterion a weight"
                    + " above 0.";
        }
        if (desk.stale()) {
            return desk.study().isEmpty()
                    ? "These results are from before the last changes: the study holds mistakes."
                            + " Mend them in Draw."
                    : "These results are from before the last changes; new ones are on their way.";
        }
        return unassessed(results.assessment().get());
    }

    private static String missing(Desk desk, Results results) {
        if (!results.refusal().isEmpty()) {
            return "Nothing could be ranked: " + results.refusal();
        }
        return desk.study().isEmpty()
                ? "The study holds mistakes, so nothing can be ranked yet. Mend what Draw lists."
                : "Every part of every candidate is being broken; the ranks follow in seconds.";
    }

    private static String unassessed(Assessment assessment) {
        Stream<String> leftOut =
                assessment.unassessed().stream()
                        .map(
                                u ->
                                        u.candidate()
                                                + " could not be computed and is left out: "
                                                + u.reason());
        return Stream.concat(
                        leftOut, assessment.appraisals().stream().flatMap(DecideNotice::untold))
                .collect(Collectors.joining("\n"));
    }

    private static Stream<String> untold(Appraisal appraisal) {
        return UntoldTexts.findings(appraisal).stream()
                .map(
                        finding ->
                                appraisal.candidate().title()
                                        + ", cannot be computed and counts as engine lost: "
                                        + finding);
    }
}
