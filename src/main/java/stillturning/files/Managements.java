package stillturning.files;

import java.util.Optional;
import stillturning.files.entry.ManagementEntry;
import stillturning.files.entry.ManagementEntry.ReconnectsEntry;
import stillturning.parts.element.Management;
import stillturning.parts.element.Management.Limit;
import stillturning.parts.element.Management.Reconnection;
import stillturning.parts.element.Management.Temperatures;
import stillturning.yaml.notation.Given;

/** Makes battery managements of their entries. */
final class Managements {

    /** A charger is at work where the terminals of a nominal 12 V battery see this (V). A guess. */
    private static final double CHARGER_VOLTS = 13;

    /** A battery that was too hot has to cool by so much (K). A guess. */
    private static final double COOLS_BY_KELVIN = 10;

    private Managements() {}

    /**
     * @param blocks how many times 12 V the battery has
     */
    static Management of(ManagementEntry entry, double blocks) {
        ReconnectsEntry back = entry.reconnects();
        boolean watched = entry.hot().isPresent() || entry.coldForCharging().isPresent();
        belongs(
                "times.charge-current",
                entry.times().chargeCurrent(),
                "charge-current",
                entry.chargeCurrent().isPresent());
        belongs(
                "times.temperature",
                entry.times().temperature(),
                "hot or cold-for-charging",
                watched);
        belongs("reconnects.cooled", back.cooled(), "hot", entry.hot().isPresent());
        double overVolts = si(entry.overVoltage());
        Limit charger =
                new Limit(or(back.charger(), CHARGER_VOLTS * blocks), si(back.chargerFor()));
        return new Management(
                limit(entry, si(entry.underVoltage()), entry.times().underVoltage()),
                limit(entry, overVolts, entry.times().overVoltage()),
                limit(entry, si(entry.overCurrent()), entry.times().overCurrent()),
                limit(
                        entry,
                        or(entry.chargeCurrent(), Double.POSITIVE_INFINITY),
                        entry.times().chargeCurrent()),
                temperatures(entry),
                new Reconnection(
                        charger, or(back.below(), overVolts), si(back.pause()), back.tries()));
    }

    private static Optional<Temperatures> temperatures(ManagementEntry entry) {
        if (entry.hot().isEmpty() && entry.coldForCharging().isEmpty()) {
            return Optional.empty();
        }
        double hot = or(entry.hot(), Double.POSITIVE_INFINITY);
        double cold = or(entry.coldForCharging(), Double.NEGATIVE_INFINITY);
        return Optional.of(
                new Temperatures(
                        limit(entry, hot, entry.times().temperature()),
                        limit(entry, cold, entry.times().temperature()),
                        or(entry.reconnects().cooled(), hot - COOLS_BY_KELVIN)));
    }

    /** What says more about something else is nothing without it. */
    private static void belongs(String key, Optional<Given> written, String to, boolean there) {
        if (written.isPresent() && !there) {
            throw new IllegalArgumentException(
                    "battery management: " + key + " stands there without " + to);
        }
    }

    private static Limit limit(ManagementEntry entry, double at, Optional<Given> seconds) {
        return new Limit(at, si(seconds.orElse(entry.after())));
    }

    private static double or(Optional<Given> given, double otherwise) {
        return given.map(Managements::si).orElse(otherwise);
    }

    private static double si(Given given) {
        return given.quantity().si();
    }
}
