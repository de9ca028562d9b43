package stillturning.story;

import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import stillturning.story.StateBar.Activity;

/**
 * A whole candidate at one settled instant of a story.
 *
 * <p>Elements go by part and element: {@code battery/cell}; what a converter gives goes by a name
 * of its own. Nets go by the number that they have in the candidate's circuit, which no failure
 * changes.
 */
public final class Snapshot {

    private final double seconds;
    private final double[] volts;
    private final double[] amps;
    private final Map<String, Integer> places;
    private final States states;
    private final Map<String, Double> charges;

    /**
     * What stands still between events.
     *
     * @param open elements that let no current through: open contacts, sources that give nothing
     * @param gaveWay elements that opened, burnt or broke by too much current or voltage
     * @param doings what the engine and each load does
     */
    public record States(Set<String> open, Set<String> gaveWay, Map<String, Activity> doings) {
        public States {
            open = Set.copyOf(open);
            gaveWay = Set.copyOf(gaveWay);
            doings = Map.copyOf(doings);
        }
    }

    /**
     * Takes copies of what is given.
     *
     * @param volts voltage of each net against the circuit's reference (V), 0 where nothing joins
     *     them
     * @param amps current of each element from its {@code from} to its {@code to} (A)
     * @param places which of them belongs to which element; never changed afterwards
     * @param charges state of charge of each battery, 0 to 1
     */
    public Snapshot(
            double seconds,
            double[] volts,
            double[] amps,
            Map<String, Integer> places,
            States states,
            Map<String, Double> charges) {
        this.seconds = seconds;
        this.volts = volts.clone();
        this.amps = amps.clone();
        this.places = places;
        this.states = states;
        this.charges = Collections.unmodifiableMap(new HashMap<>(charges));
    }

    /** Name of what a converter gives, by the name of what it draws. */
    public static String output(String element) {
        return element + " output";
    }

    /** When, counted from the failure (s). */
    public double seconds() {
        return seconds;
    }

    /** How many nets there are, those that only a fault has included. */
    public int nets() {
        return volts.length;
    }

    /** Voltage of a net against the circuit's reference (V); 0 where nothing joins them. */
    public double volts(int net) {
        return volts[net];
    }

    /** Current of an element (A); 0 where it is gone or its ends are one net. */
    public double amps(String element) {
        Integer place = places.get(element);
        return place == null ? 0 : amps[place];
    }

    /** Whether a failure has taken this element away, or it never carried anything. */
    public boolean lacks(String element) {
        return !places.containsKey(element);
    }

    /** Whether an element lets no current through. */
    public boolean open(String element) {
        return states.open.contains(element);
    }

    /** What stands still between events. */
    public States states() {
        return states;
    }

    /** What the engine ({@code engine}) or a load does; stopped where a failure took it away. */
    public Activity doing(String name) {
        return states.doings.getOrDefault(name, Activity.STOPPED);
    }

    /** State of charge of each battery, 0 to 1. */
    public Map<String, Double> charges() {
        return charges;
    }
}
