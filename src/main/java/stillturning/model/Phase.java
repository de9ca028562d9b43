package stillturning.model;

/**
 * A part of the flight.
 *
 * @param seconds how long it lasts (s)
 * @param alternatorRevsPerSecond alternator speed while the engine runs (revolutions per second)
 */
public record Phase(String name, double seconds, double alternatorRevsPerSecond) {}
