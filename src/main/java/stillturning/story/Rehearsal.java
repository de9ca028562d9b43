package stillturning.story;

import java.util.List;
import java.util.Optional;

/**
 * What came of levers moved step by step on the ground.
 *
 * @param views what there is to see at the end of each step
 * @param harm the first harm that a move did, if any
 */
public record Rehearsal(List<PilotView> views, Optional<AdverseEffect> harm) {

    /**
     * How quickly it goes.
     *
     * @param moveSeconds from one move of a step to the next (s)
     * @param heldSeconds how long a step is held after its last move (s)
     */
    public record MovePace(double moveSeconds, double heldSeconds) {}

    /**
     * A move.
     *
     * @param step step that it belongs to
     * @param number which move of the step, from 1
     * @param event index of the first event that may follow from it
     */
    public record Moved(int step, int number, String lever, int event) {}

    public Rehearsal {
        views = List.copyOf(views);
    }

    /**
     * Of what was seen, moved and told.
     *
     * @param moved in the order in which they were made
     * @param events everything that happened
     */
    public static Rehearsal of(List<PilotView> views, List<Moved> moved, List<StoryEvent> events) {
        Optional<AdverseEffect> harm = Optional.empty();
        for (int i = 0; i < moved.size() && harm.isEmpty(); i++) {
            Moved move = moved.get(i);
            int until = i + 1 < moved.size() ? moved.get(i + 1).event : events.size();
            harm =
                    events.subList(move.event, until).stream()
                            .filter(event -> AdverseEffect.is(event.kind()))
                            .findFirst()
                            .map(
                                    event ->
                                            new AdverseEffect(
                                                    move.step, move.number, move.lever, event));
        }
        return new Rehearsal(views, harm);
    }
}
