package stillturning.story;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import stillturning.model.Terminal;

/**
 * Voltages and currents of a candidate at one instant.
 *
 * @param amps current of each element from its {@code from} to its {@code to} (A), by part and
 *     element: {@code battery/cell}
 * @param nets voltage of each net against the structure (V)
 * @param charges state of charge of each battery, 0 to 1
 */
public record SteadyState(Map<String, Double> amps, NetVolts nets, Map<String, Double> charges) {

    /**
     * Voltages of a circuit.
     *
     * @param of net by terminal
     * @param volts voltage of each net against the structure (V)
     */
    public record NetVolts(Map<Terminal, Integer> of, List<Double> volts) {
        private double at(Terminal terminal) {
            Integer net = of.get(terminal);
            return net == null ? 0.0 : volts.get(net);
        }
    }

    public SteadyState {
        amps = Collections.unmodifiableMap(amps);
        charges = Collections.unmodifiableMap(charges);
    }

    /** Current of an element (A); 0 where the element is gone. */
    public double amps(String part, String element) {
        return amps.getOrDefault(part + "/" + element, 0.0);
    }

    /** Voltage from one terminal of a part to another (V). */
    public double volts(String part, String from, String to) {
        return at(part, from) - at(part, to);
    }

    private double at(String part, String name) {
        return nets.at(new Terminal(part, name));
    }
}
