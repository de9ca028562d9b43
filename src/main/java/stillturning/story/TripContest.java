package stillturning.story;

import java.util.List;

/**
 * What gave way first by too much current, and what its tolerance leaves open.
 *
 * @param winner the part that gave way
 * @param slowSeconds how long the slowest of its kind would take (s); infinite if it might carry
 *     the continuous current
 * @param rivals parts that were heating too and, if fast, might give way sooner than that
 */
public record TripContest(String winner, double slowSeconds, List<String> rivals) {

    public TripContest {
        rivals = List.copyOf(rivals);
    }
}
