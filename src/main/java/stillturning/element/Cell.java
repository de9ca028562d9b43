package stillturning.element;

import java.util.Optional;

/**
 * A battery's chemistry between plus ({@code from}) and minus ({@code to}).
 *
 * @param ohms internal resistance (ohm)
 * @param chargeAtStart state of charge at the start of the flight, 0 to 1
 */
public record Cell(
        String name,
        String from,
        String to,
        OpenCircuit openCircuit,
        Capacity capacity,
        double ohms,
        double chargeAtStart,
        Optional<Management> management)
        implements Element {

    /**
     * Open-circuit voltage by charge.
     *
     * @param curve curve of a nominal 12 V battery
     * @param factor what its voltages are multiplied by: 2 for 24 V, 5/6 with one cell of six
     *     shorted
     */
    public record OpenCircuit(RestVoltage curve, double factor) {
        public OpenCircuit {
            Require.positive("battery", "voltage factor", factor);
        }

        /** Voltage (V) at a state of charge from 0 to 1. */
        public double voltsAt(double charge) {
            return factor * curve.voltsAt(charge);
        }

        /** Voltage (V) on one straight piece of the curve. */
        public double voltsOn(int piece, double charge) {
            return factor * curve.voltsOn(piece, charge);
        }
    }

    public Cell {
        Require.positive(name, "internal resistance (ohm)", ohms);
        Require.fraction(name, "state of charge", chargeAtStart);
    }

    /**
     * Largest charging current that the chemistry takes in: the rated one-hour current while empty,
     * falling with the charge that is missing, and a float current of a thousandth of it. Common
     * practice, no published source.
     */
    public double acceptAmps(double charge) {
        double oneHourAmps = capacity.coulombs() / 3600;
        return oneHourAmps * (0.001 + Math.max(0, 1 - charge));
    }
}
