package stillturning.model;

/**
 * A part of the flight.
 *
 * @param seconds how long it lasts (s)
 * @param alternatorRevsPerSecond alternator speed while the engine runs (revolutions per second)
 * @param engineOff whether the engine is off on purpose, as in a glider that soars
 */
public record Phase(
        String name, double seconds, double alternatorRevsPerSecond, boolean engineOff) {

    /** A phase in which the engine runs. */
    public Phase(String name, double seconds, double alternatorRevsPerSecond) {
        this(name, seconds, alternatorRevsPerSecond, false);
    }
}
