package stillturning.report.terminal;

import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stillturning.assess.Assessment;
import stillturning.assess.Guess;
import stillturning.assess.Guesses;
import stillturning.assess.Guesses.Change;
import stillturning.quantity.Formats;
import stillturning.report.ResultText;
import stillturning.report.table.Column;
import stillturning.report.table.Table;
import stillturning.report.table.TerminalColour;
import stillturning.report.table.TerminalColour.Ink;
import stillturning.report.table.TextTable;

/** Which guesses matter, in words. */
public final class GuessTexts {

    private static final String NOTHING = "-";

    private final Assessment assessment;
    private final Guesses guesses;

    /** Findings about the guesses of an assessed study. */
    public GuessTexts(Assessment assessment, Guesses guesses) {
        this.assessment = assessment;
        this.guesses = guesses;
    }

    /** What was tried, and what was watched. */
    public String method() {
        return "Each guess was tried "
                + share()
                + " lower and "
                + share()
                + " higher, all else as it is. Watched: who is first, which hard requirements each"
                + " candidate meets, whether it is well with nothing wrong, and whether the first one's endurance without charging"
                + " changes by more than "
                + Formats.percent(Guesses.ENDURANCE_MATTERS)
                + ".";
    }

    /** Those that matter as a table, gravest first. */
    public List<String> table(TerminalColour paint) {
        List<Column<Row>> columns =
                List.of(
                        Column.<Row>words("find out", 30, r -> r.name() + ", " + r.source())
                                .ink(r -> Ink.STRONG),
                        words("guessed", 8, Row::value),
                        words(lower(), 36, Row::ifLess),
                        words(higher(), 36, Row::ifMore));
        return guesses.matter().isEmpty()
                ? List.of()
                : TextTable.lines(new Table<>(columns, rows()), paint);
    }

    /** One guess that matters, and what another value does. */
    public record Row(String source, String name, String value, String ifLess, String ifMore) {}

    public List<Row> rows() {
        return guesses.matter().stream()
                .map(
                        w ->
                                new Row(
                                        w.guess().source(),
                                        w.guess().name(),
                                        w.guess().value(),
                                        changes(w.ifLess(), untried(w.guess(), true)),
                                        changes(w.ifMore(), untried(w.guess(), false))))
                .toList();
    }

    public String lower() {
        return "if " + share() + " lower";
    }

    public String higher() {
        return "if " + share() + " higher";
    }

    /** Guesses among words, those that change nothing, counted, and those that were not tried. */
    public List<String> rest() {
        List<String> lines = new ArrayList<>();
        guesses.choices().forEach(choice -> lines.add(chosen(choice)));
        int others = guesses.indifferent().size();
        int all = others + guesses.matter().size() + guesses.untried().size();
        if (all + guesses.choices().size() == 0) {
            lines.add("There is no guess to try.");
        }
        if (others > 0) {
            String subject =
                    guesses.matter().isEmpty()
                            ? "None of the " + others + (others == 1 ? " guess" : " guesses")
                            : "The other " + (others == 1 ? "guess" : others + " guesses");
            String verb = guesses.matter().isEmpty() || others == 1 ? " changes" : " change";
            String object = guesses.matter().isEmpty() ? " any of this." : " none of this.";
            lines.add(subject + verb + object);
        }
        addUntried(true, lines);
        addUntried(false, lines);
        return List.copyOf(lines);
    }

    private String chosen(Guesses.Choice choice) {
        return "If "
                + named(choice.guess())
                + ", is "
                + choice.other()
                + " and not "
                + choice.guess().value()
                + ": "
                + (choice.changes().isEmpty()
                        ? "none of this changes"
                        : changes(choice.changes(), false))
                + ".";
    }

    private void addUntried(boolean less, List<String> lines) {
        String names =
                guesses.untried().stream()
                        .filter(u -> u.factor() < 1 == less)
                        .map(u -> named(u.guess()) + " " + u.guess().value())
                        .collect(Collectors.joining("; "));
        if (!names.isEmpty()) {
            String way = less ? " lower" : " higher";
            lines.add(
                    "Not tried "
                            + share()
                            + way
                            + ", because no study can have that: "
                            + names
                            + ".");
        }
    }

    private static String named(Guess guess) {
        return guess.name() + ", " + guess.source();
    }

    private boolean untried(Guess guess, boolean less) {
        return guesses.untried().stream()
                .anyMatch(u -> u.guess().equals(guess) && u.factor() < 1 == less);
    }

    private String share() {
        return Formats.percent(guesses.share());
    }

    private String changes(List<Change> changes, boolean untried) {
        if (untried) {
            return "not tried";
        }
        if (changes.isEmpty()) {
            return NOTHING;
        }
        List<String> texts = new ArrayList<>();
        changes.forEach(change -> ofItsOwn(change).ifPresent(texts::add));
        texts.addAll(verdicts(changes, false));
        texts.addAll(verdicts(changes, true));
        changes.stream()
                .filter(Change.Endurance.class::isInstance)
                .map(Change.Endurance.class::cast)
                .forEach(e -> texts.add(endurance(e)));
        return String.join("; ", texts);
    }

    /** A change that has a clause of its own; those of requirements are told together. */
    private Optional<String> ofItsOwn(Change change) {
        return change.fold(
                leader -> Optional.of(title(leader.candidate()) + " is first"),
                requirement -> Optional.empty(),
                unwell -> Optional.of(title(unwell.candidate()) + " is unwell with nothing wrong"),
                endurance -> Optional.empty(),
                lost ->
                        Optional.of(
                                title(lost.candidate()) + " cannot be computed: " + lost.reason()));
    }

    /** Candidates that turn on the same requirements share a clause. */
    private List<String> verdicts(List<Change> changes, boolean met) {
        Map<String, List<String>> requirements = new LinkedHashMap<>();
        for (Change change : changes) {
            if (change instanceof Change.Requirement turned && turned.met() == met) {
                requirements
                        .computeIfAbsent(title(turned.candidate()), c -> new ArrayList<>())
                        .add("\"" + turned.requirement() + "\"");
            }
        }
        Map<String, List<String>> candidates = new LinkedHashMap<>();
        requirements.forEach(
                (candidate, turned) ->
                        candidates
                                .computeIfAbsent(
                                        String.join(" and ", turned), r -> new ArrayList<>())
                                .add(candidate));
        List<String> clauses = new ArrayList<>();
        candidates.forEach(
                (turned, who) ->
                        clauses.add(
                                (who.size() > 1 ? "each of " : "")
                                        + String.join(", ", who)
                                        + (met ? " meets " : " misses ")
                                        + turned));
        return clauses;
    }

    private static String endurance(Change.Endurance change) {
        return "endurance "
                + ResultText.seconds(change.toSeconds())
                + " instead of "
                + ResultText.seconds(change.fromSeconds());
    }

    private String title(String candidate) {
        return "\""
                + assessment.study().candidate(candidate).map(c -> c.title()).orElse(candidate)
                + "\"";
    }
}
