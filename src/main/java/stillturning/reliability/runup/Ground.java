package stillturning.reliability.runup;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.story.Moment;
import stillturning.story.Pilot;
import stillturning.story.Rehearsal;
import stillturning.story.Rehearsal.MovePace;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/** A candidate on the ground with the engine running, whose levers are moved step by step. */
final class Ground {

    private static final Failure NOTHING = new Failure("nothing", List.of(), Map.of());

    private final Timeline timeline;
    private final double moveSeconds;
    private final Map<Asked, Rehearsal> usual = new HashMap<>();

    private record Asked(
            List<Map<String, String>> steps, List<List<String>> orders, MovePace pace) {}

    Ground(Study study, Candidate candidate) throws UntoldStory {
        this.timeline =
                new Timeline(
                        SpareLoads.off(study),
                        candidate,
                        Moment.heldIn(study.goals().runUp().name()));
        this.moveSeconds = study.aircraft().moveSeconds();
    }

    /** From one move to the next (s). */
    double moveSeconds() {
        return moveSeconds;
    }

    /** With a failure, before anything is moved, then step by step. */
    Rehearsal play(Failure failure, List<Map<String, String>> steps, double heldSeconds)
            throws UntoldStory {
        return play(failure, steps, new MovePace(moveSeconds, heldSeconds));
    }

    /** With nothing wrong: asked again for every failure, so kept. */
    Rehearsal usual(List<Map<String, String>> steps, double heldSeconds) throws UntoldStory {
        return usual(steps, new MovePace(moveSeconds, heldSeconds));
    }

    /** The same by a hand that takes three times as long. */
    Rehearsal slowly(List<Map<String, String>> steps, double heldSeconds) throws UntoldStory {
        return usual(steps, new MovePace(Pilot.LATE.responseSeconds(moveSeconds), heldSeconds));
    }

    /** The same as if each step were one stroke, which no hand can do. */
    Rehearsal inOneStroke(List<Map<String, String>> steps, double heldSeconds) throws UntoldStory {
        return usual(steps, new MovePace(0, heldSeconds));
    }

    private Rehearsal usual(List<Map<String, String>> steps, MovePace pace) throws UntoldStory {
        Asked asked =
                new Asked(steps, steps.stream().map(s -> List.copyOf(s.keySet())).toList(), pace);
        Rehearsal known = usual.get(asked);
        if (known == null) {
            known = play(NOTHING, steps, pace);
            usual.put(asked, known);
        }
        return known;
    }

    private Rehearsal play(Failure failure, List<Map<String, String>> steps, MovePace pace)
            throws UntoldStory {
        List<Map<String, String>> all = new ArrayList<>();
        all.add(Map.of());
        all.addAll(steps);
        return timeline.rehearse(failure, all, pace);
    }
}
