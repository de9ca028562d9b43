package stillturning.reliability.chance;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How likely it is that at least one cut set comes true in a flight, in the mean of everything that
 * the rates may be.
 *
 * @param flightSeconds length of the flight (s)
 * @param average of all flights between two inspections
 * @param last the flight just before all inspections
 * @param cutSetsByOrder number of minimal cut sets by the number of their events
 */
public record TopChance(
        double flightSeconds,
        Estimate average,
        Estimate last,
        SortedMap<Integer, Integer> cutSetsByOrder) {

    static final double HOUR_SECONDS = 3600;

    public TopChance {
        cutSetsByOrder = Collections.unmodifiableSortedMap(new TreeMap<>(cutSetsByOrder));
    }

    /** The average flight's probability over its length (1/h). */
    public Estimate averagePerHour() {
        return average.times(HOUR_SECONDS / flightSeconds);
    }

    /** The last flight's probability over its length (1/h). */
    public Estimate lastPerHour() {
        return last.times(HOUR_SECONDS / flightSeconds);
    }
}
