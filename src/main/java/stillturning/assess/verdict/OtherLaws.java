package stillturning.assess.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.assess.verdict.Remark.Topic;
import stillturning.parts.element.curve.Overcharge;
import stillturning.story.Setting.Laws;
import stillturning.story.StoryEvent;

/**
 * Where an outcome hangs on what only a measurement tells, the other outcome stands beside it.
 *
 * <p>Whether a runaway reaches what stops it hangs on the law by which full batteries gas; whether
 * a battery behind some resistance still steadies an alternator hangs on a margin that is guessed,
 * so half and twice of it are tried.
 */
final class OtherLaws {

    private static final double HALF = 0.5;
    private static final double TWICE = 2;

    private OtherLaws() {}

    /**
     * What comes of it under other laws, where that is another outcome.
     *
     * @param under the outcome under other laws
     */
    static List<Remark> of(Verdict typical, Function<Laws, Outcome> under) {
        List<Remark> remarks = new ArrayList<>();
        if (!typical.unaided().of(StoryEvent.Kind.BATTERY_GASSES).isEmpty()) {
            for (Overcharge law : List.of(Overcharge.EARLY, Overcharge.LATE)) {
                Outcome other = under.apply(Laws.with(law));
                if (other != typical.outcome()) {
                    remarks.add(byGassing(law, other));
                }
            }
        }
        Set<String> alternators =
                Stream.of(typical.planned(), typical.unaided())
                        .flatMap(story -> story.measured().doubtfullySteadied().stream())
                        .collect(Collectors.toSet());
        if (!alternators.isEmpty()) {
            String whose = alternators.stream().sorted().collect(Collectors.joining(", "));
            for (double factor : List.of(HALF, TWICE)) {
                Outcome other = under.apply(Laws.withSteadying(factor));
                if (other != typical.outcome()) {
                    remarks.add(bySteadying(whose, factor, other));
                }
            }
        }
        return remarks;
    }

    private static Remark byGassing(Overcharge law, Outcome outcome) {
        String gasses =
                switch (law) {
                    case EARLY -> "at less voltage than is typical";
                    case TYPICAL -> "as is typical";
                    case LATE -> "at more voltage than is typical";
                };
        return new Remark(
                Topic.OVERCHARGE,
                "where a full battery gasses "
                        + gasses
                        + ", which only a measurement tells: "
                        + outcome.words());
    }

    private static Remark bySteadying(String alternators, double factor, Outcome outcome) {
        return new Remark(
                Topic.STEADYING,
                "where "
                        + (factor < 1 ? "half" : "twice")
                        + " the resistance behind which a battery steadies "
                        + alternators
                        + " is the limit, which is a guess: "
                        + outcome.words());
    }
}
