package stillturning.element;

/**
 * Over-voltage protection: a contact between {@code from} and {@code to} that opens for good once
 * the voltage of {@code sense} above {@code to senseReturn} has exceeded its limit long enough.
 *
 * @param ohms resistance of the closed contact (ohm)
 * @param tripVolts limit (V)
 * @param tripSeconds how long it must be exceeded (s)
 */
public record Guard(
        String name,
        String from,
        String to,
        String sense,
        String senseReturn,
        double ohms,
        double tripVolts,
        double tripSeconds)
        implements Element {

    public Guard {
        Require.positive(name, "contact resistance (ohm)", ohms);
        Require.positive(name, "trip voltage (V)", tripVolts);
        Require.notNegative(name, "trip time (s)", tripSeconds);
    }

    @Override
    public Passage passage() {
        return Passage.BOTH_WAYS;
    }
}
