package stillturning.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.LeftSwitch;
import stillturning.assess.Outcome;
import stillturning.assess.Verdict;
import stillturning.quantity.Formats;
import stillturning.report.StoryFacts.Fact;
import stillturning.report.TerminalColour.Ink;
import stillturning.report.TextTable.Cell;
import stillturning.report.TextTable.Column;
import stillturning.story.StartAttempt;

/** What is looked at beside the failures: switches left wrong before the flight, and starting. */
public final class OtherFindings {

    private OtherFindings() {}

    /**
     * Switches left wrong: those that nothing shows before the flight and that then matter.
     *
     * @param all whether to list the others too
     */
    public static List<String> leftSwitches(
            List<Appraisal> appraisals, boolean all, TerminalColour paint) {
        TextTable table =
                new TextTable(
                        List.of(
                                Column.words("candidate", 30),
                                Column.words("switch", 26),
                                Column.words("shows before flight", 20),
                                Column.words("then", 14),
                                Column.numbers("engine runs", 11)));
        int told = 0;
        int left = 0;
        for (Appraisal appraisal : appraisals) {
            String title = appraisal.candidate().title();
            for (LeftSwitch one : appraisal.cases().leftSwitches()) {
                if (all || matters(one)) {
                    table.row(row(title, one));
                    title = "";
                    told++;
                } else {
                    left++;
                }
            }
        }
        List<String> lines = new ArrayList<>(told > 0 ? table.lines(paint) : List.of());
        if (left > 0) {
            lines.add(left + " others show before the flight, or change nothing in it.");
        }
        return lines;
    }

    private static boolean matters(LeftSwitch one) {
        return !one.shows()
                && one.verdict().filter(v -> v.outcome() != Outcome.NO_EFFECT).isPresent();
    }

    private static List<Cell> row(String title, LeftSwitch one) {
        return List.of(
                new Cell(title, Ink.STRONG),
                new Cell(one.lever() + " left " + one.position()),
                new Cell(shows(one)),
                one.verdict()
                        .map(v -> OutcomeMark.of(v.outcome()))
                        .map(mark -> new Cell(mark.word(), mark.ink()))
                        .orElse(new Cell("-", Ink.FAINT)),
                new Cell(one.verdict().map(v -> StoryFacts.endurance(v.planned())).orElse("-")));
    }

    private static String shows(LeftSwitch one) {
        if (!one.atRest().engineRuns()) {
            return "engine does not run";
        }
        return one.cues().isEmpty() ? "nothing" : String.join(", ", one.cues());
    }

    /** Each attempt to start the engine on the ground; nothing where the study has no starter. */
    public static List<String> starts(List<Appraisal> appraisals, TerminalColour paint) {
        TextTable table =
                new TextTable(
                        List.of(
                                Column.words("candidate", 24),
                                Column.words("batteries", 21),
                                Column.words("engine", 16),
                                Column.numbers("starter", 8),
                                Column.words("lowest voltage", 15),
                                Column.words("stop", 12)));
        int told = 0;
        for (Appraisal appraisal : appraisals) {
            String title = appraisal.candidate().title();
            for (StartAttempt start : appraisal.cases().starts()) {
                table.row(row(title, start));
                title = "";
                told++;
            }
        }
        return told > 0 ? table.lines(paint) : List.of();
    }

    private static List<Cell> row(String title, StartAttempt start) {
        return List.of(
                new Cell(title, Ink.STRONG),
                new Cell(start.conditions()),
                new Cell(outcome(start), start.runs() ? Ink.PLAIN : Ink.ALARM),
                new Cell(amps(start)),
                new Cell(lowest(start)),
                new Cell(start.resets().isEmpty() ? "nothing" : String.join(", ", start.resets())));
    }

    private static String outcome(StartAttempt start) {
        return start.runs() ? "runs after " + Formats.duration(start.seconds()) : "does not start";
    }

    private static String amps(StartAttempt start) {
        return Formats.fixed(start.starterAmps(), 0) + " A";
    }

    /** The lowest of all, and of what. */
    private static String lowest(StartAttempt start) {
        return start.lowestVolts().entrySet().stream()
                .min(Map.Entry.comparingByValue())
                .map(e -> Formats.fixed(e.getValue(), 1) + " V, " + e.getKey())
                .orElse("-");
    }

    /** Switches of one candidate left wrong, as facts. */
    static List<Fact> leftSwitches(Appraisal appraisal) {
        return appraisal.cases().leftSwitches().stream()
                .map(one -> new Fact(one.lever() + " left " + one.position(), left(one)))
                .toList();
    }

    private static String left(LeftSwitch one) {
        String before = "before the flight: " + shows(one);
        return before + one.verdict().map(v -> "; in flight: " + inFlight(v)).orElse("");
    }

    private static String inFlight(Verdict verdict) {
        return verdict.outcome().words()
                + ", engine runs "
                + StoryFacts.endurance(verdict.planned()).replace("not limited", "without limit");
    }

    /** Attempts of one candidate to start, as facts. */
    static List<Fact> starts(Appraisal appraisal) {
        return appraisal.cases().starts().stream()
                .map(start -> new Fact(start.conditions(), started(start)))
                .toList();
    }

    private static String started(StartAttempt start) {
        String volts =
                start.lowestVolts().entrySet().stream()
                        .map(e -> e.getKey() + " " + Formats.fixed(e.getValue(), 1) + " V")
                        .collect(Collectors.joining(", "));
        String resets =
                start.resets().isEmpty()
                        ? "nothing stops meanwhile"
                        : "these stop meanwhile: " + String.join(", ", start.resets());
        return String.format(
                Locale.ROOT,
                "%s; starter %s; lowest voltages: %s; %s",
                outcome(start),
                amps(start),
                volts,
                resets);
    }
}
