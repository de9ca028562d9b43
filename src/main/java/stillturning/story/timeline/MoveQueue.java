package stillturning.story.timeline;

import stillturning.model.Cockpit;
import stillturning.model.Reach;
import stillturning.story.Pilot;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;

/**
 * A pilot's hands: one move after the other, however many procedures call for one at the same time.
 * Of a move after which every current is what it was, the story says that it changes nothing.
 */
final class MoveQueue implements Device {

    /** A current that differs by less is the same (A): a lamp draws a hundred times as much. */
    private static final double SAME_AMPS = 1e-3;

    private final Cockpit cockpit;
    private final Situation now;
    private final double moveSeconds;
    private final double[] before;
    private final double[] after;
    private double freeAt;

    /** The event of a move whose effect the network has still to show; below 0 for none. */
    private int made = -1;

    private int madeAt;

    /**
     * @param branches how many the network has
     */
    MoveQueue(Cockpit cockpit, int branches, Situation now) {
        this.before = new double[branches];
        this.after = new double[branches];
        this.cockpit = cockpit;
        this.now = now;
        Pilot pilot = now.setting.pilot();
        double usual = now.aircraft.moveSeconds();
        // a drill is what is supposed, so even one who does nothing else carries it out
        this.moveSeconds = pilot == Pilot.NEVER ? usual : pilot.responseSeconds(usual);
    }

    /** Whether the next move can be made now. */
    boolean free() {
        return now.seconds >= freeAt;
    }

    /** When the next move can be made (s). */
    double freeAt() {
        return freeAt;
    }

    /** Moves a lever, unless the study says that it is out of reach in flight; in words. */
    String move(String lever, String position) {
        busy(1);
        if (cockpit.reachOf(lever).filter(from -> from != Reach.SEAT).isPresent()) {
            return "cannot reach " + lever;
        }
        boolean stands = position.equals(now.levers.put(lever, position));
        if (!stands) {
            read(before);
            made = now.journal.size();
            madeAt = now.layings;
        }
        return EventWords.move(lever, position);
    }

    /** Spends the time of so many moves. */
    void busy(int moves) {
        freeAt = now.seconds + moves * moveSeconds;
    }

    private void read(double[] amps) {
        for (int branch = 0; branch < amps.length; branch++) {
            amps[branch] = now.amps(branch);
        }
    }

    @Override
    public double margin() {
        return made >= 0 && now.layings > madeAt ? NOW : NOT_NOW;
    }

    /** The network is solved with the lever in its new place. */
    @Override
    public void cross() {
        read(after);
        boolean same = true;
        for (int branch = 0; branch < after.length; branch++) {
            same &= Math.abs(after[branch] - before[branch]) < SAME_AMPS;
        }
        if (same) {
            String words = now.journal.happenings().get(made).words();
            now.journal.reword(made, words + ": no current changes");
        }
        made = -1;
    }

    @Override
    public double deadline() {
        return NO_DEADLINE;
    }

    @Override
    public void expire() {}

    @Override
    public void adopt(Device healthy) {}
}
