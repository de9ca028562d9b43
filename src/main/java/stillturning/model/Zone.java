package stillturning.model;

import java.util.Set;

/**
 * A place in the aircraft.
 *
 * @param side which side of the firewall
 * @param hazards what can happen there
 * @param celsius temperature of the air and of everything that does not warm itself (°C)
 */
public record Zone(
        String name, String label, FirewallSide side, Set<Hazard> hazards, double celsius) {

    /** Where nothing else is said: the temperature of most data sheets (°C). */
    public static final double USUAL_CELSIUS = 25;

    /** Which side of the firewall. */
    public enum FirewallSide {
        COLD,
        HOT
    }

    /** What can happen in a zone. */
    public enum Hazard {
        HEAT,
        WATER,
        CHAFE,
        IMPACT
    }

    public Zone {
        hazards = Set.copyOf(hazards);
        if (!(celsius > -273.15 && celsius < 1000)) {
            throw new IllegalArgumentException(name + ": " + celsius + " °C is no temperature");
        }
    }
}
