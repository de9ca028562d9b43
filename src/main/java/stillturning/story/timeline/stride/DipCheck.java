package stillturning.story.timeline.stride;

import stillturning.story.device.Device;

/**
 * Tells whether a margin may have fallen below 0 and come back within one step, by readings on the
 * way: the start, the stages of the Runge–Kutta step, the end. A margin that stays farther from 0
 * than it moved about cannot have been there unless it moved as far again unseen.
 */
public final class DipCheck implements Integrator.Follower {

    /** A margin that only rose or only fell counts if it comes this near to 0, in its own way. */
    private static final double NEAR = 1.0 / 16;

    /** Where only both ends were read, it counts if it comes this near, in its own way. */
    private static final double NEAR_ENDS = 4;

    /** What margins differ by from solution to solution. */
    private static final double NOISE = 1e-9;

    private final RungeKuttaPair pair;
    private final MarginTable margins;
    private final int[] moving;
    private final double[][] readings;
    private int count;

    /**
     * @param pair says where its stages are on the way
     */
    public DipCheck(MarginTable margins, RungeKuttaPair pair) {
        this.pair = pair;
        this.margins = margins;
        this.moving = new int[margins.count()];
        this.readings = new double[pair.places][margins.count()];
    }

    /**
     * Takes the reading at a stage, or of this number on the way. That at the start, 0, also finds
     * out which margins can move: between events, a yes or no stays what it is.
     */
    @Override
    public void read(int stage) {
        if (stage == 0) {
            findMoving();
        } else {
            now(readings[pair.place(stage)]);
        }
    }

    private void findMoving() {
        count = 0;
        double[] all = margins.read();
        margins.follow();
        for (int i = 0; i < all.length; i++) {
            double margin = all[i];
            if (margin != Device.NOT_NOW && margin != Device.NOTHING_TO_WATCH) {
                readings[0][count] = margin;
                moving[count++] = i;
            }
        }
    }

    @Override
    public void taken(double seconds, double[] weights) {}

    /** The lowest margin at the present operating point of those that can move. */
    double lowest() {
        double lowest = Double.POSITIVE_INFINITY;
        double[] all = margins.readFollowed();
        for (int i = 0; i < count; i++) {
            lowest = Math.min(lowest, all[moving[i]]);
        }
        return lowest;
    }

    /** The lowest margin of a reading. */
    double lowest(int place) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            lowest = Math.min(lowest, readings[place][i]);
        }
        return lowest;
    }

    /** How many margins can move. */
    int count() {
        return count;
    }

    /** Largest number of margins. */
    int most() {
        return margins.count();
    }

    /** Copies a reading. */
    void copy(int place, double[] into) {
        System.arraycopy(readings[place], 0, into, 0, count);
    }

    /** Reads the margins at the present operating point. */
    void now(double[] into) {
        double[] all = margins.readFollowed();
        for (int i = 0; i < count; i++) {
            into[i] = all[moving[i]];
        }
    }

    /** Whether the first so many readings leave it open that something happened between them. */
    boolean doubtful(int places) {
        for (int device = 0; device < count; device++) {
            if (doubtful(device, places)) {
                return true;
            }
        }
        return false;
    }

    private boolean doubtful(int device, int places) {
        double lowest = readings[0][device];
        double highest = lowest;
        boolean rises = true;
        boolean falls = true;
        for (int place = 1; place < places; place++) {
            double margin = readings[place][device];
            double before = readings[place - 1][device];
            rises &= margin >= before - NOISE;
            falls &= margin <= before + NOISE;
            lowest = Math.min(lowest, margin);
            highest = Math.max(highest, margin);
        }
        double swing = highest - lowest;
        if (!(swing > NOISE) || (falls && readings[places - 1][device] < 0)) {
            return false;
        }
        double near = places == 2 ? NEAR_ENDS : rises || falls ? NEAR : 1;
        return lowest < near * swing;
    }

    /** Whether the second of three readings lies on the straight between its neighbours. */
    boolean straight() {
        for (int device = 0; device < count; device++) {
            double ends = readings[0][device] + readings[2][device];
            double swing = Math.abs(readings[2][device] - readings[0][device]);
            if (Math.abs(2 * readings[1][device] - ends) > NEAR * swing + NOISE) {
                return false;
            }
        }
        return true;
    }
}
