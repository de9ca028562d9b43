package stillturning.report.paper;

import java.util.List;
import java.util.Optional;
import stillturning.assess.CandidateCases;
import stillturning.report.answer.FirstAnswer;
import stillturning.report.html.Sources;
import stillturning.report.joint.CombinedFindings;
import stillturning.report.page.JointSection;
import stillturning.report.pair.PairQuestion;
import stillturning.sizing.result.SizingReport;

/**
 * What goes into the document beside the assessment; lists in the order of the ranking.
 *
 * @param first the answer as the first screen gives it
 * @param pair two held against each other, if there are two
 * @param cases what the study's own cases do to each candidate
 * @param sizes of the candidates whose sizes were asked for
 * @param together what failures do together, if that was asked
 * @param found what it was made of, for the cards; none if that was not asked
 */
public record PaperContents(
        Edition edition,
        Sources sources,
        FirstAnswer first,
        Optional<PairQuestion> pair,
        List<CandidateCases> cases,
        List<SizingReport> sizes,
        Optional<JointSection> together,
        List<CombinedFindings> found) {

    /**
     * Which edition of the document it is.
     *
     * @param date as somebody gave it; empty if nobody did
     * @param version of the program
     * @param stories how many are told of the chosen candidate at most
     */
    public record Edition(String date, String version, int stories) {

        /** As many stories as somebody reads. */
        public static final int READ = 10;
    }

    public PaperContents {
        cases = List.copyOf(cases);
        sizes = List.copyOf(sizes);
        found = List.copyOf(found);
    }
}
