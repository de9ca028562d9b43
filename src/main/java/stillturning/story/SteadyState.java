package stillturning.story;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import stillturning.model.Returns;
import stillturning.model.Terminal;

/**
 * Voltages and currents of a candidate at one instant.
 *
 * @param amps current of each element from its {@code from} to its {@code to} (A), by part and
 *     element: {@code battery/cell}
 * @param nets voltage of each net (V)
 * @param charges state of charge of each battery, 0 to 1
 */
public record SteadyState(Map<String, Double> amps, NetVolts nets, Map<String, Double> charges) {

    /**
     * Voltages of a circuit.
     *
     * @param of net by terminal
     * @param returns where the returns meet
     * @param volts voltage of each net against one of those that it is joined to (V)
     * @param islands a number that nets share which something joins
     */
    public record NetVolts(
            Map<Terminal, Integer> of, Returns returns, List<Double> volts, List<Integer> islands) {
        public NetVolts {
            volts = List.copyOf(volts);
            islands = List.copyOf(islands);
        }

        private double between(Terminal from, Terminal to) {
            Integer one = of.get(from);
            Integer other = of.get(to);
            return one == null || other == null ? 0 : between(one, other);
        }

        private double between(int one, int other) {
            return joined(one, other) ? volts.get(one) - volts.get(other) : 0;
        }

        private boolean joined(int one, int other) {
            return islands.get(one).equals(islands.get(other));
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

    /** Voltage from one terminal of a part to another (V); 0 where nothing joins them. */
    public double volts(String part, String from, String to) {
        return nets.between(new Terminal(part, from), new Terminal(part, to));
    }

    /** Voltage of a terminal against where the returns meet (V); empty where nothing joins them. */
    public OptionalDouble voltsAt(String part, String terminal) {
        Integer net = nets.of.get(new Terminal(part, terminal));
        return net != null && nets.joined(net, nets.returns.of(net))
                ? OptionalDouble.of(nets.between(net, nets.returns.of(net)))
                : OptionalDouble.empty();
    }
}
