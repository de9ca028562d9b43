package stillturning.sizing.result;

import java.util.List;
import stillturning.model.wiring.PublishedLimits;

/**
 * All wires, what they drop, and where they pass.
 *
 * @param circuits each input of each load
 * @param mains each source and each bus that it feeds without another bus between
 * @param passages where wires pass together; none where only a quick look was taken
 */
public record WireSchedule(
        List<WireSize> wires,
        List<LoadCircuit> circuits,
        List<MainCircuit> mains,
        List<WirePassage> passages) {

    /**
     * The wires from a bus to a load and back.
     *
     * @param name load, or load and input
     * @param wires the wires that drop
     * @param amps current with nothing wrong, of all of the load where it has several inputs (A)
     * @param metres length out and back (m)
     * @param drop what the wires drop, warm
     * @param supply lowest voltage across the load with nothing wrong
     */
    public record LoadCircuit(
            String name,
            List<String> wires,
            double amps,
            double metres,
            VoltageDrop drop,
            LowestSupply supply) {
        public LoadCircuit {
            wires = List.copyOf(wires);
        }
    }

    /** A drop (V), the largest allowed (V), and whether the load counts as continuous. */
    public record VoltageDrop(double volts, double limitVolts, boolean continuous) {
        /** Whether it is within its limit, as the published charts round it. */
        public boolean within() {
            return volts <= limitVolts * PublishedLimits.ROUNDING;
        }
    }

    /**
     * The lowest voltage across a load while something leads to it.
     *
     * @param volts the voltage; not a number where nothing ever leads to it, or it never runs (V)
     * @param minimumVolts the least it needs (V)
     * @param phase when that is
     * @param without first phase in which it should run and nothing leads to it; may be empty
     */
    public record LowestSupply(double volts, double minimumVolts, String phase, String without) {}

    /**
     * The wires from a source to a bus.
     *
     * @param amps rated current, or that of discharge in five minutes; no more than its protector's
     *     rating (A)
     * @param drop what the wires drop
     */
    public record MainCircuit(
            String source, String bus, List<String> wires, double amps, VoltageDrop drop) {
        public MainCircuit {
            wires = List.copyOf(wires);
        }
    }

    public WireSchedule {
        wires = List.copyOf(wires);
        circuits = List.copyOf(circuits);
        mains = List.copyOf(mains);
        passages = List.copyOf(passages);
    }
}
