package stillturning.report.pair;

import java.util.List;
import java.util.Optional;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.CandidateDifferences;
import stillturning.assess.exchange.Attribution;
import stillturning.assess.ranking.RankingResult;

/**
 * Two candidates held against each other.
 *
 * @param two just these two, assessed and ranked
 * @param ranking their order
 * @param mixes from the first to the second
 * @param marks how well the values of either are known, if somebody looked
 * @param aside requirements that they are not held against here, in words
 */
public record PairQuestion(
        Assessment two,
        RankingResult ranking,
        Attribution mixes,
        Optional<ValueMarks> marks,
        List<String> aside) {

    public PairQuestion {
        aside = List.copyOf(aside);
    }

    /** Who is ahead, by how much, and with equal batteries. */
    public String verdict() {
        return new PairVerdict(this).first();
    }

    /** What is bought, what is paid, and what would have to be true for the other answer. */
    public List<String> paragraph() {
        return new PairVerdict(this).paragraph();
    }

    Appraisal one() {
        return two.appraisals().get(0);
    }

    Appraisal other() {
        return two.appraisals().get(1);
    }

    /** What the second has, lacks and suffers against the first. */
    public CandidateDifferences differences() {
        return CandidateDifferences.of(other(), one());
    }

    /** What the controllers of either do. */
    public List<ControllerUse> controllers(Appraisal candidate) {
        return ControllerUse.of(
                candidate.candidate(), two.study().aircraft().engine().logic().loads());
    }
}
