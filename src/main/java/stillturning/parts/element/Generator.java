package stillturning.parts.element;

import stillturning.parts.element.curve.OutputBySpeed;
import stillturning.parts.element.curve.Require;

/**
 * Alternator with its regulator, output at {@code from}, case at {@code to}: holds a set point with
 * droop up to a current that depends on speed and on its field's voltage, blocks reverse current,
 * and gives nothing unless its field coil is fed.
 *
 * @param regulation set point and droop
 * @param output current by speed
 * @param field name of the part's {@link Coil} that stands for the field supply; empty where it
 *     gives whether anything is fed or not
 * @param fullFieldVolts voltage at the field from which it gives all of its output (V); below it
 *     gives in proportion, which is a guess; 0 if magnets make its field
 * @param alone how it fares without a battery
 */
public record Generator(
        String name,
        String from,
        String to,
        Regulation regulation,
        OutputBySpeed output,
        String field,
        double fullFieldVolts,
        Alone alone)
        implements Element {

    /** Output of a machine that gives nothing at any speed, so that it still has a measure (A). */
    private static final double LEAST_AMPS = 1e-3;

    /** Set point (V) at no load and its fall with current (ohm). */
    public record Regulation(double setVolts, double droopOhms) {
        public Regulation {
            Require.positive("alternator", "set point (V)", setVolts);
            Require.positive("alternator", "droop (ohm)", droopOhms);
        }
    }

    /** What becomes of it when no battery is joined to its output. */
    public enum WithoutBattery {
        /** It stops. */
        GIVES_UP,
        /** It goes on, but nobody knows at which voltage. */
        UNSTEADY,
        /** It holds its voltage all the same. */
        STEADY
    }

    /**
     * How it fares without a battery, and what it does in the moment that it loses it.
     *
     * @param steadying largest resistance that a battery may be behind and still steady it, as a
     *     share of its set point over its largest current
     * @param clampVolts highest voltage of a load dump (V)
     * @param dumpSeconds how long a load dump lasts (s)
     */
    public record Alone(
            WithoutBattery then, double steadying, double clampVolts, double dumpSeconds) {
        public Alone {
            Require.positive("alternator", "steadying resistance", steadying);
            Require.positive("alternator", "clamp voltage (V)", clampVolts);
            Require.notNegative("alternator", "length of a load dump (s)", dumpSeconds);
        }
    }

    public Generator {
        Require.notNegative(name, "voltage of full field (V)", fullFieldVolts);
    }

    /** Whether it can be relied on only beside a battery. */
    public boolean needsBattery() {
        return alone.then != WithoutBattery.STEADY;
    }

    /**
     * Largest incremental resistance (ohm), seen from its terminals, that still steadies it.
     *
     * <p>Its field follows its regulator in about a tenth of a second, so until then a change of
     * current must find another way. Loads that hold their power answer it the wrong way round: all
     * of its output in such loads is a resistance of minus its set point over its largest current.
     * What is beside them must outweigh that; by how much is a guess ({@link Alone#steadying}).
     */
    public double steadyingOhms() {
        return alone.steadying * regulation.setVolts / Math.max(LEAST_AMPS, output.largestAmps());
    }

    /** The same machine faring otherwise without a battery. */
    public Generator alone(Alone other) {
        return new Generator(name, from, to, regulation, output, field, fullFieldVolts, other);
    }

    /** The same machine, which gives all of its output as soon as its field is fed at all. */
    public Generator excitedFully() {
        return new Generator(name, from, to, regulation, output, field, 0, alone);
    }

    /** The same machine, which nothing but standing still keeps from giving. */
    public Generator unfed() {
        return new Generator(name, from, to, regulation, output, "", fullFieldVolts, alone);
    }

    /** Whether its field is there without any current. */
    public boolean hasMagnets() {
        return fullFieldVolts == 0;
    }

    /** Whether it gives only while its field coil is fed. */
    public boolean needsField() {
        return !field.isEmpty();
    }

    /** The same machine with another set point, as when its regulator runs away. */
    public Generator regulatingAt(double setVolts) {
        return new Generator(
                name,
                from,
                to,
                new Regulation(setVolts, regulation.droopOhms),
                output,
                field,
                fullFieldVolts,
                alone);
    }

    @Override
    public Role role() {
        return Role.GENERATOR;
    }

    @Override
    public <T> T accept(Visitor<T> visitor) {
        return visitor.visit(this);
    }
}
