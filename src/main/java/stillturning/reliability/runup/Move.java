package stillturning.reliability.runup;

import java.util.List;
import java.util.Map;
import stillturning.story.PilotView;

/**
 * Levers moved and moved back, in an order that does no harm, with what there is to see of it,
 * nothing wrong.
 */
record Move(Map<String, String> moves, Map<String, String> back, PilotView before, PilotView then) {
    List<Map<String, String>> steps() {
        return List.of(moves, back);
    }
}
