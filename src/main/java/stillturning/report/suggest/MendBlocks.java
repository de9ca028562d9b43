package stillturning.report.suggest;

import static stillturning.report.table.Column.figures;
import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import stillturning.assess.suggest.LightestMends;
import stillturning.assess.suggest.LightestMends.LightMend;
import stillturning.assess.suggest.StudyMends;
import stillturning.assess.suggest.Suggestion;
import stillturning.assess.suggest.Suggestion.CandidateBurden;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Lead;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Words;
import stillturning.report.page.Document.Chapter;
import stillturning.report.table.Column;

/** The lightest change for each thing that is wrong with some candidates, as running text. */
public final class MendBlocks {

    private static final String ORDER =
            "For each hard requirement that is missed, and for each single failure that loses the"
                    + " engine, one change: of all that were found to mend it those with the fewest"
                    + " new troubles, and of these the lightest, then the cheapest, then the"
                    + " simplest. What is lighter still and brings more new troubles is told too. A"
                    + " new trouble is a failure that ends worse than before or is one of a new part"
                    + " and harms, or a requirement that is missed now. A change that brings more"
                    + " new single failures that lose the engine than it takes away is counted and"
                    + " not told.";

    private final StudyMends all;

    public MendBlocks(StudyMends all) {
        this.all = all;
    }

    /** It as a chapter of the page and of the document. */
    public Chapter chapter() {
        return new Chapter("mends", "What would mend what is wrong", all());
    }

    /** Everything, candidate by candidate. */
    public List<Block> all() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Lead(lead()));
        blocks.add(new Words(ORDER));
        wrong().forEach(mends -> blocks.addAll(of(mends)));
        blocks.add(new Heading("What was looked at, and what was not"));
        List<String> fine =
                all.candidates().stream()
                        .filter(mends -> mends.wanted().isNothing())
                        .map(MendBlocks::title)
                        .toList();
        if (!fine.isEmpty()) {
            blocks.add(
                    new Note(
                            "Nothing was looked for where no single failure loses the engine and"
                                    + " every hard requirement is met: "
                                    + String.join(", ", fine)
                                    + "."));
        }
        all.untold().forEach(words -> blocks.add(new Note("Cannot be computed: " + words + ".")));
        blocks.add(
                new Note(
                        "Each change was made alone and assessed in full, as any candidate of the"
                                + " study; two of them together may do more or less than both. Pairs"
                                + " of failures were not asked about. Simpler on paper is not yet"
                                + " buildable: lengths are those between zones, new parts are of the"
                                + " catalogue's usual classes, and nobody has looked whether there is"
                                + " room. Sizes are checked only where a requirement is about them."));
        return List.copyOf(blocks);
    }

    private List<LightestMends> wrong() {
        return all.candidates().stream().filter(mends -> !mends.wanted().isNothing()).toList();
    }

    private String lead() {
        int things = wrong().stream().mapToInt(mends -> mends.wanted().size()).sum();
        int left =
                wrong().stream()
                        .mapToInt(m -> m.unmended().size() + m.mendedAtALoss().size())
                        .sum();
        return things == 0
                ? "No single failure loses the engine, and every hard requirement is met."
                : "Of "
                        + SuggestionWords.counted(things, "thing")
                        + " that "
                        + (things == 1 ? "is" : "are")
                        + " wrong with "
                        + SuggestionWords.counted(wrong().size(), "candidate")
                        + ", "
                        + (things == left ? "none" : things - left)
                        + (things - left > 1 ? " are" : " is")
                        + " mended by a small change that was found.";
    }

    private static String title(LightestMends mends) {
        return mends.before().candidate().title();
    }

    private List<Block> of(LightestMends mends) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading(title(mends)));
        blocks.add(new Words(wrong(mends)));
        if (!mends.mends().isEmpty()) {
            blocks.add(table(mends));
            blocks.add(new Points(numbered(mends).stream().map(MendBlocks::told).toList()));
        }
        List<String> atALoss = mends.mendedAtALoss();
        if (!atALoss.isEmpty()) {
            blocks.add(
                    new Words(
                            "Mended by nothing but changes that bring more new single failures that"
                                    + " lose the engine than they take away: "
                                    + String.join("; ", atALoss)
                                    + "."));
        }
        SuggestionWords.outweighed(
                        mends.outweighed().size(), "the command suggest --lightest --all")
                .ifPresent(words -> blocks.add(new Words(words)));
        List<String> unmended = mends.unmended();
        if (!unmended.isEmpty()) {
            blocks.add(
                    new Words(
                            "Mended by nothing that was looked at: "
                                    + String.join("; ", unmended)
                                    + "."));
        }
        blocks.add(new Note(SuggestionWords.done(mends.done())));
        return blocks;
    }

    private static String wrong(LightestMends mends) {
        int failures = mends.wanted().failures().size();
        List<String> missed = mends.wanted().requirements();
        List<String> said = new ArrayList<>();
        if (failures > 0) {
            said.add(
                    SuggestionWords.counted(failures, "single failure")
                            + (failures == 1 ? " loses" : " lose")
                            + " the engine");
        }
        if (!missed.isEmpty()) {
            said.add("Missed: " + String.join("; ", missed));
        }
        return String.join(". ", said) + ".";
    }

    /** A change with its number. */
    private record Numbered(int number, LightMend mend, LightestMends of) {

        Suggestion change() {
            return mend.suggestion();
        }

        String against(ToDoubleFunction<CandidateBurden> value, int decimals) {
            double before = value.applyAsDouble(change().before());
            double after = value.applyAsDouble(change().after());
            String words = SuggestionWords.signed(after - before, decimals);
            return words.equals(SuggestionWords.SAME) ? "0" : words;
        }
    }

    private static List<Numbered> numbered(LightestMends mends) {
        List<Numbered> numbered = new ArrayList<>();
        for (LightMend mend : mends.mends()) {
            numbered.add(new Numbered(numbered.size() + 1, mend, mends));
        }
        return numbered;
    }

    private static Grid table(LightestMends mends) {
        List<Column<Numbered>> columns =
                List.of(
                        figures("", 3, n -> String.valueOf(n.number)),
                        words("change", 34, n -> SuggestionWords.moves(n.change())),
                        figures(
                                "mends",
                                8,
                                n ->
                                        n.change().mended().mended().size()
                                                + " of "
                                                + n.of.wanted().size()),
                        figures("kg", 8, n -> n.against(CandidateBurden::kilograms, 2)),
                        figures("parts", 8, n -> n.against(CandidateBurden::parts, 0)),
                        figures(
                                mends.study().heading().currency(),
                                8,
                                n -> n.against(CandidateBurden::price, 0)),
                        figures("complexity", 10, n -> n.against(CandidateBurden::complexity, 0)),
                        figures("acts", 8, n -> n.against(CandidateBurden::acts, 0)),
                        figures(
                                "new troubles",
                                8,
                                n -> String.valueOf(n.change().troubles().size())));
        return Grid.of(numbered(mends), columns);
    }

    private static String told(Numbered numbered) {
        Suggestion change = numbered.change();
        LightMend mend = numbered.mend;
        Set<String> chosen = new HashSet<>(mend.first());
        chosen.addAll(mend.lighter());
        List<String> also =
                change.mended().mended().stream().filter(name -> !chosen.contains(name)).toList();
        return numbered.number
                + ": "
                + sentence("First choice for ", mend.first())
                + sentence(
                        "Lighter than the first choice, with more new troubles, for ",
                        mend.lighter())
                + sentence("Also mends ", also)
                + troubles(change)
                + SuggestionWords.losses(change).map(words -> " " + words).orElse("");
    }

    private static String sentence(String lead, List<String> names) {
        return names.isEmpty() ? "" : lead + String.join("; ", names) + ". ";
    }

    private static String troubles(Suggestion change) {
        return change.troubles().isEmpty()
                ? "No new trouble."
                : "New: "
                        + String.join(
                                "; ",
                                change.troubles().stream()
                                        .map(t -> t.what() + " (" + t.comesTo() + ")")
                                        .toList())
                        + ".";
    }
}
