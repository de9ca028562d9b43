package stillturning.report.terminal;

import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import stillturning.assess.CandidateCases;
import stillturning.assess.CandidateCases.Case;
import stillturning.assess.verdict.Verdict;
import stillturning.quantity.Formats;
import stillturning.report.OutcomeMark;
import stillturning.report.StoryFacts;
import stillturning.report.StoryFacts.StoryFact;
import stillturning.report.table.Column;
import stillturning.report.table.Table;
import stillturning.report.table.TerminalColour;
import stillturning.report.table.TerminalColour.Ink;
import stillturning.report.table.TextTable;
import stillturning.story.Story;

/** The study's own cases as text: what each does to each candidate, and what it means there. */
public final class CaseTexts {

    /** Stands where the candidate has no such thing. */
    public static final String ABSENT = "no such part";

    private static final String UNTOLD = "cannot be computed";
    private static final String NONE = "-";

    private static final List<Column<Case>> COLUMNS =
            List.of(
                    words("case", 20, Case::said),
                    Column.<Case>words(
                                    "outcome",
                                    14,
                                    c ->
                                            mark(c).map(OutcomeMark::word)
                                                    .orElse(c.absent() ? ABSENT : UNTOLD))
                            .ink(c -> mark(c).map(OutcomeMark::ink).orElse(Ink.FAINT)),
                    worst("engine interrupted", 8, v -> interrupted(v).orElse(NONE)),
                    worst("pilot as planned", 8, v -> StoryFacts.endurance(v.planned())),
                    worst("pilot late", 8, v -> StoryFacts.endurance(v.late())),
                    worst("pilot never", 8, v -> StoryFacts.endurance(v.unaided())),
                    worst(
                            "must act by",
                            8,
                            v -> v.actBySeconds().map(Formats::lasting).orElse(NONE)));

    private CaseTexts() {}

    /** One candidate's table. */
    public static List<String> table(CandidateCases of, TerminalColour paint) {
        return TextTable.lines(new Table<>(COLUMNS, of.cases()), paint);
    }

    private static Column<Case> worst(String head, int widest, Function<Verdict, String> told) {
        return Column.<Case>figures(head, widest, c -> c.worst().map(told).orElse(NONE))
                .ink(c -> c.worst().isPresent() ? Ink.PLAIN : Ink.FAINT);
    }

    private static Optional<OutcomeMark> mark(Case one) {
        return one.worst().map(verdict -> OutcomeMark.of(verdict.outcome()));
    }

    /** How long the engine is without what it needs, where it does not end it. */
    public static Optional<String> interrupted(Verdict verdict) {
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

    public static List<StoryFact> facts(List<CandidateCases> all) {
        Map<String, Map<String, List<String>>> titlesByMeaning = new LinkedHashMap<>();
        for (CandidateCases of : all) {
            for (Case one : of.cases()) {
                titlesByMeaning
                        .computeIfAbsent(one.said(), s -> new LinkedHashMap<>())
                        .computeIfAbsent(meaning(one), m -> new ArrayList<>())
                        .add(of.candidate().title());
            }
        }
        List<StoryFact> facts = new ArrayList<>();
        titlesByMeaning.forEach(
                (said, meanings) -> facts.add(new StoryFact(said, meaning(meanings))));
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
