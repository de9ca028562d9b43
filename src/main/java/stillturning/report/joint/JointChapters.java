package stillturning.report.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import stillturning.model.Study;
import stillturning.report.Cautions;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Words;
import stillturning.report.page.JointSection;
import stillturning.report.page.JointSection.JointChapter;
import stillturning.report.page.JointSection.JointSheet;

/** The part of the page that is about failures together and hidden. */
public final class JointChapters {

    private JointChapters() {}

    /**
     * The section.
     *
     * @param found candidates in the order of the ranking
     * @param shared the same candidates, and those of which nothing could be found
     * @param untold candidates that could not be computed, with the reason
     */
    public static JointSection of(
            Study study,
            List<CombinedFindings> found,
            List<SharedFindings> shared,
            List<String> untold) {
        List<JointChapter> chapters = new ArrayList<>();
        chapters.add(
                new JointChapter(
                        "pairs",
                        "Failures together, and how likely",
                        PairSheet.MEANING,
                        sheets(found, one -> PairSheet.of(one, false), untold)));
        chapters.add(
                new JointChapter(
                        "causes",
                        "Common causes, and what the shape says",
                        CauseSheet.MEANING,
                        shared.stream()
                                .map(
                                        one ->
                                                sheet(
                                                        one.candidate().title(),
                                                        CauseSheet.of(one, false)))
                                .toList()));
        chapters.add(
                new JointChapter(
                        "latent",
                        "Latent failures",
                        LatentSheet.MEANING,
                        sheets(found, one -> LatentSheet.of(one, false), List.of())));
        chapters.add(
                new JointChapter(
                        "run-up",
                        "Run-up cards",
                        "One card a candidate, each to be printed by itself.",
                        found.stream().map(one -> card(study, one)).toList()));
        return new JointSection(chapters);
    }

    private static List<JointSheet> sheets(
            List<CombinedFindings> found,
            Function<CombinedFindings, List<Block>> blocks,
            List<String> untold) {
        List<JointSheet> sheets = new ArrayList<>();
        found.forEach(one -> sheets.add(sheet(one.candidate().title(), blocks.apply(one))));
        untold.forEach(
                reason -> sheets.add(sheet("Could not be computed", List.of(new Words(reason)))));
        return sheets;
    }

    private static JointSheet sheet(String title, List<Block> blocks) {
        return new JointSheet(title, false, List.of(), blocks);
    }

    private static JointSheet card(Study study, CombinedFindings one) {
        List<String> cautions = new ArrayList<>();
        if (study.heading().invented()) {
            cautions.add(Cautions.inFull(true).get(0));
        }
        cautions.add(Cautions.SHORT);
        return new JointSheet(
                "Run-up card: " + study.heading().title() + ", " + one.candidate().title(),
                true,
                cautions,
                RunUpSheet.of(one));
    }
}
