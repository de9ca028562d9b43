package stillturning.sizing.result;

/**
 * A current, and when it flows.
 *
 * @param amps its size (A)
 * @param phase phase of the flight
 * @param failure what has failed; empty with nothing wrong
 */
public record Carried(double amps, String phase, String failure) {

    /** No current at all. */
    public static final Carried NOTHING = new Carried(0, "", "");

    public Carried orMore(Carried other) {
        return other.amps > amps ? other : this;
    }
}
