package stillturning.desktop.viewmodel.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import stillturning.assess.Assessment;
import stillturning.assess.ranking.Contribution;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Standing;
import stillturning.model.goal.CriterionName;
import stillturning.quantity.UnitSystem;
import stillturning.report.Reasons;
import stillturning.report.ResultText;

/**
 * One candidate's place under the weights of now.
 *
 * @param statedRank its rank under the study's own weights
 * @param pieces what each criterion adds, in the study's order
 * @param requirements whether it meets what is required, in a few words with a sign
 * @param domination "not dominated", or by whom it is
 * @param shares how often it takes each rank when all weightings are equally likely
 * @param why the reasons, in a sentence
 */
public record RankRow(
        Standing standing,
        String title,
        int statedRank,
        List<PointsShare> pieces,
        String requirements,
        String domination,
        List<Double> shares,
        String why) {

    /**
     * What one criterion adds.
     *
     * @param points share of the candidate's points
     * @param value the candidate's value in words
     */
    public record PointsShare(CriterionName criterion, double points, String value) {}

    public RankRow {
        pieces = List.copyOf(pieces);
        shares = List.copyOf(shares);
    }

    /**
     * The ranking row by row, best first.
     *
     * @param now ranked by the weights of now
     * @param stated ranked by those of the study
     */
    static List<RankRow> of(Assessment now, Assessment stated, UnitSystem units) {
        if (now.ranking().isEmpty() || stated.ranking().isEmpty()) {
            return List.of();
        }
        RankingResult ranking = now.ranking().get();
        Reasons reasons = new Reasons(now, ranking);
        List<RankRow> rows = new ArrayList<>();
        for (int i = 0; i < ranking.standings().size(); i++) {
            Standing standing = ranking.standings().get(i);
            String id = standing.name();
            rows.add(
                    new RankRow(
                            standing,
                            title(now, id),
                            stated.ranking().get().standing(id).rank(),
                            pieces(now, standing, units),
                            requirements(now, standing),
                            domination(now, standing),
                            ranking.robustness().shares().get(i).byRank(),
                            reasons.of(id)));
        }
        return rows;
    }

    private static List<PointsShare> pieces(Assessment now, Standing standing, UnitSystem units) {
        List<PointsShare> pieces = new ArrayList<>();
        String currency = now.study().heading().currency();
        for (int i = 0; i < standing.contributions().size(); i++) {
            Contribution of = standing.contributions().get(i);
            CriterionName criterion = now.study().goals().weights().get(i).criterion();
            String value = ResultText.value(criterion, of.value(), currency, units);
            pieces.add(new PointsShare(criterion, of.points(), value));
        }
        return pieces;
    }

    private static String requirements(Assessment now, Standing standing) {
        if (!now.asksForAnything()) {
            return "nothing is required";
        }
        int missed = standing.missedGates().size();
        return missed == 0 ? "\u2713 meets every requirement" : "\u2716 misses " + missed;
    }

    private static String domination(Assessment now, Standing standing) {
        return standing.efficient()
                ? "not dominated"
                : "dominated by "
                        + standing.dominatedBy().stream()
                                .map(c -> title(now, c))
                                .collect(Collectors.joining(", "));
    }

    static String title(Assessment assessment, String candidate) {
        return assessment.study().candidate(candidate).map(c -> c.title()).orElse(candidate);
    }

    /** Id of the candidate. */
    public String id() {
        return standing.name();
    }

    /** From 1 for the best; level ones share a rank. */
    public int rank() {
        return standing.rank();
    }

    /** How it stands against the study's own weights, in a word or two; empty where alike. */
    public String shift() {
        if (rank() == statedRank) {
            return "";
        }
        return (rank() < statedRank ? "\u2191 from " : "\u2193 from ") + statedRank;
    }
}
