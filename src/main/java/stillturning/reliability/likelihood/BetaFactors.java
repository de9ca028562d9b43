package stillturning.reliability.likelihood;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.model.Chances.Rate;
import stillturning.model.failure.Cause.CauseKind;
import stillturning.reliability.combined.Event;

/**
 * What units of one make or program leave to their common cause. The cause carries a share of the
 * rate of the unit that fails most often; each unit keeps the rest of its own.
 */
final class BetaFactors {

    private final Map<Integer, Integer> strongest = new HashMap<>();
    private final Map<Integer, Double> taken = new HashMap<>();

    /**
     * @param rates by event
     * @throws IllegalArgumentException if a cause takes more than its units have
     */
    BetaFactors(List<Event> events, Singles singles, List<Rate> rates) {
        for (int event = 0; event < events.size(); event++) {
            if (isShare(events.get(event))) {
                divide(event, events.get(event).name(), singles.within(events.get(event)), rates);
            }
        }
    }

    private static boolean isShare(Event event) {
        return event.cause()
                .filter(c -> c.kind() == CauseKind.FIRMWARE || c.kind() == CauseKind.ALIKE)
                .isPresent();
    }

    private void divide(int cause, String name, List<Integer> units, List<Rate> rates) {
        int most = units.get(0);
        for (int unit : units) {
            most = rates.get(unit).median() > rates.get(most).median() ? unit : most;
        }
        double whole = rates.get(most).median();
        double carried = rates.get(cause).median();
        if (carried > whole) {
            throw new IllegalArgumentException(
                    name + " happens at " + carried + ", more often than its units: " + whole);
        }
        strongest.put(cause, most);
        double beta = whole == 0 ? 0 : carried / whole;
        units.forEach(unit -> taken.merge(unit, beta, Double::sum));
    }

    /** Whether any cause goes by a share. */
    boolean any() {
        return !strongest.isEmpty();
    }

    /** The unit whose rate a cause has a share of, if it has. */
    Optional<Integer> strongest(int cause) {
        return Optional.ofNullable(strongest.get(cause));
    }

    /** Share of an event's rate that its common causes carry, 0 to 1. */
    double takenFrom(int event) {
        return Math.min(1, taken.getOrDefault(event, 0.0));
    }
}
