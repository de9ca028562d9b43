package stillturning.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the pilot can set, see and do in a candidate.
 *
 * @param flight position by lever in normal flight
 * @param masterOff position by lever in the drill that takes all power off the airframe; empty if
 *     the candidate has none
 * @param starting position by lever while the engine is started; others stand as in flight
 * @param reach from where the pilot can move a lever; of one that is not there nobody says
 */
public record Cockpit(
        Map<String, String> flight,
        Map<String, String> masterOff,
        Map<String, String> starting,
        List<Cue> cues,
        List<Procedure> procedures,
        Map<String, Reach> reach) {

    public Cockpit {
        reach = Map.copyOf(reach);
        flight = Ordered.copyOf(flight);
        masterOff = Ordered.copyOf(masterOff);
        starting = Ordered.copyOf(starting);
        cues = List.copyOf(cues);
        procedures = List.copyOf(procedures);
    }

    /** One of which nobody says what is in reach. */
    public Cockpit(
            Map<String, String> flight,
            Map<String, String> masterOff,
            Map<String, String> starting,
            List<Cue> cues,
            List<Procedure> procedures) {
        this(flight, masterOff, starting, cues, procedures, Map.of());
    }

    /** From where the pilot can move a lever, if anybody says it. */
    public Optional<Reach> reachOf(String lever) {
        return Optional.ofNullable(reach.get(lever));
    }

    /** The same with levers standing elsewhere in normal flight. */
    public Cockpit standing(Map<String, String> elsewhere) {
        return new Cockpit(elsewhere, masterOff, starting, cues, procedures, reach);
    }

    /** The same with other procedures. */
    public Cockpit with(List<Procedure> others) {
        return new Cockpit(flight, masterOff, starting, cues, others, reach);
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
