package stillturning.assess.ranking;

import java.util.List;

/**
 * How often a candidate takes each rank when all weightings that are admissible are equally likely.
 *
 * @param byRank share of weightings for rank 1, 2, ...; candidates level with each other share
 *     their ranks evenly, so that rows and columns sum to 1
 * @param centralWeights mean weighting among those that put it first, in the criteria's order;
 *     empty where none was seen
 * @see "R. Lahdelma, P. Salminen, Operations Research 49(3) (2001) 444-454 (definitions read in a
 *     second source)"
 */
public record RankShares(String name, List<Double> byRank, List<Double> centralWeights) {}
