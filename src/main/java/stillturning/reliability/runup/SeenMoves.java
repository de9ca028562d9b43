package stillturning.reliability.runup;

import java.util.List;
import java.util.Map;
import stillturning.story.PilotView;

/** Levers moved there and back, with what there is to see of it, nothing wrong. */
record SeenMoves(CheckMoves levers, PilotView before, PilotView then) {
    Map<String, String> moves() {
        return levers.moves();
    }

    List<Map<String, String>> steps() {
        return levers.steps();
    }
}
