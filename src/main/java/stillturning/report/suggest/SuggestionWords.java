package stillturning.report.suggest;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import stillturning.assess.front.Tally;
import stillturning.assess.suggest.Suggestion;
import stillturning.assess.suggest.Suggestion.CandidateBurden;
import stillturning.assess.suggest.Suggestion.Worsening;
import stillturning.assess.suggest.Suggestions;
import stillturning.assess.suggest.Suggestions.LookedAt;
import stillturning.assess.suggest.Wanted;
import stillturning.assess.verdict.Outcome;
import stillturning.quantity.Formats;

/** What would mend a candidate, in sentences. */
public final class SuggestionWords {

    private static final int NAMED = 3;

    /** What has to be said wherever something is suggested. */
    public static final String MEANING =
            "Each was assessed in full, but simpler on paper is not yet buildable: lengths are"
                    + " those between zones, new parts are of the catalogue's usual classes, and nobody"
                    + " has looked whether there is room. Sizes are not checked here; run size on what"
                    + " you save.";

    /** No difference. */
    static final String SAME = "the same";

    private final Suggestions all;

    public SuggestionWords(Suggestions all) {
        this.all = all;
    }

    /** What is to be mended. */
    public String wanted() {
        Wanted wanted = all.wanted();
        String title = "\"" + all.before().candidate().title() + "\"";
        if (wanted.isNothing()) {
            return title
                    + " loses the engine by no single failure and meets every hard requirement;"
                    + " name what else is to be mended.";
        }
        List<String> parts = new ArrayList<>();
        Map<Outcome, List<String>> failures = new TreeMap<>();
        wanted.failures()
                .forEach((f, o) -> failures.computeIfAbsent(o, k -> new ArrayList<>()).add(f));
        failures.forEach(
                (outcome, names) ->
                        parts.add(
                                counted(names.size(), "single failure")
                                        + " ("
                                        + outcome.words()
                                        + "): "
                                        + some(names)));
        wanted.requirements().forEach(requirement -> parts.add("missed: " + requirement));
        parts.addAll(wanted.others());
        return "To be mended in " + title + ": " + String.join(". ", parts) + ".";
    }

    /** How many changes are shown. */
    public String found() {
        int shown = all.found().size();
        return shown == 0
                ? all.outweighed().isEmpty()
                        ? "Nothing that was looked at mends any of it."
                        : "Nothing that was looked at mends any of it without losing the engine in"
                                + " more ways than before."
                : counted(shown, "change")
                        + " that nothing else found outdoes in what is left, new troubles, parts"
                        + " touched, weight, parts, price, complexity and acts of the pilot at"
                        + " once.";
    }

    /** How many changes are not shown since they lose more than they mend, if any. */
    public Optional<String> outweighed() {
        return outweighed(all.outweighed().size(), "the command suggest --all");
    }

    /**
     * The same of so many.
     *
     * @param by what lists them
     */
    static Optional<String> outweighed(int number, String by) {
        return number == 0
                ? Optional.empty()
                : Optional.of(
                        counted(number, "more change")
                                + (number == 1
                                        ? " mends some of it but brings more new single failures"
                                                + " that lose the engine than it takes away; "
                                        : " mend some of it but bring more new single failures"
                                                + " that lose the engine than they take away; ")
                                + by
                                + (number == 1 ? " lists it." : " lists them."));
    }

    /** What is done, as one sentence. */
    public static String moves(Suggestion suggestion) {
        return suggestion.moves().stream()
                .reduce((sentence, next) -> sentence + "; then " + inSentence(next))
                .orElse("");
    }

    private static String inSentence(String move) {
        return move.substring(0, 1).toLowerCase(Locale.ROOT) + move.substring(1);
    }

    /** What it mends, costs and breaks, a sentence each. */
    public List<String> about(Suggestion suggestion) {
        int size = all.wanted().size();
        int left = suggestion.left().size();
        List<String> lines = new ArrayList<>();
        lines.add(
                left == 0
                        ? "Mends " + (size == 1 ? "it." : "all " + size + ".")
                        : "Mends "
                                + (size - left)
                                + " of "
                                + size
                                + "; left: "
                                + some(suggestion.left())
                                + ".");
        lines.add(costs(suggestion));
        lines.add(troubles(suggestion));
        losses(suggestion).ifPresent(lines::add);
        long better = suggestion.differences().shifts().stream().filter(s -> s.better()).count();
        if (better > 0) {
            lines.add(
                    "Of parts that stay, "
                            + counted((int) better, "failure")
                            + (better == 1 ? " ends better." : " end better."));
        }
        return lines;
    }

    /** What it costs, as one sentence. */
    String costs(Suggestion suggestion) {
        CandidateBurden before = suggestion.before();
        CandidateBurden after = suggestion.after();
        return String.format(
                Locale.ROOT,
                "Weight %s kg (%s), parts %d (%s), price %s %s (%s), complexity %s (%s), acts of"
                        + " the pilot %d (%s).",
                Formats.fixed(after.kilograms(), 2),
                signed(after.kilograms() - before.kilograms(), 2),
                after.parts(),
                signed(after.parts() - before.parts(), 0),
                Formats.fixed(after.price(), 0),
                all.study().heading().currency(),
                signed(after.price() - before.price(), 0),
                Formats.fixed(after.complexity(), 0),
                signed(after.complexity() - before.complexity(), 0),
                after.acts(),
                signed(after.acts() - before.acts(), 0));
    }

    /** A difference as one reads it. */
    static String signed(double difference, int decimals) {
        String number = Formats.fixed(Math.abs(difference), decimals);
        boolean none = Double.parseDouble(number) == 0;
        return none ? SAME : (difference < 0 ? "-" : "+") + number;
    }

    private static String troubles(Suggestion suggestion) {
        List<Worsening> troubles = suggestion.troubles();
        return troubles.isEmpty()
                ? "No new trouble."
                : counted(troubles.size(), "new trouble")
                        + ": "
                        + some(
                                troubles.stream()
                                        .map(t -> t.what() + " (" + t.comesTo() + ")")
                                        .toList())
                        + ".";
    }

    /** Which single failures lose the engine now, where some did not before. */
    static Optional<String> losses(Suggestion suggestion) {
        int brought = suggestion.losses().brought().size();
        int gone = suggestion.losses().gone().size();
        return brought == 0
                ? Optional.empty()
                : Optional.of(
                        counted(brought, "single failure")
                                + (brought == 1 ? " loses" : " lose")
                                + " the engine that did not before, "
                                + (gone == 0 ? "none" : gone)
                                + (gone > 1 ? " no longer do" : " no longer does")
                                + (suggestion.isOutweighed()
                                        ? ": it loses the engine in more ways than before."
                                        : "."));
    }

    /** What was looked at, and what was not. */
    public String done() {
        return done(all.done());
    }

    /** What a search looked at, and what it did not. */
    static String done(LookedAt done) {
        Tally tally = done.tally();
        String reach =
                "Looked at "
                        + counted(tally.tried(), "drawing")
                        + " of up to "
                        + counted(done.moves(), "move")
                        + ", "
                        + tally.met()
                        + " of which "
                        + (tally.met() == 1 ? "mends" : "mend")
                        + " something. "
                        + (tally.twice() + tally.outdone())
                        + " more came out twice or cannot be better, "
                        + tally.refused()
                        + " cannot be drawn.";
        return done.whole()
                ? reach + " That is all there is within so many moves of this catalogue."
                : reach
                        + " Not tried: "
                        + counted(tally.left(), "move")
                        + " that were known, and whatever follows from them.";
    }

    /** So many of a thing. */
    static String counted(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }

    private static String some(List<String> names) {
        int more = names.size() - NAMED;
        return names.stream().limit(NAMED).collect(Collectors.joining("; "))
                + (more > 0 ? "; and " + more + " more" : "");
    }
}
