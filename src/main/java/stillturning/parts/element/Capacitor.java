package stillturning.parts.element;

import java.util.OptionalDouble;
import stillturning.parts.element.curve.Require;

/**
 * Capacitor between plus ({@code from}) and minus ({@code to}): a voltage that is its charge over
 * its capacitance, behind a resistance. Takes in and gives whatever that resistance lets through.
 *
 * @param farads capacitance (F)
 * @param ohms equivalent series resistance (ohm)
 * @param ratedVolts highest voltage that it is made for (V)
 * @param leakOhms what its charge leaks away through (ohm)
 */
public record Capacitor(
        String name,
        String from,
        String to,
        double farads,
        double ohms,
        double ratedVolts,
        double leakOhms)
        implements Element {

    /** Time in which the field of an alternator follows its regulator (s). From memory, a guess. */
    private static final double FIELD_SECONDS = 0.1;

    public Capacitor {
        Require.positive(name, "capacitance (F)", farads);
        Require.positive(name, "equivalent resistance (ohm)", ohms);
        Require.positive(name, "rated voltage (V)", ratedVolts);
        Require.positive(name, "resistance to leakage (ohm)", leakOhms);
    }

    /** Its own resistance, and what its voltage moves meanwhile. */
    @Override
    public OptionalDouble surplusOhms() {
        return OptionalDouble.of(ohms + FIELD_SECONDS / farads);
    }

    /** Charge at its rated voltage (C). */
    public double fullCoulombs() {
        return farads * ratedVolts;
    }

    @Override
    public Role role() {
        return Role.CAPACITOR;
    }

    @Override
    public <T> T accept(Visitor<T> visitor) {
        return visitor.visit(this);
    }
}
