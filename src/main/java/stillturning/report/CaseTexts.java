package stillturning.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.assess.CandidateCases;
import stillturning.assess.CandidateCases.Case;
import stillturning.assess.Verdict;
import stillturning.quantity.Formats;
import stillturning.report.StoryFacts.Fact;
import stillturning.report.TerminalColour.Ink;
import stillturning.report.TextTable.Cell;
import stillturning.report.TextTable.Column;
import stillturning.story.Story;

/** The study's own cases as text: what each does to each candidate, and what it means there. */
public final class CaseTexts {

    /** Stands where the candidate has no such thing. */
    static final String ABSENT = "no such part";

    private static final String UNTOLD = "cannot be computed";
    private static final String NONE = "-";

    private CaseTexts() {}

    /** One candidate's table. */
    public static List<String> table(CandidateCases of, TerminalColour paint) {
        TextTable table =
                new TextTable(
                        List.of(
                                Column.words("case", 20),
                                Column.words("outcome", 14),
                                Column.numbers("engine inter- rupted", 8),
                                Column.numbers("pilot as planned", 8),
                                Column.numbers("pilot late", 8),
                                Column.numbers("pilot never", 8),
                                Column.numbers("must act by", 8)));
        of.cases().forEach(one -> table.row(row(one)));
        return table.lines(paint);
    }

    private static List<Cell> row(Case one) {
        return one.worst()
                .map(verdict -> row(one.said(), verdict))
                .orElseGet(
                        () -> {
                            List<Cell> cells = new ArrayList<>();
                            cells.add(new Cell(one.said()));
                            cells.add(new Cell(one.absent() ? ABSENT : UNTOLD, Ink.FAINT));
                            while (cells.size() < 7) {
                                cells.add(new Cell(NONE, Ink.FAINT));
                            }
                            return cells;
                        });
    }

    private static List<Cell> row(String said, Verdict verdict) {
        return List.of(
                new Cell(said),
                new Cell(
                        OutcomeMark.of(verdict.outcome()).word(),
                        OutcomeMark.of(verdict.outcome()).ink()),
                new Cell(interrupted(verdict).orElse(NONE)),
                new Cell(StoryFacts.endurance(verdict.planned())),
                new Cell(StoryFacts.endurance(verdict.late())),
                new Cell(StoryFacts.endurance(verdict.unaided())),
                new Cell(verdict.actBySeconds().map(Formats::lasting).orElse(NONE)));
    }

    /** How long the engine is without what it needs, where it does not end it. */
    static Optional<String> interrupted(Verdict verdict) {
        Story planned = verdict.planned();
        if (planned.engine().stoppedAndCameBack()) {
            return Optional.of("stops");
        }
        double seconds = planned.engine().longestInterruptionSeconds();
        return seconds > 0
                ? Optional.of(Formats.fixed(seconds * 1e3, seconds < 0.01 ? 1 : 0) + " ms")
                : Optional.empty();
    }

    /** What each case means, in which candidates; and what could not be computed. */
    public static List<String> meanings(List<CandidateCases> all) {
        return facts(all).stream().map(f -> f.label() + ": " + f.value()).toList();
    }

    static List<Fact> facts(List<CandidateCases> all) {
        Map<String, Map<String, List<String>>> titlesByMeaning = new LinkedHashMap<>();
        for (CandidateCases of : all) {
            for (Case one : of.cases()) {
                titlesByMeaning
                        .computeIfAbsent(one.said(), s -> new LinkedHashMap<>())
                        .computeIfAbsent(meaning(one), m -> new ArrayList<>())
                        .add(of.candidate().title());
            }
        }
        List<Fact> facts = new ArrayList<>();
        titlesByMeaning.forEach((said, meanings) -> facts.add(new Fact(said, meaning(meanings))));
        return facts;
    }

    private static String meaning(Case one) {
        List<String> names =
                new ArrayList<>(one.verdicts().stream().map(v -> v.failure().name()).toList());
        one.untold().forEach(untold -> names.add(untold + " (" + UNTOLD + ")"));
        if (names.isEmpty()) {
            return ABSENT;
        }
        return names.size() == 1
                ? names.get(0)
                : "the worst of " + names.size() + ", " + String.join(", ", names);
    }

    /** The commonest meaning first, without its candidates where there is no other. */
    private static String meaning(Map<String, List<String>> titlesByMeaning) {
        List<String> sentences = new ArrayList<>();
        titlesByMeaning.forEach(
                (meaning, titles) ->
                        sentences.add(
                                titlesByMeaning.size() == 1
                                        ? meaning
                                        : meaning + " (" + String.join("; ", titles) + ")"));
        return String.join("; ", sentences);
    }
}
