package stillturning.sizing.result;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One fuse, breaker or electronic trip against its limits.
 *
 * @param name the part, or part and channel
 * @param kind breaker, fuse or channel
 * @param ratedAmps rating (A)
 * @param normal largest current with nothing wrong
 * @param worst largest current with at most one failure, shorts apart
 * @param passes what it must let through for a time
 * @param fault the worst short behind it
 * @param wires wires in its line
 */
public record ProtectorSize(
        String name,
        ProtectorKind kind,
        double ratedAmps,
        Carried normal,
        Carried worst,
        Passes passes,
        WorstShort fault,
        List<String> wires) {

    /** What it is. */
    public enum ProtectorKind {
        BREAKER,
        FUSE,
        CHANNEL
    }

    /**
     * What it must let through for a time.
     *
     * @param inrush when its load is switched on
     * @param start while the engine is started
     */
    public record Passes(InrushCheck inrush, InrushCheck start) {}

    /**
     * A current for a time.
     *
     * @param amps 0 if nothing is said
     * @param letsThroughAmps largest current that surely does not open it in that time (A)
     */
    public record InrushCheck(double amps, double seconds, double letsThroughAmps) {
        /** Whether it may open. */
        public boolean opens() {
            return amps > letsThroughAmps;
        }
    }

    /**
     * The worst short behind it.
     *
     * @param amps current through it at the first instant, batteries full (A); not computed where
     *     only a limit that it breaks was asked for and it breaks none
     * @param canInterruptAmps what it can interrupt (A), if that is known
     */
    public record WorstShort(OptionalDouble amps, OptionalDouble canInterruptAmps) {
        /** Whether it is more than can be interrupted. */
        public boolean tooMuch() {
            return amps.isPresent()
                    && canInterruptAmps.isPresent()
                    && amps.getAsDouble() > canInterruptAmps.getAsDouble();
        }
    }

    public ProtectorSize {
        wires = List.copyOf(wires);
    }
}
