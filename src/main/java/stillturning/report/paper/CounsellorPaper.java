package stillturning.report.paper;

import java.util.ArrayList;
import java.util.List;
import stillturning.assess.Assessment;
import stillturning.model.Study;
import stillturning.report.Cautions;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Words;
import stillturning.report.page.Document;
import stillturning.report.page.Document.Chapter;
import stillturning.report.page.Document.Imprint;

/** The whole document. */
public final class CounsellorPaper {

    private final Standpoint from;
    private final PaperContents contents;
    private final List<Chapter> chapters = new ArrayList<>();

    private CounsellorPaper(Assessment assessment, PaperContents contents) {
        this.from = new Standpoint(assessment);
        this.contents = contents;
    }

    /** The document; the same assessment and contents, the same document. */
    public static Document of(Assessment assessment, PaperContents contents) {
        return new CounsellorPaper(assessment, contents).document();
    }

    /** The two pages that stand alone. */
    public static List<Chapter> front(Assessment assessment, PaperContents contents) {
        return new CounsellorPaper(assessment, contents).front();
    }

    /** What stands behind the order of the candidates. */
    public static List<Chapter> decision(Assessment assessment, PaperContents contents) {
        return new CounsellorPaper(assessment, contents).decision();
    }

    private List<Chapter> decision() {
        return new DecisionPages(from).chapters(contents.pair());
    }

    private Document document() {
        rationale();
        add(
                "requirements",
                "Requirements, and what breaks each",
                new RequirementPages(from).blocks());
        chapters.addAll(decision());
        add(
                "weak-points",
                "Single points, latent failures, and what mends them",
                new WeakPointPages(from, contents.together()).blocks());
        CasePages cases = new CasePages(from, contents.cases());
        add("cases", "What happens if ...", cases.blocks());
        add(
                "stories",
                "The worst single failures, told",
                new StoryPages(from, cases.told(), contents.edition().stories()).blocks());
        add("layout", "How the chosen candidate is made", new LayoutPages(from).blocks());
        JointPages joint = new JointPages(from, contents.together());
        add("causes", "Common causes", joint.causes());
        add("loads", "Load analysis", new SizePages(from, contents.sizes()).loads());
        add(
                "sizes",
                "Sizes, and what is wrong with them",
                new SizePages(from, contents.sizes()).sizes());
        add("probability", "How likely it is that the engine ends", joint.chances());
        add(
                "assumptions",
                "Assumptions and sources",
                new SourcePages(from, contents.sources()).blocks());
        add(
                "not-analysed",
                "What was not analysed",
                NotAnalysed.blocks(from.assessment(), contents));
        add("cautions", "Before anything of this goes into an aircraft", cautions());
        return new Document(
                imprint(), front(), chapters, new CockpitCards(from, contents.found()).cards());
    }

    private List<Chapter> front() {
        return List.of(
                new Chapter(
                        "answer",
                        heading().title() + ": which electrical architecture?",
                        new AnswerSheet(from, contents.first()).blocks()),
                new Chapter(
                        "side-by-side",
                        "The candidates side by side",
                        new CandidatesPage(from, contents).blocks()));
    }

    private Study.StudyHeading heading() {
        return from.assessment().study().heading();
    }

    private void rationale() {
        if (!heading().rationale().isEmpty()) {
            List<Block> blocks = new ArrayList<>();
            heading().rationale().forEach(paragraph -> blocks.add(new Words(paragraph)));
            add("rationale", "The builder's rationale", blocks);
        }
    }

    private void add(String anchor, String title, List<Block> blocks) {
        chapters.add(new Chapter(anchor, title, blocks));
    }

    private List<Block> cautions() {
        return List.of(new Block.Points(Cautions.inFull(heading().invented())));
    }

    private Imprint imprint() {
        String invented = heading().invented() ? Cautions.inFull(true).get(0) + " " : "";
        return new Imprint(
                heading().title(),
                heading().about(),
                contents.edition().date(),
                contents.edition().version(),
                contents.sources().fingerprint(),
                invented + Cautions.SHORT);
    }
}
