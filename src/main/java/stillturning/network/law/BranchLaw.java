package stillturning.network.law;

/**
 * How much current a branch carries at the voltage across it. Current and voltage count from the
 * branch's {@code from} net to its {@code to} net, so a delivering source has a negative current.
 *
 * <p>Every law is continuous. Where an ideal law would be flat without end, it rises by a tiny
 * stated leak instead, so that the equations keep one answer.
 */
public sealed interface BranchLaw
        permits Open,
                Resistive,
                SourceBehindOhms,
                LimitedSource,
                ChargeOnly,
                ConstantPower,
                ConstantCurrent,
                DiodeDrop,
                LimitedConductor,
                ConverterInput,
                Storage {

    /**
     * Current at a voltage.
     *
     * @param volts V(from) - V(to) (V)
     * @return current from {@code from} to {@code to} (A)
     */
    double ampsAt(double volts);

    /**
     * Slope of the law at a point of it.
     *
     * @param volts V(from) - V(to) (V)
     * @param amps what {@link #ampsAt} gives there (A); saves solving the law again
     * @return dI/dV (S); negative for a load that draws more at less voltage
     */
    double siemensAt(double volts, double amps);

    /** Whether any voltage makes a current flow; if not, the branch joins nothing. */
    boolean conducts();

    /** Whether it would take up a current that comes in at its {@code from}. */
    default boolean takesUp() {
        return conducts();
    }

    /** Whether current is exactly (V - {@link #emfVolts}) times one slope. */
    default boolean linear() {
        return false;
    }

    /** Voltage across the branch at which it carries no current by itself (V); 0 if passive. */
    default double emfVolts() {
        return 0.0;
    }

    /**
     * Voltage under which a load no longer follows its own law but behaves as a resistance (V); 0
     * for everything that is not such a load.
     */
    default double floorVolts() {
        return 0.0;
    }

    /** Whether a converter can deliver through it. */
    default boolean canBeOutput() {
        return true;
    }

    /** Voltage below which the law flattens (V); minus infinity if it does not. */
    default double flatBelowVolts() {
        return Double.NEGATIVE_INFINITY;
    }

    /** Voltage above which the law flattens (V); infinity if it does not. */
    default double flatAboveVolts() {
        return Double.POSITIVE_INFINITY;
    }

    /**
     * Where to draw the next straight line while nothing better is known: where the last line led
     * to, unless the law bends so much on the way that its current says more than its voltage.
     *
     * @param volts where the last line led to (V)
     * @param amps the current that it had there (A)
     */
    default double nextVolts(double volts, double amps) {
        return volts;
    }

    /**
     * Where to start looking when nothing is known.
     *
     * @param emfVolts the highest source voltage in the same island (V)
     * @return a voltage across this branch (V)
     */
    default double likelyVolts(double emfVolts) {
        return 0.0;
    }
}
