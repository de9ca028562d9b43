package stillturning.model;

import java.util.List;
import java.util.Map;

/**
 * What the pilot can set, see and do in a candidate.
 *
 * @param flight position by lever in normal flight
 * @param masterOff position by lever in the drill that takes all power off the airframe; empty if
 *     the candidate has none
 * @param starting position by lever while the engine is started; others stand as in flight
 */
public record Cockpit(
        Map<String, String> flight,
        Map<String, String> masterOff,
        Map<String, String> starting,
        List<Cue> cues,
        List<Procedure> procedures) {

    public Cockpit {
        flight = Ordered.copyOf(flight);
        masterOff = Ordered.copyOf(masterOff);
        starting = Ordered.copyOf(starting);
        cues = List.copyOf(cues);
        procedures = List.copyOf(procedures);
    }

    /** One in which nothing is moved to start the engine. */
    public Cockpit(
            Map<String, String> flight,
            Map<String, String> masterOff,
            List<Cue> cues,
            List<Procedure> procedures) {
        this(flight, masterOff, Map.of(), cues, procedures);
    }
}
