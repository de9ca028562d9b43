package stillturning.reliability.groundtest;

import java.util.List;

/**
 * What can be shown of a candidate on the ground, step by step.
 *
 * @param candidate its id
 * @param phase in which the engine runs, where it does
 * @param notShown single failures that no step shows, in the candidate's order
 */
public record GroundTest(
        String candidate,
        String phase,
        TestPace pace,
        List<Stage> stages,
        List<NotShown> notShown) {

    /**
     * How quickly it goes.
     *
     * @param heldSeconds how long something stays open (s)
     * @param backSeconds how long one waits after it is put back, or a load is switched (s)
     */
    public record TestPace(double heldSeconds, double backSeconds) {}

    public GroundTest {
        stages = List.copyOf(stages);
        notShown = List.copyOf(notShown);
    }

    /** Every step, in order. */
    public List<TestStep> steps() {
        return stages.stream().flatMap(stage -> stage.steps().stream()).toList();
    }
}
