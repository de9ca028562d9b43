package stillturning.report.html;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import stillturning.assess.Appraisal;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.report.FailureRows;
import stillturning.report.OutcomeMark;
import stillturning.report.StoryFacts;
import stillturning.report.page.Page.Fact;
import stillturning.report.page.Page.Matrix;
import stillturning.report.page.Page.MatrixCell;
import stillturning.report.page.Page.MatrixGroup;
import stillturning.report.page.Page.MatrixPart;
import stillturning.report.page.Page.MatrixRow;
import stillturning.report.page.Page.OutcomeSign;

/** The matrix failure by candidate, from grave to mild. */
final class MatrixSection {

    private static final MatrixCell ABSENT =
            new MatrixCell(new OutcomeSign("", "", "absent"), "", "");

    private final List<Appraisal> appraisals;
    private final StoryChapters stories;

    private MatrixSection(List<Appraisal> appraisals, StoryChapters stories) {
        this.appraisals = appraisals;
        this.stories = stories;
    }

    static Matrix of(List<Appraisal> appraisals, StoryChapters stories) {
        MatrixSection section = new MatrixSection(appraisals, stories);
        List<FailureRows.FailureRow> rows = FailureRows.of(appraisals);
        List<MatrixPart> parts = new ArrayList<>();
        section.part(
                        "Failures that reach the engine in at least one candidate",
                        true,
                        rows,
                        r -> r.worst().compareTo(Outcome.INTERRUPTED) <= 0)
                .ifPresent(parts::add);
        section.part(
                        "Failures that cost redundancy at worst",
                        false,
                        rows,
                        r -> r.worst() == Outcome.REDUNDANCY_LOST)
                .ifPresent(parts::add);
        section.part(
                        "Failures that the engine does not feel anywhere",
                        false,
                        rows,
                        r -> r.worst().compareTo(Outcome.REDUNDANCY_LOST) > 0)
                .ifPresent(parts::add);
        return new Matrix(HtmlPage.links(appraisals), legend(), parts);
    }

    static OutcomeSign mark(Outcome outcome) {
        OutcomeMark mark = OutcomeMark.of(outcome);
        return new OutcomeSign(
                mark.sign(), mark.word(), "o-" + mark.name().toLowerCase(Locale.ROOT));
    }

    private static List<Fact> legend() {
        List<Fact> legend = new ArrayList<>();
        for (OutcomeMark mark : OutcomeMark.values()) {
            legend.add(new Fact(mark.sign() + " " + mark.word(), mark.outcome().words()));
        }
        return legend;
    }

    private Optional<MatrixPart> part(
            String heading,
            boolean open,
            List<FailureRows.FailureRow> rows,
            Predicate<FailureRows.FailureRow> wanted) {
        Map<String, List<MatrixRow>> groups = new LinkedHashMap<>();
        rows.stream()
                .filter(wanted)
                .forEach(
                        row ->
                                groups.computeIfAbsent(row.kind(), k -> new ArrayList<>())
                                        .add(row(row)));
        int count = groups.values().stream().mapToInt(List::size).sum();
        return count == 0
                ? Optional.empty()
                : Optional.of(
                        new MatrixPart(
                                heading + " (" + count + ")",
                                open,
                                groups.entrySet().stream()
                                        .map(e -> new MatrixGroup(e.getKey(), e.getValue()))
                                        .toList()));
    }

    private MatrixRow row(FailureRows.FailureRow row) {
        List<MatrixCell> cells = new ArrayList<>();
        for (int i = 0; i < appraisals.size(); i++) {
            int candidate = i;
            cells.add(row.byCandidate().get(i).map(v -> cell(candidate, v)).orElse(ABSENT));
        }
        return new MatrixRow(row.failure(), cells);
    }

    private MatrixCell cell(int candidate, Verdict verdict) {
        boolean limited = Double.isFinite(verdict.planned().engine().endurance().seconds());
        return new MatrixCell(
                mark(verdict.outcome()),
                limited ? StoryFacts.endurance(verdict.planned()) : "",
                stories.anchor(candidate, verdict.failure().name()).orElse(""));
    }
}
