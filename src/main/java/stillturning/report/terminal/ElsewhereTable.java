package stillturning.report.terminal;

import static stillturning.report.table.Column.figures;
import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import stillturning.assess.Assessment;
import stillturning.assess.Elsewhere.WorseInPhase;
import stillturning.assess.verdict.Outcome;
import stillturning.quantity.Formats;
import stillturning.report.OutcomeMark;
import stillturning.report.table.Column;
import stillturning.report.table.Table;
import stillturning.report.table.TerminalColour;
import stillturning.report.table.TerminalColour.Ink;
import stillturning.report.table.TextTable;
import stillturning.story.Moment;
import stillturning.story.Moment.Batteries;

/** Failures that do worse at another moment of the flight than where the study tries them. */
public final class ElsewhereTable {

    private final Assessment assessment;
    private final List<WorseInPhase> worse;

    public ElsewhereTable(Assessment assessment, List<WorseInPhase> worse) {
        this.assessment = assessment;
        this.worse = List.copyOf(worse);
    }

    /** What was tried. */
    public String method() {
        return "Every single failure was tried at the start of every phase, the rest of the flight"
                + " being flown, and just after a hard start with tired batteries. Shown is what"
                + " does worse there than in "
                + assessment.study().goals().failurePhase().name()
                + ", where the study tries it.";
    }

    /**
     * A row a failure, worst first within each candidate.
     *
     * @param mildest outcomes milder than this are only counted
     */
    public List<String> lines(Outcome mildest, TerminalColour paint) {
        List<WorseInPhase> shown =
                worse.stream().filter(one -> one.there().compareTo(mildest) <= 0).toList();
        Map<Outcome, Long> milder =
                worse.stream()
                        .filter(one -> one.there().compareTo(mildest) > 0)
                        .collect(
                                Collectors.groupingBy(
                                        WorseInPhase::there, TreeMap::new, Collectors.counting()));
        List<String> lines = new ArrayList<>();
        if (!shown.isEmpty()) {
            lines.addAll(TextTable.lines(new Table<>(columns(), shown), paint));
        }
        if (worse.isEmpty()) {
            lines.add("None does worse anywhere else.");
        }
        milder.forEach(
                (outcome, count) ->
                        lines.add(count + " more come to \"" + outcome.words() + "\" there."));
        return lines;
    }

    private List<Column<WorseInPhase>> columns() {
        return List.of(
                Column.<WorseInPhase>words("candidate", 30, one -> title(one.candidate()))
                        .ink(one -> Ink.STRONG)
                        .once(),
                words("failure", 40, WorseInPhase::failure),
                words("when", 24, one -> when(one.moment())),
                Column.<WorseInPhase>words("outcome", 30, one -> one.there().words())
                        .ink(one -> OutcomeMark.of(one.there()).ink()),
                figures("engine runs", 12, one -> runs(one.seconds())));
    }

    /** A moment in words. */
    public static String when(Moment moment) {
        return moment.batteries() == Batteries.TIRED
                ? moment.phase() + ", batteries tired"
                : moment.phase();
    }

    private static String runs(double seconds) {
        return Double.isInfinite(seconds) ? "to the end" : Formats.duration(seconds);
    }

    private String title(String candidate) {
        return assessment.of(candidate).map(a -> a.candidate().title()).orElse(candidate);
    }
}
