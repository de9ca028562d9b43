package stillturning.report.terminal;

import static stillturning.report.table.Column.figures;
import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.verdict.LeftSwitch;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate;
import stillturning.quantity.Formats;
import stillturning.report.MissingWarnings;
import stillturning.report.OutcomeMark;
import stillturning.report.StoryFacts;
import stillturning.report.StoryFacts.StoryFact;
import stillturning.report.table.Column;
import stillturning.report.table.Table;
import stillturning.report.table.TerminalColour;
import stillturning.report.table.TerminalColour.Ink;
import stillturning.report.table.TextTable;
import stillturning.story.StartAttempt;

/** What is looked at beside the failures: switches left wrong before the flight, and starting. */
public final class OtherFindings {

    private static final List<Column<Of<LeftSwitch>>> LEFT_SWITCHES =
            List.of(
                    candidate(30),
                    words("switches", 26, of -> of.one.words()),
                    words("shows before flight", 20, of -> shows(of.one)),
                    Column.<Of<LeftSwitch>>words(
                                    "then",
                                    14,
                                    of -> mark(of.one).map(OutcomeMark::word).orElse("-"))
                            .ink(of -> mark(of.one).map(OutcomeMark::ink).orElse(Ink.FAINT)),
                    figures(
                            "engine runs",
                            11,
                            of ->
                                    of.one
                                            .verdict()
                                            .map(v -> StoryFacts.endurance(v.planned()))
                                            .orElse("-")));

    private static final List<Column<Of<StartAttempt>>> STARTS =
            List.of(
                    candidate(24),
                    words("batteries", 21, of -> of.one.conditions()),
                    Column.<Of<StartAttempt>>words("engine", 16, of -> outcome(of.one))
                            .ink(of -> of.one.runs() ? Ink.PLAIN : Ink.ALARM),
                    figures("starter", 8, of -> amps(of.one)),
                    words("lowest voltage", 15, of -> lowest(of.one)),
                    words(
                            "stop",
                            12,
                            of ->
                                    of.one.resets().isEmpty()
                                            ? "nothing"
                                            : String.join(", ", of.one.resets())));

    /** Something of a candidate. */
    private record Of<T>(Candidate candidate, T one) {}

    private OtherFindings() {}

    /**
     * Switches left wrong: those that nothing shows before the flight and that then matter.
     *
     * @param all whether to list the others too
     */
    public static List<String> leftSwitches(
            List<Appraisal> appraisals, boolean all, TerminalColour paint) {
        List<Of<LeftSwitch>> every = each(appraisals, a -> a.cases().leftSwitches());
        List<Of<LeftSwitch>> told =
                every.stream().filter(left -> all || matters(left.one)).toList();
        List<String> lines = new ArrayList<>();
        if (!told.isEmpty()) {
            lines.addAll(TextTable.lines(new Table<>(LEFT_SWITCHES, told), paint));
        }
        int left = every.size() - told.size();
        if (left > 0) {
            lines.add(left + " others show before the flight, or change nothing in it.");
        }
        return lines;
    }

    private static <T> List<Of<T>> each(
            List<Appraisal> appraisals, Function<Appraisal, List<T>> all) {
        return appraisals.stream()
                .flatMap(a -> all.apply(a).stream().map(one -> new Of<>(a.candidate(), one)))
                .toList();
    }

    private static <T> Column<Of<T>> candidate(int widest) {
        return Column.<Of<T>>words("candidate", widest, of -> of.candidate.title())
                .ink(of -> Ink.STRONG)
                .once();
    }

    private static boolean matters(LeftSwitch one) {
        return !one.shows()
                && one.outcome().filter(outcome -> outcome != Outcome.NO_EFFECT).isPresent();
    }

    private static Optional<OutcomeMark> mark(LeftSwitch one) {
        return one.outcome().map(OutcomeMark::of);
    }

    private static String shows(LeftSwitch one) {
        if (one.untold().isPresent()) {
            return "cannot be computed";
        }
        if (!one.runsAtRest()) {
            return "engine does not run";
        }
        return one.cues().isEmpty() ? "nothing" : String.join(", ", one.cues());
    }

    /** Each attempt to start the engine on the ground; nothing where the study has no starter. */
    public static List<String> starts(List<Appraisal> appraisals, TerminalColour paint) {
        List<Of<StartAttempt>> told = each(appraisals, a -> a.cases().starts());
        return told.isEmpty() ? List.of() : TextTable.lines(new Table<>(STARTS, told), paint);
    }

    /** The warnings that candidates lack, each as a sentence. */
    public static List<String> missingWarnings(List<Appraisal> appraisals) {
        return appraisals.stream()
                .flatMap(
                        a ->
                                MissingWarnings.of(a).stream()
                                        .map(m -> a.candidate().title() + ": " + m.inWords() + "."))
                .toList();
    }

    /** The warnings that one candidate lacks, as facts. */
    public static List<StoryFact> missingWarnings(Appraisal appraisal) {
        return MissingWarnings.of(appraisal).stream()
                .map(m -> new StoryFact(m.warning(), String.join("; ", m.failures())))
                .toList();
    }

    /** What becomes of each candidate that is started so, as a sentence. */
    public static List<String> coldStarts(List<Appraisal> appraisals) {
        return appraisals.stream()
                .flatMap(
                        a ->
                                a.cases().coldStart().stream()
                                        .map(
                                                start ->
                                                        a.candidate().title()
                                                                + ": "
                                                                + outcome(start)
                                                                + "; lowest voltage "
                                                                + lowest(start)
                                                                + "."))
                .toList();
    }

    private static String outcome(StartAttempt start) {
        if (start.untold().isPresent()) {
            return "cannot be computed";
        }
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
    public static List<StoryFact> leftSwitches(Appraisal appraisal) {
        return appraisal.cases().leftSwitches().stream()
                .map(one -> new StoryFact(one.words(), left(one)))
                .toList();
    }

    private static String left(LeftSwitch one) {
        String before = "before the flight: " + shows(one);
        return before
                + one.untold().map(reason -> ", so it counts as engine lost: " + reason).orElse("")
                + one.verdict().map(v -> "; in flight: " + inFlight(v)).orElse("");
    }

    private static String inFlight(Verdict verdict) {
        return verdict.outcome().words()
                + ", engine runs "
                + StoryFacts.endurance(verdict.planned()).replace("not limited", "without limit");
    }

    /** Attempts of one candidate to start, as facts. */
    public static List<StoryFact> starts(Appraisal appraisal) {
        return appraisal.cases().starts().stream()
                .map(start -> new StoryFact(start.conditions(), started(start)))
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
