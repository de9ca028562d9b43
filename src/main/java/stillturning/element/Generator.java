package stillturning.element;

/**
 * Alternator with its regulator, output at {@code from}, case at {@code to}: holds a set point with
 * droop up to a current that depends on speed, blocks reverse current, and gives nothing unless its
 * field coil is fed.
 *
 * @param regulation set point and droop
 * @param output current by speed
 * @param field name of the part's {@link Coil} that stands for the field supply
 * @param needsBattery gives up when no battery is joined to its output
 */
public record Generator(
        String name,
        String from,
        String to,
        Regulation regulation,
        OutputBySpeed output,
        String field,
        boolean needsBattery)
        implements Element {

    /** Set point (V) at no load and its fall with current (ohm). */
    public record Regulation(double setVolts, double droopOhms) {
        public Regulation {
            Require.positive("alternator", "set point (V)", setVolts);
            Require.positive("alternator", "droop (ohm)", droopOhms);
        }
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
                needsBattery);
    }
}
