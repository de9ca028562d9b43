package stillturning.report.ranking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.ComplexityTurn;
import stillturning.assess.PilotBurden;
import stillturning.model.goal.ComplexityCount;
import stillturning.model.goal.ComplexityWeights;
import stillturning.quantity.Formats;
import stillturning.report.RankingOrder;
import stillturning.report.table.Column;
import stillturning.report.table.Table;

/** What complexity is made of, how the order hangs on it, and what the pilot has to do. */
public final class ComplexityTexts {

    private final Assessment assessment;
    private final List<Appraisal> ranked;
    private final ComplexityWeights weights;
    private final BiFunction<Appraisal, String, String> called;

    /** Texts of an assessment, with the names of its files. */
    public ComplexityTexts(Assessment assessment) {
        this(assessment, (candidate, words) -> words);
    }

    /**
     * Texts of an assessment.
     *
     * @param called words of a candidate with its names replaced by what people call things
     */
    public ComplexityTexts(Assessment assessment, BiFunction<Appraisal, String, String> called) {
        this.assessment = assessment;
        this.called = called;
        ranked = RankingOrder.of(assessment);
        weights = assessment.study().goals().preferences().complexity();
    }

    /** What stands beside the table of counts. */
    public List<String> method() {
        List<String> lines = new ArrayList<>();
        lines.add(
                "Complexity is the sum of these counts, each times its weight. Weights are guesses"
                        + " where the study states none; write your own as \"complexity\" in"
                        + " study.yaml.");
        for (int i = 0; i < ranked.size(); i++) {
            lines.add("(" + (i + 1) + ") " + ranked.get(i).candidate().title());
        }
        return List.copyOf(lines);
    }

    /** Why one of each counts at all. */
    public String reasons() {
        return "Why each counts: "
                + Arrays.stream(ComplexityCount.values())
                        .map(count -> count.words() + ", " + count.because())
                        .collect(Collectors.joining("; "))
                + ".";
    }

    /** A line for each count, a column for each candidate in order, and the sum below. */
    public Table<?> counts() {
        List<Column<Line>> columns = new ArrayList<>();
        columns.add(Column.words("count", 36, Line::words));
        columns.add(Column.figures("weight", 6, Line::weight));
        for (int i = 0; i < ranked.size(); i++) {
            int candidate = i;
            columns.add(Column.figures("(" + (i + 1) + ")", 7, line -> line.cells.get(candidate)));
        }
        return new Table<>(columns, lines());
    }

    /** A count, or their sum. */
    private record Line(String words, String weight, List<String> cells) {}

    private List<Line> lines() {
        List<ComplexityCount> all = List.of(ComplexityCount.values());
        List<String> weighed = Formats.alike(all.stream().map(weights::of).toList(), 3);
        List<Line> lines = new ArrayList<>();
        Iterator<String> weight = weighed.iterator();
        for (ComplexityCount count : all) {
            lines.add(
                    new Line(
                            count.words(),
                            weight.next(),
                            ranked.stream()
                                    .map(a -> a.measures().complexity().count(count))
                                    .map(String::valueOf)
                                    .toList()));
        }
        lines.add(
                new Line(
                        "complexity",
                        "",
                        Formats.alike(
                                ranked.stream()
                                        .map(a -> a.measures().complexity().index(weights))
                                        .toList(),
                                1)));
        return lines;
    }

    /** How the order hangs on the weights, a sentence each. */
    public List<String> sensitivity() {
        List<ComplexityTurn> turns = ComplexityTurn.of(assessment);
        if (turns.isEmpty()) {
            return List.of(
                    "The order stays whatever any one of these weights is, from nothing to three"
                            + " times as much.");
        }
        return Stream.concat(
                        Stream.of(
                                "Each weight tried alone, from nothing to three times as much;"
                                        + " the order changes here, and nowhere before:"),
                        turns.stream().map(this::sentence))
                .toList();
    }

    private String sentence(ComplexityTurn turn) {
        return "If one of \""
                + turn.count().words()
                + "\" counted "
                + Formats.significant(turn.to(), 3)
                + " instead of "
                + Formats.significant(turn.from(), 3)
                + ", "
                + title(turn.passing())
                + " would pass "
                + title(turn.passed())
                + " for place "
                + turn.place()
                + ".";
    }

    private record Asked(Appraisal of, PilotBurden.Task task) {}

    /** What each layout asks of its pilot, procedure by procedure. */
    public Table<?> pilot() {
        List<Asked> asked =
                ranked.stream()
                        .flatMap(
                                a ->
                                        a.measures().pilot().tasks().stream()
                                                .map(t -> new Asked(a, t)))
                        .toList();
        return new Table<>(
                List.of(
                        Column.<Asked>words("candidate", 30, a -> a.of.candidate().title()).once(),
                        Column.<Asked>words("procedure", 22, a -> called(a, a.task.name())),
                        Column.<Asked>figures("acts", 4, a -> String.valueOf(a.task.acts().size())),
                        Column.<Asked>words("due after", 12, ComplexityTexts::due),
                        Column.<Asked>words(
                                "acts", 40, a -> called(a, String.join(", ", a.task.acts())))),
                asked);
    }

    private String called(Asked asked, String words) {
        return called.apply(asked.of, words);
    }

    private static String due(Asked asked) {
        if (asked.task.when().isEmpty()) {
            return "own choice";
        }
        return Formats.duration(asked.task.dueSeconds())
                + (asked.task.byHeart() ? ", by heart" : "");
    }

    /** What has to be remembered, a sentence for each candidate. */
    public List<String> byHeart() {
        return ranked.stream().map(this::byHeart).toList();
    }

    private String byHeart(Appraisal appraisal) {
        PilotBurden pilot = appraisal.measures().pilot();
        int acts = pilot.byHeart().size();
        int others = pilot.withTimeInHand().size();
        String heart =
                acts == 0
                        ? "nothing to be done by heart"
                        : acts
                                + (acts == 1 ? " act" : " acts")
                                + " by heart, after "
                                + called.apply(appraisal, String.join(" or ", pilot.cuesToKnow()));
        return appraisal.candidate().title()
                + ": "
                + heart
                + "; "
                + others
                + (others == 1 ? " other" : " others")
                + " with time to read a card.";
    }

    private String title(String candidate) {
        return "\""
                + assessment.of(candidate).map(a -> a.candidate().title()).orElse(candidate)
                + "\"";
    }
}
