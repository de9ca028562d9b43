package stillturning.network;

import stillturning.network.law.BranchLaw;

/** The branches of a network that an iteration goes over, each at its place in the row. */
final class Curves {

    private final int[] branch;
    private final BranchLaw[] law;
    private final double[] floorVolts;
    private final double[] siemens;
    private final double[] drawnAt;
    private int count;

    /**
     * @param most largest number of branches
     */
    Curves(int most) {
        branch = new int[most];
        law = new BranchLaw[most];
        floorVolts = new double[most];
        siemens = new double[most];
        drawnAt = new double[most];
    }

    void clear() {
        count = 0;
    }

    int count() {
        return count;
    }

    /** Takes up a branch; its place here. */
    int add(int which, BranchLaw its) {
        branch[count] = which;
        set(count, its);
        return count++;
    }

    /** Replaces the law at a place. */
    void set(int place, BranchLaw its) {
        law[place] = its;
        floorVolts[place] = its.floorVolts();
    }

    int branch(int place) {
        return branch[place];
    }

    BranchLaw law(int place) {
        return law[place];
    }

    /** Voltage under which it no longer follows its own law (V); 0 where it has none. */
    double floorVolts(int place) {
        return floorVolts[place];
    }

    /** Slope that was used last (S). */
    double usedSiemens(int place) {
        return siemens[place];
    }

    /** Notes the slope that is used (S). */
    void use(int place, double slope) {
        siemens[place] = slope;
    }

    /** Where its straight line was drawn (V). */
    double drawnAt(int place) {
        return drawnAt[place];
    }

    /** Draws its straight line at a voltage (V). */
    void draw(int place, double across) {
        drawnAt[place] = across;
    }

    /**
     * Draws its next line where the last one led to.
     *
     * @param across where that is (V)
     * @param ampsAtZero what the last line has at 0 V (A)
     * @return how far it moved (V)
     */
    double drawNext(int place, double across, double ampsAtZero) {
        double before = drawnAt[place];
        drawnAt[place] = law[place].nextVolts(across, ampsAtZero + siemens[place] * across);
        return Math.abs(drawnAt[place] - before);
    }

    /** How far a voltage across it is beyond where its law is flat (V). */
    double beyond(int place, double across) {
        return Math.min(0.0, across - law[place].flatBelowVolts())
                + Math.max(0.0, across - law[place].flatAboveVolts());
    }

    /** Current at a voltage across it (A). */
    double amps(int place, double across) {
        return law[place].ampsAt(across);
    }

    /** Slope at a point of its law (S). */
    double siemens(int place, double across, double amps) {
        return law[place].siemensAt(across, amps);
    }
}
