package stillturning.report.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.assess.Appraisal;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Words;
import stillturning.report.page.JointSection;
import stillturning.report.page.JointSection.JointChapter;
import stillturning.report.page.JointSection.JointSheet;

/** What failures do together, what takes several parts at once, and how likely it is. */
final class JointPages {

    private static final String CAUSES = "causes";
    private static final String PAIRS = "pairs";
    private static final List<Block> NOT_ASKED =
            List.of(new Words("Not asked for: explain --pairs adds it, and takes minutes."));

    private final Standpoint from;
    private final Optional<JointSection> together;

    JointPages(Standpoint from, Optional<JointSection> together) {
        this.from = from;
        this.together = together;
    }

    /** One candidate's answer to one question, if it was asked and could be computed. */
    static Optional<List<Block>> of(
            Appraisal appraisal, Optional<JointSection> together, String anchor) {
        return chapter(together, anchor)
                .flatMap(chapter -> sheet(appraisal, chapter))
                .map(JointSheet::blocks);
    }

    private static Optional<JointSheet> sheet(Appraisal appraisal, JointChapter chapter) {
        return chapter.sheets().stream()
                .filter(sheet -> sheet.title().equals(appraisal.candidate().title()))
                .findFirst();
    }

    private static Optional<JointChapter> chapter(Optional<JointSection> together, String anchor) {
        return together.flatMap(
                t -> t.chapters().stream().filter(c -> c.anchor().equals(anchor)).findFirst());
    }

    List<Block> causes() {
        return about(CAUSES);
    }

    List<Block> chances() {
        return about(PAIRS);
    }

    private List<Block> about(String anchor) {
        return chapter(together, anchor).map(this::told).orElse(NOT_ASKED);
    }

    private List<Block> told(JointChapter chapter) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Note(chapter.meaning()));
        from.chosen()
                .flatMap(chosen -> sheet(chosen, chapter))
                .ifPresent(
                        sheet -> {
                            blocks.add(new Heading(sheet.title()));
                            blocks.addAll(sheet.blocks().stream().map(this::labelled).toList());
                        });
        if (chapter.sheets().size() > 1) {
            blocks.add(
                    new Note(
                            "The same of the other "
                                    + (chapter.sheets().size() - 1)
                                    + " candidates stands on the page."));
        }
        return blocks;
    }

    private Block labelled(Block block) {
        return from.chosen().map(c -> Labelled.of(block, from.labels(c))).orElse(block);
    }
}
