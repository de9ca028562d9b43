package stillturning.reliability.likelihood;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import stillturning.model.Study;
import stillturning.reliability.combined.CombinedResult;
import stillturning.reliability.combined.Event;
import stillturning.reliability.combined.Event.EventKind;
import stillturning.story.Moment;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/**
 * Tells the sets with which nobody takes off: switches left so that the engine does not even run on
 * the ground.
 */
record NeverFlown(Study study, CombinedResult joint) implements Predicate<List<Integer>> {

    @Override
    public boolean test(List<Integer> set) {
        Map<String, String> levers = new LinkedHashMap<>();
        for (int number : set) {
            Event event = joint.events().get(number);
            if (event.kind() != EventKind.LEFT_SWITCH && event.kind() != EventKind.IDLE_PILOT) {
                return false;
            }
            levers.putAll(event.failure().levers());
        }
        return !levers.isEmpty() && !runs(levers);
    }

    /** Where nobody can say, it counts as flown. */
    private boolean runs(Map<String, String> levers) {
        try {
            Moment onTheGround = Moment.heldIn(study.goals().runUp().name());
            return new Timeline(study, joint.candidate().with(levers), onTheGround)
                    .normal()
                    .engineRuns();
        } catch (UntoldStory e) {
            return true;
        }
    }
}
