package stillturning.report.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Warning;
import stillturning.report.page.Block.Words;
import stillturning.report.page.Document.Chapter;
import stillturning.report.record.RecordedCandidate.RecordRow;
import stillturning.report.table.Column;

/** What was measured of what was built, beside what was predicted, for the dossier. */
public final class RecordedChapter {

    private RecordedChapter() {}

    /** The chapter; none where nothing has been measured. */
    public static List<Chapter> of(List<RecordedCandidate> candidates) {
        List<Block> blocks = new ArrayList<>();
        for (RecordedCandidate candidate : candidates) {
            if (!candidate.rows().isEmpty() || !candidate.unreadable().isEmpty()) {
                blocks.add(new Heading(candidate.title()));
                blocks.addAll(blocks(candidate));
            }
        }
        return blocks.isEmpty()
                ? List.of()
                : List.of(new Chapter("as-built", "As built: predicted and measured", blocks));
    }

    private static List<Block> blocks(RecordedCandidate candidate) {
        List<Block> blocks = new ArrayList<>();
        if (!candidate.unreadable().isEmpty()) {
            blocks.add(new Warning("The record cannot be read", candidate.unreadable()));
            return blocks;
        }
        List<RecordRow> values = latest(candidate.rows(), row -> !row.isStep() && !row.isFormer());
        List<RecordRow> steps = latest(candidate.rows(), row -> row.isStep() && !row.isFormer());
        blocks.add(new Words(days(candidate.rows())));
        if (!steps.isEmpty()) {
            blocks.add(new Words(status(steps)));
            blocks.add(new Grid(Grid.of(steps, stepColumns()).table()));
        }
        if (!values.isEmpty()) {
            long off = values.stream().filter(row -> !row.standing().good()).count();
            blocks.add(
                    new Words(
                            off
                                    + " of "
                                    + values.size()
                                    + " measured values "
                                    + (off == 1 ? "does" : "do")
                                    + " not keep to what was predicted on their day; they stand"
                                    + " first."));
            blocks.add(Grid.of(worstFirst(values), valueColumns()));
        }
        List<RecordRow> former = latest(candidate.rows(), RecordRow::isFormer);
        if (!former.isEmpty()) {
            blocks.add(
                    new Words(
                            "Measured and no longer asked for: "
                                    + former.stream()
                                            .map(
                                                    row ->
                                                            row.says()
                                                                    + ": "
                                                                    + row.measured()
                                                                    + " ("
                                                                    + day(row)
                                                                    + ")")
                                            .collect(Collectors.joining("; "))
                                    + "."));
        }
        if (candidate.rows().stream().anyMatch(row -> row.day().changed())) {
            blocks.add(
                    new Note(
                            "*: the study has changed since that day, so it may now predict"
                                    + " something else."));
        }
        return blocks;
    }

    /** The last of each thing, in the order of the first; what was done stands before what not. */
    private static List<RecordRow> latest(List<RecordRow> rows, Predicate<RecordRow> which) {
        Map<String, RecordRow> latest = new LinkedHashMap<>();
        rows.stream()
                .filter(which)
                .forEach(
                        row ->
                                latest.merge(
                                        row.what(),
                                        row,
                                        (before, now) ->
                                                now.measured().isEmpty()
                                                                || now.day()
                                                                                .date()
                                                                                .compareTo(
                                                                                        before.day()
                                                                                                .date())
                                                                        < 0
                                                        ? before
                                                        : now));
        return List.copyOf(latest.values());
    }

    private static List<RecordRow> worstFirst(List<RecordRow> values) {
        List<RecordRow> ordered = new ArrayList<>();
        values.stream().filter(row -> !row.standing().good()).forEach(ordered::add);
        values.stream().filter(row -> row.standing().good()).forEach(ordered::add);
        return ordered;
    }

    private static String days(List<RecordRow> rows) {
        Set<String> days =
                rows.stream()
                        .map(row -> row.day().date() + by(row))
                        .collect(Collectors.toCollection(LinkedHashSet::new));
        return "Measured on "
                + String.join(", ", days)
                + ". Each value stands beside what was predicted on that day; of what was measured"
                + " more than once, the last is shown.";
    }

    private static String by(RecordRow row) {
        return row.day().by().isEmpty() ? "" : " by " + row.day().by();
    }

    private static String status(List<RecordRow> steps) {
        long open = steps.stream().filter(row -> row.measured().isEmpty()).count();
        long good = steps.stream().filter(row -> row.standing().good()).count();
        return "Ground test: of "
                + steps.size()
                + " steps "
                + good
                + " passed, "
                + (steps.size() - good - open)
                + " failed, "
                + open
                + " not done.";
    }

    private static List<Column<RecordRow>> stepColumns() {
        return List.of(
                Column.words("step of the ground test", 60, RecordRow::says),
                Column.words("result", 10, row -> row.standing().words()),
                Column.words("day", 11, row -> row.measured().isEmpty() ? "" : day(row)));
    }

    private static List<Column<RecordRow>> valueColumns() {
        return List.of(
                Column.words("what", 36, RecordRow::says),
                Column.figures("predicted", 11, row -> row.prediction().likely()),
                Column.figures("keeps to it", 20, row -> row.prediction().keeps()),
                Column.figures("measured", 16, RecordRow::measured),
                Column.words("", 14, row -> row.standing().words()),
                Column.words("day", 11, RecordedChapter::day));
    }

    private static String day(RecordRow row) {
        return row.day().date() + (row.day().changed() ? "*" : "");
    }
}
