package stillturning.timeline;

/**
 * Tells whether a margin may have fallen below 0 and come back within one step, by readings on the
 * way: the start, the stages of the Runge–Kutta step, the end. A margin that stays farther from 0
 * than it moved about cannot have been there unless it moved as far again unseen.
 */
final class Dips {

    /** A margin that only rose or only fell counts if it comes this near to 0, in its own way. */
    private static final double NEAR = 1.0 / 8;

    /** What margins differ by from solution to solution. */
    private static final double NOISE = 1e-9;

    /** Reads the margins of all devices at the present operating point. */
    interface Margins {
        void read(double[] into);
    }

    private final Margins margins;
    private final double[][] readings;

    /**
     * @param most largest number of readings on one way
     */
    Dips(int devices, int most, Margins margins) {
        this.margins = margins;
        this.readings = new double[most][devices];
    }

    /** Takes the reading of this number on the way. */
    void read(int place) {
        margins.read(readings[place]);
    }

    /** Whether the first so many readings leave it open that something happened between them. */
    boolean doubtful(int places) {
        for (int device = 0; device < readings[0].length; device++) {
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
        return lowest < (rises || falls ? NEAR : 1) * swing;
    }

    /** Whether the second of three readings lies on the straight between its neighbours. */
    boolean straight() {
        for (int device = 0; device < readings[0].length; device++) {
            double ends = readings[0][device] + readings[2][device];
            double swing = Math.abs(readings[2][device] - readings[0][device]);
            if (Math.abs(2 * readings[1][device] - ends) > NEAR * swing + NOISE) {
                return false;
            }
        }
        return true;
    }
}
