package stillturning.report.change;

import static stillturning.report.table.Column.figures;
import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.change.CandidateChange;
import stillturning.assess.change.CandidateChange.OutcomeChange;
import stillturning.assess.change.CandidateChange.RequirementChange;
import stillturning.assess.verdict.Verdict;
import stillturning.model.goal.CriterionName;
import stillturning.report.RankingOrder;
import stillturning.report.ResultText;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Lead;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Words;

/** What changed between two states of a study, and what followed from it. */
public final class ChangeSheet {

    /** More failures than this are counted. */
    private static final int MOST_NAMED = 8;

    private final Assessment before;
    private final Assessment after;
    private final List<Block> blocks = new ArrayList<>();

    private ChangeSheet(Assessment before, Assessment after) {
        this.before = before;
        this.after = after;
    }

    /** The blocks: what is written otherwise, then candidate by candidate what follows. */
    public static List<Block> of(List<TextChange> texts, Assessment before, Assessment after) {
        ChangeSheet sheet = new ChangeSheet(before, after);
        sheet.texts(texts);
        List<CandidateChange> changes = CandidateChange.between(before, after);
        changes.forEach(sheet::candidate);
        return List.copyOf(sheet.blocks);
    }

    private void texts(List<TextChange> texts) {
        if (texts.isEmpty()) {
            blocks.add(new Lead("Nothing that is written has changed."));
            return;
        }
        blocks.add(
                new Lead(
                        texts.size() == 1
                                ? "One value is written otherwise."
                                : texts.size() + " values are written otherwise."));
        blocks.add(
                Grid.of(
                        texts,
                        List.of(
                                words("file", 24, TextChange::file).once(),
                                figures(
                                        "line",
                                        4,
                                        t -> t.line() == 0 ? "-" : String.valueOf(t.line())),
                                words("where", 28, TextChange::where),
                                words("before", 20, t -> shown(t.before())),
                                words("now", 20, t -> shown(t.after())))));
    }

    private static String shown(String text) {
        return text.isEmpty() ? "-" : text;
    }

    private void candidate(CandidateChange change) {
        blocks.add(new Heading(change.either().candidate().title()));
        if (change.before().isEmpty() || change.after().isEmpty()) {
            blocks.add(
                    new Words(
                            change.after().isPresent()
                                    ? "It is new, or could not be computed before."
                                    : "It is gone, or cannot be computed any more."));
            return;
        }
        int size = blocks.size();
        numbers(change);
        requirements(change.requirements());
        outcomes(change.outcomes());
        counted("Possible now: ", change.come());
        counted("Not possible any more: ", change.gone());
        if (blocks.size() == size) {
            blocks.add(new Words("No outcome, requirement or criterion changed."));
        }
    }

    /** A number of each state. */
    private record Row(String what, String before, String after) {}

    private void numbers(CandidateChange change) {
        Map<CriterionName, Double> was = values(change.before());
        Map<CriterionName, Double> is = values(change.after());
        List<Row> rows = new ArrayList<>();
        rows.add(
                new Row(
                        "place in the ranking",
                        place(before, change.before()),
                        place(after, change.after())));
        for (CriterionName criterion : CriterionName.values()) {
            if (was.containsKey(criterion) && is.containsKey(criterion)) {
                rows.add(
                        new Row(
                                criterion.words(),
                                value(before, criterion, was),
                                value(after, criterion, is)));
            }
        }
        rows.removeIf(row -> row.before.equals(row.after));
        if (!rows.isEmpty()) {
            blocks.add(
                    Grid.of(
                            rows,
                            List.of(
                                    words("of the candidate", 44, Row::what),
                                    figures("before", 16, Row::before),
                                    figures("now", 16, Row::after))));
        }
    }

    private static Map<CriterionName, Double> values(Optional<Appraisal> of) {
        return of.map(a -> a.measures().values()).orElse(Map.of());
    }

    private static String place(Assessment in, Optional<Appraisal> of) {
        return of.map(a -> String.valueOf(1 + RankingOrder.of(in).indexOf(a))).orElse("-");
    }

    private static String value(
            Assessment in, CriterionName criterion, Map<CriterionName, Double> values) {
        return ResultText.value(
                criterion,
                values.getOrDefault(criterion, Double.NaN),
                in.study().heading().currency());
    }

    private void requirements(List<RequirementChange> changes) {
        if (!changes.isEmpty()) {
            blocks.add(
                    new Points(
                            changes.stream()
                                    .map(
                                            c ->
                                                    c.after().requirement()
                                                            + (c.after().met()
                                                                    ? ": met now, was missed"
                                                                    : ": MISSED now, was met: "
                                                                            + c.after().reason()))
                                    .toList()));
        }
    }

    private void outcomes(List<OutcomeChange> changes) {
        if (changes.isEmpty()) {
            return;
        }
        long better = changes.stream().filter(OutcomeChange::better).count();
        blocks.add(
                new Note(
                        "Failures that end otherwise: "
                                + better
                                + " better, "
                                + (changes.size() - better)
                                + " worse; the engine's time with the pilot as planned."));
        List<OutcomeChange> worseFirst =
                Stream.concat(
                                changes.stream().filter(c -> !c.better()),
                                changes.stream().filter(OutcomeChange::better))
                        .toList();
        blocks.add(
                Grid.of(
                        worseFirst,
                        List.of(
                                words("fares", 6, c -> c.better() ? "better" : "WORSE"),
                                words("failure", 34, c -> c.after().failure().name()),
                                words("before", 26, c -> said(c.before())),
                                words("now", 26, c -> said(c.after())))));
    }

    private static String said(Verdict verdict) {
        return verdict.outcome().words()
                + ", "
                + ResultText.endurance(verdict.planned().engine().endurance());
    }

    private void counted(String before, List<Verdict> verdicts) {
        if (!verdicts.isEmpty()) {
            List<String> named =
                    verdicts.stream().limit(MOST_NAMED).map(v -> v.failure().name()).toList();
            int more = verdicts.size() - named.size();
            blocks.add(
                    new Words(
                            before
                                    + String.join(", ", named)
                                    + (more > 0 ? " and " + more + " more" : "")
                                    + "."));
        }
    }
}
