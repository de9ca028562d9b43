package stillturning.model;

import java.util.List;
import java.util.Map;

/**
 * What the pilot does about a cue.
 *
 * @param when names of the cues, any of which starts it
 * @param responseSeconds time from the cue to the moves (s)
 * @param moves position by lever
 * @param sheds loads switched off at their own switches
 */
public record Procedure(
        String name,
        List<String> when,
        double responseSeconds,
        Map<String, String> moves,
        List<String> sheds) {

    public Procedure {
        when = List.copyOf(when);
        sheds = List.copyOf(sheds);
        moves = Ordered.copyOf(moves);
    }
}
