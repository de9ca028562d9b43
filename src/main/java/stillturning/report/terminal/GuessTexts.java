package stillturning.report.terminal;

import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stillturning.assess.Assessment;
import stillturning.assess.Guess;
import stillturning.assess.GuessVariation;
import stillturning.assess.Guesses;
import stillturning.assess.Guesses.GuessChange;
import stillturning.assess.Guesses.Weighty;
import stillturning.assess.findout.GroupScreen;
import stillturning.assess.findout.OpenInterval;
import stillturning.assess.findout.Turn;
import stillturning.assess.ranking.Acceptability;
import stillturning.assess.ranking.Acceptability.Accepted;
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

    /** Fewer points are nothing. */
    private static final double LEAST_WORTH = 1e-6;

    private final Assessment assessment;
    private final Guesses guesses;

    /** Findings about the guesses of an assessed study. */
    public GuessTexts(Assessment assessment, Guesses guesses) {
        this.assessment = assessment;
        this.guesses = guesses;
    }

    /** What was tried, and what was watched. */
    public String method() {
        return "Each guess was tried at both ends of its range, all else as it is; a range that is"
                + " not stated is "
                + Formats.percent(GuessVariation.SHARE)
                + " to either side, 5 % of a voltage, 10 K of a temperature. Watched: who is first,"
                + " which hard requirements each candidate meets, whether it is well with nothing"
                + " wrong, and whether the first one's endurance without charging changes by more"
                + " than "
                + Formats.percent(Guesses.ENDURANCE_MATTERS)
                + ". Where that turns is searched by halving. Chance: the share of the range in"
                + " which another is first or a verdict is another, every value as likely. Worth:"
                + " points gained on average by knowing it before choosing, a missed requirement"
                + " counted as one point. A failure that came out alike in "
                + GroupScreen.TRIALS
                + " trials with all guesses at their ends is not told again for each."
                + leftOut();
    }

    private String leftOut() {
        int many = guesses.leftOut().size();
        return many == 0
                ? ""
                : " Not looked at: "
                        + many
                        + (many == 1 ? " candidate that misses " : " candidates that miss ")
                        + "two requirements more than the first.";
    }

    /** Those that matter as a table, most likely to turn an answer first. */
    public List<String> table(TerminalColour paint) {
        List<Column<GuessTextRow>> columns =
                List.of(
                        Column.<GuessTextRow>words(
                                        "find out", 25, r -> r.name() + ", " + r.source())
                                .ink(r -> Ink.STRONG),
                        words("guessed", 7, GuessTextRow::value),
                        words("chance", 6, GuessTextRow::chance),
                        words("worth", 6, GuessTextRow::worth),
                        words(lower(), 21, GuessTextRow::ifLess),
                        words(higher(), 21, GuessTextRow::ifMore));
        return guesses.matter().isEmpty()
                ? List.of()
                : TextTable.lines(new Table<>(columns, rows()), paint);
    }

    /** Who is first with all guesses anywhere in their ranges and all weightings, if asked. */
    public List<String> spread() {
        return guesses.spread().map(this::spread).orElse(List.of());
    }

    private List<String> spread(Acceptability spread) {
        List<String> lines = new ArrayList<>();
        lines.add(
                "All guesses anywhere in their ranges at once, "
                        + spread.samples()
                        + " times, each with all weightings; errors are those of the 95 % interval"
                        + (spread.leftOut() == 0
                                ? ""
                                : "; "
                                        + spread.leftOut()
                                        + " draws beside these could not be computed and count for"
                                        + " nobody")
                        + ":");
        spread.candidates().stream()
                .sorted(Comparator.comparingDouble(c -> -c.first()))
                .forEach(c -> lines.add(accepted(c)));
        return lines;
    }

    private String accepted(Accepted one) {
        String first =
                title(one.name())
                        + ": first in "
                        + Formats.percent(one.first())
                        + " +- "
                        + Formats.percent(one.firstError());
        String own =
                first
                        + "; with the study's weights, in "
                        + Formats.percent(one.asWeighed())
                        + " +- "
                        + Formats.percent(one.asWeighedError());
        return one.centralWeights().isEmpty()
                ? own + "."
                : own
                        + "; with the mean of the weightings that put it first, in "
                        + Formats.percent(one.confidence())
                        + " +- "
                        + Formats.percent(one.confidenceError())
                        + " of the draws.";
    }

    /** How to find out those that can turn an answer, one sentence each. */
    public List<String> finding() {
        return guesses.matter().stream()
                .filter(w -> w.worth().any() > 0 && !w.guess().finding().isEmpty())
                .map(w -> named(w.guess()) + ": " + w.guess().finding() + ".")
                .toList();
    }

    /**
     * One guess that matters, and what another value does.
     *
     * @param chance that it turns an answer
     * @param worth points gained by knowing it
     * @param finding how to find it out; empty where nobody has said
     */
    public record GuessTextRow(
            String source,
            String name,
            String value,
            String chance,
            String worth,
            String ifLess,
            String ifMore,
            String finding) {}

    public List<GuessTextRow> rows() {
        return guesses.matter().stream()
                .map(
                        w ->
                                new GuessTextRow(
                                        w.guess().source(),
                                        w.guess().name(),
                                        w.guess().value(),
                                        w.worth().any() == 0
                                                ? NOTHING
                                                : Formats.percent(w.worth().any()),
                                        w.worth().points() < LEAST_WORTH
                                                ? NOTHING
                                                : Formats.significant(w.worth().points(), 2),
                                        side(w, w.ifLess(), true),
                                        side(w, w.ifMore(), false),
                                        w.guess().finding()))
                .toList();
    }

    public String lower() {
        return "if lower";
    }

    public String higher() {
        return "if higher";
    }

    /** From where on, and what is then at the end of the range. */
    private String side(Weighty weighty, List<GuessChange> changes, boolean less) {
        String from =
                weighty.worth().turns().stream()
                        .filter(turn -> turn.below() == less)
                        .findFirst()
                        .map(turn -> (less ? "below " : "above ") + at(weighty, turn) + ": ")
                        .orElse("");
        String found = changes(changes, untried(weighty.guess(), weighty.reach(), less));
        return found.equals(NOTHING) && !from.isEmpty()
                ? from + "another answer, but not at the end of its range"
                : from + found;
    }

    private static String at(Weighty weighty, Turn turn) {
        return weighty.reach().wordsAt(turn.place());
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
            String object = guesses.matter().isEmpty() ? " any of this" : " none of this";
            lines.add(subject + verb + object + ", anywhere between the ends of its range.");
        }
        addUntried(lines);
        return List.copyOf(lines);
    }

    private String chosen(Guesses.GuessedWord choice) {
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

    private void addUntried(List<String> lines) {
        String ends =
                guesses.untried().stream()
                        .flatMap(
                                u ->
                                        u.value().stream()
                                                .map(value -> named(u.guess()) + " " + value))
                        .collect(Collectors.joining("; "));
        if (!ends.isEmpty()) {
            lines.add("Not tried, because no study can have that: " + ends + ".");
        }
        String none =
                guesses.untried().stream()
                        .filter(u -> u.value().isEmpty())
                        .map(u -> named(u.guess()))
                        .collect(Collectors.joining("; "));
        if (!none.isEmpty()) {
            lines.add("Not tried, because nothing can change them here: " + none + ".");
        }
    }

    private static String named(Guess guess) {
        return guess.name() + ", " + guess.source();
    }

    private boolean untried(Guess guess, OpenInterval reach, boolean less) {
        String end = reach.wordsAt(less ? 0 : 1);
        return guesses.untried().stream()
                .anyMatch(
                        u -> u.guess().equals(guess) && u.value().filter(end::equals).isPresent());
    }

    private String changes(List<GuessChange> changes, boolean untried) {
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
                .filter(GuessChange.Endurance.class::isInstance)
                .map(GuessChange.Endurance.class::cast)
                .forEach(e -> texts.add(endurance(e)));
        return String.join("; ", texts);
    }

    /** A change that has a clause of its own; those of requirements are told together. */
    private Optional<String> ofItsOwn(GuessChange change) {
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
    private List<String> verdicts(List<GuessChange> changes, boolean met) {
        Map<String, List<String>> requirements = new LinkedHashMap<>();
        for (GuessChange change : changes) {
            if (change instanceof GuessChange.Requirement turned && turned.met() == met) {
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

    private static String endurance(GuessChange.Endurance change) {
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
