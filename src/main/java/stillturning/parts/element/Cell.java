package stillturning.parts.element;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import stillturning.parts.element.curve.Acceptance;
import stillturning.parts.element.curve.GasCurve;
import stillturning.parts.element.curve.Overcharge;
import stillturning.parts.element.curve.Require;
import stillturning.parts.element.curve.RestVoltage;

/**
 * A battery's chemistry between plus ({@code from}) and minus ({@code to}).
 *
 * @param capacity at 25 °C
 * @param ohms internal resistance full and at 25 °C (ohm)
 * @param chargeAtStart state of charge at the start of the flight, 0 to 1
 * @param kilograms what has to grow warm (kg), 0 for not known
 */
public record Cell(
        String name,
        String from,
        String to,
        OpenCircuit openCircuit,
        Capacity capacity,
        double ohms,
        double chargeAtStart,
        double kilograms,
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

        /** Voltage (V) on one straight piece of the curve, at a temperature (°C). */
        public double voltsOn(int piece, double charge, double celsius) {
            double warm = curve.byTemperature().voltsAt(celsius);
            return factor * (curve.voltsOn(piece, charge) + warm);
        }
    }

    public Cell {
        Require.positive(name, "internal resistance (ohm)", ohms);
        Require.fraction(name, "state of charge", chargeAtStart);
        Require.notNegative(name, "weight (kg)", kilograms);
    }

    /** The same at another state of charge, from 0 to 1. */
    @Override
    public Cell charged(double charge) {
        return new Cell(name, from, to, openCircuit, capacity, ohms, charge, kilograms, management);
    }

    /** The same without a management that could disconnect it. */
    @Override
    public Cell unmanaged() {
        return with(capacity, chargeAtStart, Optional.empty());
    }

    /** The same with another capacity, charge and management. */
    public Cell with(Capacity other, double charge, Optional<Management> guard) {
        return new Cell(name, from, to, openCircuit, other, ohms, charge, kilograms, guard);
    }

    /** Capacity at a temperature (°C). */
    public Capacity capacityAt(double celsius) {
        return capacity.times(openCircuit.curve().byTemperature().capacityAt(celsius));
    }

    /** Internal resistance (ohm) on one straight piece of the curve, at a temperature (°C). */
    public double ohmsOn(int piece, double charge, double celsius) {
        RestVoltage curve = openCircuit.curve();
        return ohms
                * curve.resistanceOn(piece, charge)
                * curve.byTemperature().resistanceAt(celsius);
    }

    /** Charging current (A) up to which its resistance alone counts. */
    public double acceptAmps(double charge) {
        return openCircuit.curve().acceptance().ampsAt(charge, capacity.oneHourAmps());
    }

    /**
     * Its resistance as stated, however full and however cold: within a tenth of a second its
     * plates take up any current. From memory, unverified.
     */
    @Override
    public OptionalDouble surplusOhms() {
        return OptionalDouble.of(ohms);
    }

    /** Highest voltage (V) that its makers charge it with. */
    public double mostChargingVolts() {
        return openCircuit.factor() * openCircuit.curve().acceptance().mostVolts();
    }

    /** What it turns to gas at a temperature (°C). */
    public GasCurve gas(Overcharge law, double celsius) {
        return openCircuit
                .curve()
                .acceptance()
                .gas(law, celsius)
                .times(openCircuit.factor(), capacity.oneHourAmps());
    }

    /** What the program guesses of its kind, in words by what it is. */
    public Map<String, String> guesses() {
        return openCircuit.curve().acceptance().guesses();
    }

    /** Over-potential (V) that drives as much current again. */
    public double overVolts() {
        return openCircuit.factor() * Acceptance.OVER_VOLTS;
    }

    @Override
    public Role role() {
        return Role.BATTERY;
    }

    @Override
    public <T> T accept(Visitor<T> visitor) {
        return visitor.visit(this);
    }
}
