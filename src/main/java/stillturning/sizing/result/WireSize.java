package stillturning.sizing.result;

import java.util.List;
import java.util.Optional;
import stillturning.model.Installation.Lay;
import stillturning.model.Terminal;
import stillturning.parts.Cable;
import stillturning.parts.Wire;

/**
 * One wire against its limits.
 *
 * @param ends where it leads
 * @param normal largest current with nothing wrong
 * @param worst largest current with at most one failure, shorts apart
 * @param guard what opens when it is shorted, if anything does
 * @param smallest the thinnest size that meets every rule, if one does
 */
public record WireSize(
        Wire wire,
        WireEnds ends,
        Carried normal,
        Carried worst,
        Capability can,
        Optional<WireGuard> guard,
        Optional<Cable> smallest) {

    /**
     * Where a wire leads.
     *
     * @param from terminal at its first end
     * @param to terminal at its second end
     * @param zones zones of both
     * @param said what is said of it
     */
    public record WireEnds(Terminal from, Terminal to, List<String> zones, Lay said) {
        public WireEnds {
            zones = List.copyOf(zones);
        }

        public String fromPart() {
            return from.part();
        }

        public String toPart() {
            return to.part();
        }
    }

    /**
     * What a wire can carry where it lies.
     *
     * @param amps continuous current (A)
     * @param harnessAmps published current in a full harness at 60 000 ft (A), 150 °C insulation
     * @param conductorCelsius temperature of its conductor at its worst current (°C)
     * @param ambientCelsius temperature around it (°C)
     * @param insulationCelsius what its insulation withstands continuously (°C)
     * @param bundleWires wires in its bundle, itself counted
     */
    public record Capability(
            double amps,
            double harnessAmps,
            double conductorCelsius,
            double ambientCelsius,
            double insulationCelsius,
            int bundleWires) {}

    /**
     * What protects a wire.
     *
     * @param breaker whether the breaker column of the chart counts, or the fuse column
     * @param largestAmps largest rating that the chart has for this wire (A), if it has one
     * @param inLine whether all current of the wire passes it, or it lies farther up
     */
    public record WireGuard(
            String part,
            boolean breaker,
            double ratedAmps,
            Optional<Double> largestAmps,
            boolean inLine) {
        /** Whether the chart has it for this wire. */
        public boolean suits() {
            return largestAmps.filter(most -> most >= ratedAmps).isPresent();
        }
    }

    /** What it can carry over what it carries at worst; infinite if it carries nothing. */
    public double slack() {
        return worst.amps() > 0 ? can.amps() / worst.amps() : Double.POSITIVE_INFINITY;
    }
}
