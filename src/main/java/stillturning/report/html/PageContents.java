package stillturning.report.html;

import java.util.List;
import java.util.Optional;
import stillturning.assess.CandidateCases;
import stillturning.assess.Guesses;
import stillturning.report.page.Document.Chapter;
import stillturning.report.page.ExplorerSection;
import stillturning.report.page.JointSection;
import stillturning.sizing.result.SizingReport;

/**
 * What goes on the page beside the assessment; lists in the order of the ranking.
 *
 * @param guesses what trying the guesses brought, if they were tried
 * @param cases what the study's own cases do to each candidate
 * @param sizes of the candidates whose sizes are to be shown
 * @param together what failures do together, if that was asked
 * @param front what stands alone above everything else
 * @param decision what stands behind the order of the candidates
 * @param explorer what lets a reader ask the page, if it can be asked
 * @param groundTest the plan of a test on the ground, if that was asked
 */
public record PageContents(
        Optional<Guesses> guesses,
        List<CandidateCases> cases,
        List<SizingReport> sizes,
        Optional<JointSection> together,
        FrontMatter front,
        List<Chapter> decision,
        Optional<ExplorerSection> explorer,
        Optional<Chapter> groundTest) {

    /** A page on which nothing stands before the question. */
    public PageContents(
            Optional<Guesses> guesses,
            List<CandidateCases> cases,
            List<SizingReport> sizes,
            Optional<JointSection> together) {
        this(
                guesses,
                cases,
                sizes,
                together,
                new FrontMatter("", List.of()),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    /**
     * What stands alone above everything else.
     *
     * @param lead who comes first, in one sentence; empty if only the assessment says it
     */
    public record FrontMatter(String lead, List<Chapter> chapters) {
        public FrontMatter {
            chapters = List.copyOf(chapters);
        }
    }

    public PageContents {
        cases = List.copyOf(cases);
        sizes = List.copyOf(sizes);
        decision = List.copyOf(decision);
    }
}
