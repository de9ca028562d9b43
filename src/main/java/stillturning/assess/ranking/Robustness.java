package stillturning.assess.ranking;

import java.util.Comparator;
import java.util.List;

/**
 * What becomes of the order when the weights are unknown, hard gates still first.
 *
 * @param weightings how many weightings were tried, evenly from all that are at least 0, sum to 1
 *     and agree with what is known of their order
 * @param shareError half width of the 95 % interval of the least exact share, from how much sets of
 *     weightings differ (1)
 * @param shares one for each candidate, in order of standing
 */
public record Robustness(int weightings, double shareError, List<RankShares> shares) {

    /** The same with the candidates in another order. */
    Robustness inOrderOf(List<String> names) {
        return new Robustness(
                weightings,
                shareError,
                shares.stream()
                        .sorted(Comparator.comparingInt(share -> names.indexOf(share.name())))
                        .toList());
    }
}
