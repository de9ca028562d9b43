package stillturning.story.timeline;

import stillturning.model.Cockpit;
import stillturning.model.Reach;
import stillturning.story.Pilot;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;

/**
 * A pilot's hands: one move after the other, however many procedures call for one at the same time.
 */
final class Hands {

    private final Cockpit cockpit;
    private final Situation now;
    private final double moveSeconds;
    private double freeAt;

    Hands(Cockpit cockpit, Situation now) {
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
        now.levers.put(lever, position);
        return EventWords.move(lever, position);
    }

    /** Spends the time of so many moves. */
    void busy(int moves) {
        freeAt = now.seconds + moves * moveSeconds;
    }
}
