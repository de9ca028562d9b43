package stillturning.report;

import java.util.List;
import java.util.stream.Stream;
import stillturning.assess.Assessment;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Robustness;
import stillturning.assess.ranking.WeightChange;
import stillturning.assess.ranking.WeightChange.Direction;
import stillturning.quantity.Formats;

/** How firmly the leader stands. */
public final class LeaderFirmness {
    private LeaderFirmness() {}

    /** How rank shares were counted, and how exact they are. */
    public static String method(Robustness robustness) {
        return robustness.weightings()
                + " weightings, evenly from all that are admissible; each share is good to \u00B1"
                + Formats.fixed(Math.max(0.01, 100 * robustness.shareError()), 2)
                + " percentage points.";
    }

    /** The changes of one weight that unseat the leader, smallest first, or that there is none. */
    public static List<String> unseating(Assessment assessment, RankingResult ranking) {
        FirstPlace first = new FirstPlace(assessment, ranking);
        if (first.shared()) {
            return Stream.concat(
                            Stream.of("First place is shared by " + first.titles() + "."),
                            first.sharing().stream())
                    .toList();
        }
        if (ranking.unseatedBy().isEmpty()) {
            return List.of("No change of a single weight takes the first place from the leader.");
        }
        return ranking.unseatedBy().stream().map(c -> unseating(assessment, c)).toList();
    }

    private static String unseating(Assessment assessment, WeightChange change) {
        String title =
                assessment
                        .of(change.newLeader())
                        .map(a -> a.candidate().title())
                        .orElse(change.newLeader());
        return "If the weight of \""
                + change.criterion()
                + "\" "
                + (change.direction() == Direction.RISES ? "rises" : "falls")
                + " from "
                + Formats.percent(change.from())
                + " to "
                + Formats.percent(change.to())
                + ", \""
                + title
                + "\" draws level.";
    }
}
