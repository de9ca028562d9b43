package stillturning.report.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.report.PrintedNames;
import stillturning.report.page.Block;
import stillturning.report.page.Document.Chapter;
import stillturning.report.pair.PairBlocks;
import stillturning.report.pair.PairQuestion;
import stillturning.report.ranking.ComplexityBlocks;

/** Two candidates held against each other, and what complexity and the pilot's work consist of. */
final class DecisionPages {

    private final Standpoint from;

    DecisionPages(Standpoint from) {
        this.from = from;
    }

    /** Nothing of two candidates where there is only one, and nothing where there is none. */
    List<Chapter> chapters(Optional<PairQuestion> pair) {
        List<Chapter> chapters = new ArrayList<>();
        pair.map(two -> new Chapter("pair", "Two side by side, like for like", blocks(two)))
                .ifPresent(chapters::add);
        if (!from.ranked().isEmpty()) {
            chapters.add(
                    new Chapter(
                            "complexity",
                            "What complexity is made of, and what the pilot has to do",
                            complexity()));
        }
        return chapters;
    }

    private List<Block> blocks(PairQuestion pair) {
        List<Block> blocks = new PairBlocks(pair).all();
        for (var appraisal : pair.two().appraisals()) {
            PrintedNames labels = from.labels(appraisal);
            blocks = blocks.stream().map(block -> Labelled.of(block, labels)).toList();
        }
        return blocks;
    }

    private List<Block> complexity() {
        return ComplexityBlocks.of(from.assessment(), (a, words) -> from.labels(a).in(words));
    }
}
