package stillturning.reliability.groundtest;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.model.Candidate.Hit;
import stillturning.model.Reach;

/**
 * Something that a hand opens or takes off, and puts back.
 *
 * @param terminal of the part, where it is taken off there; else empty
 * @param apart what is parted; empty where a lever is moved
 * @param levers where levers are moved; empty where something is parted
 * @param reach from where a lever can be moved, if anybody says it
 */
public record Hand(
        HandWay way,
        String part,
        String terminal,
        List<Hit> apart,
        Map<String, String> levers,
        Optional<Reach> reach) {

    /** How it is done, the easiest first. */
    public enum HandWay {
        LEVER,
        BREAKER,
        FUSE,
        CONNECTOR,
        WIRE,
        TERMINAL
    }

    public Hand {
        apart = List.copyOf(apart);
        levers = Map.copyOf(levers);
    }

    /** Whether it may be done while the propeller turns. */
    boolean whileItTurns() {
        return !levers.isEmpty() && reach.filter(from -> !from.onGround()).isEmpty();
    }
}
