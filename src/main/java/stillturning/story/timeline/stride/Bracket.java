package stillturning.story.timeline.stride;

/**
 * The piece of a step in which the first margin falls below 0: all margins at both its ends and at
 * one more point of the step, and where parabolas through the three foretell the fall.
 */
final class Bracket {

    private final DipCheck dips;
    private double[] low;
    private double[] other;
    private double[] high;
    private double lowSeconds;
    private double otherSeconds;
    private double highSeconds;
    private double[] spare;

    Bracket(DipCheck dips) {
        this.dips = dips;
        low = new double[dips.most()];
        other = new double[dips.most()];
        high = new double[dips.most()];
        spare = new double[dips.most()];
    }

    /**
     * From the start of a step to the point where the network is solved, and where a margin is
     * below 0.
     *
     * @param place another reading
     * @param atSeconds when it was taken (s)
     * @param endSeconds when the point is (s)
     */
    void begin(int place, double atSeconds, double endSeconds) {
        dips.copy(0, low);
        dips.copy(place, other);
        dips.now(high);
        lowSeconds = 0;
        otherSeconds = atSeconds;
        highSeconds = endSeconds;
    }

    /** Makes the point where the network is solved an end; whether a margin is below 0 there. */
    boolean narrow(double seconds) {
        double[] free = spare;
        dips.now(free);
        boolean fallen = fallen(free);
        spare = other;
        otherSeconds = fallen ? highSeconds : lowSeconds;
        if (fallen) {
            other = high;
            high = free;
            highSeconds = seconds;
        } else {
            other = low;
            low = free;
            lowSeconds = seconds;
        }
        return fallen;
    }

    private boolean fallen(double[] margins) {
        for (int i = 0; i < dips.count(); i++) {
            if (margins[i] < 0) {
                return true;
            }
        }
        return false;
    }

    /** Length of the piece (s). */
    double seconds() {
        return highSeconds - lowSeconds;
    }

    /** Whether a point lies within the piece (s). */
    boolean holds(double seconds) {
        return seconds > lowSeconds && seconds < highSeconds;
    }

    double middle() {
        return lowSeconds + (highSeconds - lowSeconds) / 2;
    }

    double endSeconds() {
        return highSeconds;
    }

    /** When the first margin falls below 0, by the parabolas (s). */
    double foretold() {
        double first = highSeconds;
        for (int i = 0; i < dips.count(); i++) {
            if (high[i] < 0) {
                first = Math.min(first, lowSeconds + fall(i));
            }
        }
        return first;
    }

    /** From the start of the piece (s). */
    private double fall(int i) {
        double wide = highSeconds - lowSeconds;
        double across = otherSeconds - lowSeconds;
        double chord = (high[i] - low[i]) / wide;
        double bend = ((other[i] - low[i]) / across - chord) / (across - wide);
        double slope = chord - bend * wide;
        double root = Math.sqrt(slope * slope - 4 * bend * low[i]);
        // the one root on the way down; the other form loses its digits where the way is straight
        return slope < 0 ? 2 * low[i] / (root - slope) : (slope + root) / (-2 * bend);
    }
}
