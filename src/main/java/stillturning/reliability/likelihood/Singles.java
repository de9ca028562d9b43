package stillturning.reliability.likelihood;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stillturning.model.Candidate.Hit;
import stillturning.model.Chances.Mode;
import stillturning.reliability.combined.Event;

/** Finds the single failures that a common cause is made of. */
final class Singles {

    private final Map<Mode, Integer> numbers = new HashMap<>();

    Singles(List<Event> events) {
        for (int event = 0; event < events.size(); event++) {
            if (events.get(event).kind() == Event.EventKind.FAILURE) {
                numbers.putIfAbsent(Mode.of(events.get(event).failure().hits().get(0)), event);
            }
        }
    }

    /**
     * Numbers of the single failures that this event brings together.
     *
     * @throws IllegalArgumentException if one of them is no event
     */
    List<Integer> within(Event event) {
        List<Integer> found = new ArrayList<>();
        for (Hit hit : event.failure().hits()) {
            Integer number = numbers.get(Mode.of(hit));
            if (number == null) {
                throw new IllegalArgumentException(
                        event.name() + " brings " + Mode.of(hit) + ", which is no event by itself");
            }
            found.add(number);
        }
        return found;
    }
}
