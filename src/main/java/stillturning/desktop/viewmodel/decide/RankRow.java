package stillturning.desktop.viewmodel.decide;

import java.util.List;
import stillturning.model.CriterionName;

/**
 * One candidate's place under the weights of now.
 *
 * @param rank 1 for the best; level ones share a rank
 * @param statedRank its rank under the study's own weights
 * @param points from 0 to 1
 * @param pieces what each criterion adds, in the study's order
 * @param missed hard requirements that it misses
 * @param domination "not dominated", or by whom it is
 * @param shares how often it takes each rank when all weightings are equally likely
 * @param why the reasons, in a sentence
 */
public record RankRow(
        String id,
        String title,
        int rank,
        int statedRank,
        double points,
        List<Piece> pieces,
        int missed,
        boolean efficient,
        String domination,
        List<Double> shares,
        String why) {

    /**
     * What one criterion adds.
     *
     * @param points share of the candidate's points
     * @param worth from 0 for the worst of the candidates to 1 for the best
     * @param value the candidate's value in words
     */
    public record Piece(CriterionName criterion, double points, double worth, String value) {}

    public RankRow {
        pieces = List.copyOf(pieces);
        shares = List.copyOf(shares);
    }

    /** How it stands against the study's own weights, in a word or two; empty where alike. */
    public String shift() {
        if (rank == statedRank) {
            return "";
        }
        return (rank < statedRank ? "\u2191 from " : "\u2193 from ") + statedRank;
    }
}
