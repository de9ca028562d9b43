package stillturning.assess.findout;

/**
 * Where an answer turns: between two places that have both been looked at.
 *
 * @param before place on the side of the likely value, 0 for the low end of the range to 1
 * @param after place on the other side
 * @param first whether it turns who is first; otherwise only a verdict
 */
public record Turn(double before, double after, boolean first) {

    /** Half-way. */
    public double place() {
        return (before + after) / 2;
    }

    /** Whether the number has to be lower than it is likely. */
    public boolean below() {
        return after < before;
    }
}
