package stillturning.report.terminal;

import static stillturning.report.table.Column.figures;
import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.Assessment;
import stillturning.assess.ranking.RankShares;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Standing;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Study.Weight;
import stillturning.model.goal.CriterionName;
import stillturning.quantity.Formats;
import stillturning.report.FailureRows;
import stillturning.report.LeaderFirmness;
import stillturning.report.OutcomeMark;
import stillturning.report.RankingOrder;
import stillturning.report.ResultText;
import stillturning.report.table.Column;
import stillturning.report.table.Table;
import stillturning.report.table.TerminalColour;
import stillturning.report.table.TerminalColour.Ink;
import stillturning.report.table.TextTable;

/** An assessment's tables for a terminal of about 100 columns. */
public final class TerminalTables {

    private static final int TITLE = 34;
    private static final int NAME = 46;

    private static final List<Column<Gate>> REQUIREMENTS =
            List.of(
                    Column.<Gate>words("candidate", TITLE, g -> g.of.candidate().title())
                            .ink(g -> Ink.STRONG)
                            .once(),
                    Column.<Gate>words("", 6, g -> g.met.met() ? "met" : "MISSED")
                            .ink(g -> g.met.met() ? Ink.GOOD : Ink.ALARM),
                    words("requirement", 34, g -> g.met.requirement()),
                    words("reason", 38, g -> g.met.reasonInFull()));

    /** A hard requirement of a candidate. */
    private record Gate(Appraisal of, RequirementMet met) {}

    /** A line of the matrix: a kind of part without cells, or a failure. */
    private record Line(String words, List<Optional<Verdict>> verdicts, boolean heading) {

        Optional<Verdict> verdict(int candidate) {
            return heading ? Optional.empty() : verdicts.get(candidate);
        }

        Optional<OutcomeMark> mark(int candidate) {
            return verdict(candidate).map(v -> OutcomeMark.of(v.outcome()));
        }
    }

    private TerminalTables() {}

    /** Candidates in order, each with its value by every criterion. */
    public static List<String> ranking(Assessment assessment, TerminalColour paint) {
        return assessment
                .ranking()
                .map(r -> new Table<>(columns(assessment, r), RankingOrder.of(assessment)))
                .map(table -> TextTable.lines(table, paint))
                .orElse(List.of());
    }

    private static List<Column<Appraisal>> columns(Assessment assessment, RankingResult ranking) {
        String currency = assessment.study().heading().currency();
        Function<Appraisal, Standing> standing = a -> ranking.standing(a.candidate().id());
        List<Column<Appraisal>> columns = new ArrayList<>();
        columns.add(figures("rank", 4, a -> String.valueOf(standing.apply(a).rank())));
        columns.add(
                Column.<Appraisal>words("candidate", 30, a -> a.candidate().title())
                        .ink(a -> standing.apply(a).rank() == 1 ? Ink.STRONG : Ink.PLAIN));
        columns.add(figures("points", 6, a -> Formats.fixed(standing.apply(a).total(), 3)));
        for (Weight weight : assessment.study().goals().weights()) {
            CriterionName criterion = weight.criterion();
            columns.add(
                    figures(
                            shortName(criterion),
                            10,
                            a ->
                                    ResultText.value(
                                            criterion,
                                            a.measures()
                                                    .values()
                                                    .getOrDefault(criterion, Double.NaN),
                                            currency)));
        }
        ToIntFunction<Appraisal> missed = a -> standing.apply(a).missedGates().size();
        columns.add(
                Column.<Appraisal>figures("missed", 6, a -> String.valueOf(missed.applyAsInt(a)))
                        .ink(a -> missed.applyAsInt(a) > 0 ? Ink.WARNING : Ink.GOOD));
        columns.add(words("", 1, a -> standing.apply(a).efficient() ? "*" : ""));
        return columns;
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
        addCentralWeights(assessment, ranking, lines);
        lines.addAll(LeaderFirmness.unseating(assessment, ranking));
    }

    private static void addCentralWeights(
            Assessment assessment, RankingResult ranking, List<String> lines) {
        lines.add("Mean of the weightings that put each first; weights in this order:");
        ranking.scales().forEach(scale -> lines.add("  " + scale.criterion()));
        for (RankShares shares : ranking.robustness().shares()) {
            String title = assessment.of(shares.name()).map(a -> a.candidate().title()).orElse("");
            String weights =
                    shares.centralWeights().stream()
                            .map(w -> pad(Formats.percent(w), 6))
                            .collect(Collectors.joining());
            lines.add("  " + (weights.isEmpty() ? "  none" : weights) + "  " + title);
        }
    }

    private static String pad(String text, int width) {
        return " ".repeat(Math.max(0, width - text.length())) + text;
    }

    /** Hard requirements by candidate. */
    public static List<String> requirements(Assessment assessment, TerminalColour paint) {
        List<Gate> gates =
                RankingOrder.of(assessment).stream()
                        .flatMap(a -> a.met().stream().map(met -> new Gate(a, met)))
                        .toList();
        return TextTable.lines(new Table<>(REQUIREMENTS, gates), paint);
    }

    /**
     * Failure by candidate, with a legend.
     *
     * @param mildest failures that do nothing worse to any candidate are counted, not listed
     */
    public static List<String> matrix(
            Assessment assessment, Outcome mildest, TerminalColour paint) {
        List<Appraisal> appraisals = RankingOrder.of(assessment);
        List<FailureRows.FailureRow> rows = FailureRows.of(appraisals);
        List<Line> shown = new ArrayList<>();
        String kind = "";
        List<Outcome> left = new ArrayList<>();
        for (FailureRows.FailureRow row : rows) {
            if (row.worst().compareTo(mildest) > 0) {
                left.add(row.worst());
                continue;
            }
            if (!row.kind().equals(kind)) {
                kind = row.kind();
                shown.add(new Line(kind, List.of(), true));
            }
            shown.add(new Line(row.failure(), row.byCandidate(), false));
        }
        Table<Line> table = new Table<>(matrixColumns(appraisals.size()), shown);
        List<String> lines = new ArrayList<>(TextTable.lines(table, paint));
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

    private static List<Column<Line>> matrixColumns(int candidates) {
        List<Column<Line>> columns = new ArrayList<>();
        columns.add(
                Column.words("failure", NAME, Line::words)
                        .ink(line -> line.heading ? Ink.STRONG : Ink.PLAIN));
        for (int i = 0; i < candidates; i++) {
            int candidate = i;
            columns.add(
                    Column.<Line>words(
                                    "(" + (i + 1) + ")",
                                    10,
                                    line ->
                                            line.verdict(candidate)
                                                    .map(OutcomeMark::code)
                                                    .orElse(OutcomeMark.ABSENT))
                            .ink(
                                    line ->
                                            line.mark(candidate)
                                                    .map(OutcomeMark::ink)
                                                    .orElse(Ink.PLAIN)));
        }
        return columns;
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
        if (appraisals.stream().anyMatch(a -> !a.untold().isEmpty())) {
            lines.add(OutcomeMark.UNTOLD + "       cannot be computed, and counts as that");
        }
        lines.add("(empty) the candidate has no such part");
        return lines;
    }
}
