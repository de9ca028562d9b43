package stillturning.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.Assessment;
import stillturning.assess.Outcome;
import stillturning.assess.Verdict;
import stillturning.assess.ranking.RankShares;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Standing;
import stillturning.model.CriterionName;
import stillturning.model.Study.Weight;
import stillturning.quantity.Formats;
import stillturning.report.TerminalColour.Ink;
import stillturning.report.TextTable.Cell;
import stillturning.report.TextTable.Column;

/** An assessment's tables for a terminal of about 100 columns. */
public final class TerminalTables {

    private static final int TITLE = 34;
    private static final int NAME = 46;

    private TerminalTables() {}

    /** Candidates in order, each with its value by every criterion. */
    public static List<String> ranking(Assessment assessment, TerminalColour paint) {
        List<Weight> weights = assessment.study().goals().weights();
        List<Column> columns = new ArrayList<>();
        columns.add(Column.numbers("rank", 4));
        columns.add(Column.words("candidate", 30));
        columns.add(Column.numbers("points", 6));
        weights.forEach(w -> columns.add(Column.numbers(shortName(w.criterion()), 10)));
        columns.add(Column.numbers("missed", 6));
        columns.add(Column.words("", 1));
        TextTable table = new TextTable(columns);
        String currency = assessment.study().heading().currency();
        for (Appraisal appraisal : RankingOrder.of(assessment)) {
            assessment
                    .ranking()
                    .ifPresent(r -> table.row(rankingRow(appraisal, r, weights, currency)));
        }
        return table.lines(paint);
    }

    private static List<Cell> rankingRow(
            Appraisal appraisal, RankingResult ranking, List<Weight> weights, String currency) {
        Standing standing = ranking.standing(appraisal.candidate().id());
        List<Cell> cells = new ArrayList<>();
        cells.add(new Cell(String.valueOf(standing.rank())));
        cells.add(
                new Cell(
                        appraisal.candidate().title(),
                        standing.rank() == 1 ? Ink.STRONG : Ink.PLAIN));
        cells.add(new Cell(Formats.fixed(standing.total(), 3)));
        for (Weight weight : weights) {
            double value =
                    appraisal.measures().values().getOrDefault(weight.criterion(), Double.NaN);
            cells.add(new Cell(ResultText.value(weight.criterion(), value, currency)));
        }
        int missed = standing.missedGates().size();
        cells.add(new Cell(String.valueOf(missed), missed > 0 ? Ink.WARNING : Ink.GOOD));
        cells.add(new Cell(standing.efficient() ? "*" : ""));
        return cells;
    }

    private static String shortName(CriterionName criterion) {
        return criterion.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** What the marks in the ranking mean, and how the order holds under other weights. */
    public static List<String> rankingNotes(Assessment assessment) {
        List<String> lines = new ArrayList<>();
        lines.add("*       no other candidate is at least as good in everything and better in one");
        lines.add("missed  hard requirements missed; never ranked above one that misses fewer");
        assessment.ranking().ifPresent(r -> addShares(assessment, r, lines));
        return List.copyOf(lines);
    }

    private static void addShares(
            Assessment assessment, RankingResult ranking, List<String> lines) {
        lines.add("Share of all weightings in which each takes rank 1, 2, ...:");
        for (RankShares shares : ranking.robustness().shares()) {
            String title = assessment.of(shares.name()).map(a -> a.candidate().title()).orElse("");
            lines.add(
                    "  "
                            + shares.byRank().stream()
                                    .map(s -> pad(Formats.percent(s), 6))
                                    .collect(Collectors.joining())
                            + "  "
                            + title);
        }
        lines.addAll(LeaderFirmness.unseating(assessment, ranking));
    }

    private static String pad(String text, int width) {
        return " ".repeat(Math.max(0, width - text.length())) + text;
    }

    /** Hard requirements by candidate. */
    public static List<String> requirements(Assessment assessment, TerminalColour paint) {
        TextTable table =
                new TextTable(
                        List.of(
                                Column.words("candidate", TITLE),
                                Column.words("", 6),
                                Column.words("requirement", 34),
                                Column.words("reason", 38)));
        for (Appraisal appraisal : RankingOrder.of(assessment)) {
            String title = appraisal.candidate().title();
            for (RequirementMet met : appraisal.met()) {
                table.row(
                        List.of(
                                new Cell(title, Ink.STRONG),
                                new Cell(
                                        met.met() ? "met" : "MISSED",
                                        met.met() ? Ink.GOOD : Ink.ALARM),
                                new Cell(met.requirement()),
                                new Cell(met.reasonInFull())));
                title = "";
            }
        }
        return table.lines(paint);
    }

    /**
     * Failure by candidate, with a legend.
     *
     * @param mildest failures that do nothing worse to any candidate are counted, not listed
     */
    public static List<String> matrix(
            Assessment assessment, Outcome mildest, TerminalColour paint) {
        List<Appraisal> appraisals = RankingOrder.of(assessment);
        List<FailureRows.Row> rows = FailureRows.of(appraisals);
        List<Column> columns = new ArrayList<>();
        columns.add(Column.words("failure", NAME));
        for (int i = 1; i <= appraisals.size(); i++) {
            columns.add(Column.words("(" + i + ")", 10));
        }
        TextTable table = new TextTable(columns);
        String kind = "";
        List<Outcome> left = new ArrayList<>();
        for (FailureRows.Row row : rows) {
            if (row.worst().compareTo(mildest) > 0) {
                left.add(row.worst());
                continue;
            }
            if (!row.kind().equals(kind)) {
                kind = row.kind();
                table.row(kindRow(kind, appraisals.size()));
            }
            table.row(matrixRow(row));
        }
        List<String> lines = new ArrayList<>(table.lines(paint));
        left.stream()
                .min(Comparator.naturalOrder())
                .ifPresent(
                        worst ->
                                lines.add(
                                        left.size()
                                                + " further failures, at worst: "
                                                + worst.words()));
        lines.addAll(legend(appraisals));
        return List.copyOf(lines);
    }

    private static List<Cell> kindRow(String kind, int candidates) {
        List<Cell> cells = new ArrayList<>();
        cells.add(new Cell(kind, Ink.STRONG));
        for (int i = 0; i < candidates; i++) {
            cells.add(new Cell(""));
        }
        return cells;
    }

    private static List<Cell> matrixRow(FailureRows.Row row) {
        List<Cell> cells = new ArrayList<>();
        cells.add(new Cell(row.failure()));
        for (Optional<Verdict> verdict : row.byCandidate()) {
            cells.add(
                    verdict.map(v -> OutcomeMark.of(v.outcome()))
                            .map(mark -> new Cell(mark.code(), mark.ink()))
                            .orElse(new Cell(OutcomeMark.ABSENT)));
        }
        return cells;
    }

    private static List<String> legend(List<Appraisal> appraisals) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        for (int i = 0; i < appraisals.size(); i++) {
            lines.add("(" + (i + 1) + ")     " + appraisals.get(i).candidate().title());
        }
        for (OutcomeMark mark : OutcomeMark.values()) {
            lines.add(mark.code() + " ".repeat(8 - mark.code().length()) + mark.outcome().words());
        }
        lines.add("(empty) the candidate has no such part");
        return lines;
    }
}
