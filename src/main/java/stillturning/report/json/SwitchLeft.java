package stillturning.report.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import stillturning.assess.LeftSwitch;

/**
 * A switch left in a wrong position before the flight; no outcome where the engine does not run.
 */
record SwitchLeft(
        String lever,
        String normally,
        String position,
        boolean engineRunsOnTheGround,
        List<String> cues,
        @Nullable String outcome,
        @Nullable Lasting pilotAsPlanned) {

    static SwitchLeft of(LeftSwitch one) {
        return new SwitchLeft(
                one.lever(),
                one.normally(),
                one.position(),
                one.atRest().engineRuns(),
                one.cues(),
                one.verdict().map(v -> JsonNumbers.kebab(v.outcome())).orElse(null),
                one.verdict().map(v -> Lasting.of(v.planned().engine().endurance())).orElse(null));
    }
}
