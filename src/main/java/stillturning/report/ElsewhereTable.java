package stillturning.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stillturning.assess.Assessment;
import stillturning.assess.Outcome;
import stillturning.assess.WorseInPhase;
import stillturning.quantity.Formats;
import stillturning.report.TerminalColour.Ink;
import stillturning.report.TextTable.Cell;
import stillturning.report.TextTable.Column;
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
        TextTable table =
                new TextTable(
                        List.of(
                                Column.words("candidate", 30),
                                Column.words("failure", 40),
                                Column.words("when", 24),
                                Column.words("outcome", 30),
                                Column.numbers("engine runs", 12)));
        String above = "";
        int shown = 0;
        Map<Outcome, Integer> milder = new TreeMap<>();
        for (WorseInPhase one : worse) {
            if (one.there().compareTo(mildest) > 0) {
                milder.merge(one.there(), 1, Integer::sum);
                continue;
            }
            shown++;
            String title = title(one.candidate());
            table.row(
                    List.of(
                            new Cell(title.equals(above) ? "" : title, Ink.STRONG),
                            new Cell(one.failure()),
                            new Cell(when(one.moment())),
                            new Cell(one.there().words(), OutcomeMark.of(one.there()).ink()),
                            new Cell(runs(one.seconds()))));
            above = title;
        }
        List<String> lines = new ArrayList<>(shown > 0 ? table.lines(paint) : List.of());
        if (worse.isEmpty()) {
            lines.add("None does worse anywhere else.");
        }
        milder.forEach(
                (outcome, count) ->
                        lines.add(count + " more come to \"" + outcome.words() + "\" there."));
        return lines;
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
