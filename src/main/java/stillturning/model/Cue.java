package stillturning.model;

import java.util.Optional;

/**
 * Something that a pilot notices.
 *
 * @param name what the procedures call it
 * @param sign what happens
 * @param shownBy load that must work for him to see it; empty for a lamp or for the noise stopping
 */
public record Cue(String name, Sign sign, Optional<String> shownBy) {

    /** What the cue watches. */
    public sealed interface Sign {}

    /** The voltage of a terminal against the structure stays below a limit (V) for a time (s). */
    public record LowVolts(Terminal at, double volts, double seconds) implements Sign {}

    /** The voltage of a terminal against the structure stays above a limit (V) for a time (s). */
    public record HighVolts(Terminal at, double volts, double seconds) implements Sign {}

    /** An alternator stops delivering. */
    public record AlternatorOut(String alternator) implements Sign {}

    /** A load stops working. */
    public record LoadStops(String load) implements Sign {}

    /** The engine stops. */
    public record EngineStops() implements Sign {}
}
