package stillturning.reliability.cover;

import java.util.List;

/**
 * A set that may be chosen.
 *
 * @param cost of choosing it, at least 1
 * @param items that it covers, numbered from 0; none is allowed
 */
public record CoverSet(int cost, List<Integer> items) {

    /**
     * @throws IllegalArgumentException if the cost is below 1
     */
    public CoverSet {
        if (cost < 1) {
            throw new IllegalArgumentException("a cost of " + cost + " is below 1");
        }
        items = items.stream().distinct().sorted().toList();
    }
}
