package stillturning.reliability.likelihood;

import java.util.List;

/**
 * One cut set's part in it.
 *
 * @param perFlight probability in the average flight, in the mean of what the rates may be
 * @param share of the sum over all sets that count, 0 to 1
 */
public record SetShare(List<Integer> events, double perFlight, double share) {
    public SetShare {
        events = List.copyOf(events);
    }
}
