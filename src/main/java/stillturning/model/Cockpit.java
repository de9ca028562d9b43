package stillturning.model;

import java.util.List;
import java.util.Map;

/**
 * What the pilot can set, see and do in a candidate.
 *
 * @param flight position by lever in normal flight
 * @param masterOff position by lever in the drill that takes all power off the airframe; empty if
 *     the candidate has none
 */
public record Cockpit(
        Map<String, String> flight,
        Map<String, String> masterOff,
        List<Cue> cues,
        List<Procedure> procedures) {

    public Cockpit {
        flight = Ordered.copyOf(flight);
        masterOff = Ordered.copyOf(masterOff);
        cues = List.copyOf(cues);
        procedures = List.copyOf(procedures);
    }
}
