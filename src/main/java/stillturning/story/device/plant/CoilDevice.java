package stillturning.story.device.plant;

import stillturning.model.Circuit.Placed;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.Resistive;
import stillturning.parts.element.Coil;
import stillturning.story.StoryEvent;
import stillturning.story.device.BranchDevice;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;
import stillturning.story.device.Watch;

/** A winding that pulls its contacts in and lets them go, each after its delay. */
final class CoilDevice implements BranchDevice {

    private enum State {
        PULLED,
        LETTING_GO,
        RELEASED,
        PULLING_IN
    }

    private final Placed placed;
    private final Coil coil;
    private final int branch;
    private final Situation now;
    private final BranchLaw law;
    private final boolean movesContacts;
    private final Watch holds;
    private final Watch letsGo;
    private final Watch waits;
    private final Watch pullsIn;
    private State state = State.PULLED;
    private double deadline = NO_DEADLINE;
    private int ledBy = -1;
    private boolean resting;

    CoilDevice(Placed placed, Coil coil, int branch, boolean movesContacts, Situation now) {
        this.placed = placed;
        this.coil = coil;
        this.branch = branch;
        this.now = now;
        this.movesContacts = movesContacts;
        this.law = new Resistive(coil.ohms());
        this.holds = atLeast(coil.dropOutVolts());
        this.letsGo = atMost(coil.dropOutVolts());
        this.waits = atMost(coil.pullInVolts());
        this.pullsIn = atLeast(coil.pullInVolts());
    }

    private Watch atLeast(double volts) {
        return Watch.OfVolts.atLeast(placed.from(), placed.to(), volts).whateverSign();
    }

    private Watch atMost(double volts) {
        return Watch.OfVolts.atMost(placed.from(), placed.to(), volts).whateverSign();
    }

    boolean pulled() {
        return state == State.PULLED || state == State.LETTING_GO;
    }

    /** Whether it holds contacts closed. */
    boolean holds() {
        return movesContacts && pulled();
    }

    /** Lets go at once, as before anything was switched on. */
    void release() {
        enter(State.RELEASED, NO_DEADLINE);
    }

    /** Why its contacts stay open although all is switched on. */
    StoryEvent staysOpen() {
        return new StoryEvent(
                now.seconds,
                StoryEvent.Kind.CONTACTS_OPEN,
                placed.part(),
                "does not pull in from dead: "
                        + EventWords.volts(volts())
                        + " at its "
                        + coil.name()
                        + ", which needs "
                        + EventWords.volts(coil.pullInVolts())
                        + "; feed it from where there is voltage while its contacts are open",
                -1);
    }

    String part() {
        return placed.part();
    }

    /** The net at which it is fed. */
    int from() {
        return placed.from();
    }

    /** The net at which what it takes goes back. */
    int to() {
        return placed.to();
    }

    @Override
    public int branch() {
        return branch;
    }

    @Override
    public BranchLaw law() {
        return law;
    }

    @Override
    public double margin() {
        if (resting || (now.fieldsStand && !movesContacts)) {
            return NOTHING_TO_WATCH;
        }
        double volts = volts();
        return switch (state) {
            case PULLED -> volts - coil.dropOutVolts();
            case LETTING_GO -> coil.dropOutVolts() - volts;
            case RELEASED -> coil.pullInVolts() - volts;
            case PULLING_IN -> volts - coil.pullInVolts();
        };
    }

    @Override
    public Watch watch() {
        if (resting || (now.fieldsStand && !movesContacts)) {
            return Watch.Plain.NOTHING;
        }
        return switch (state) {
            case PULLED -> holds;
            case LETTING_GO -> letsGo;
            case RELEASED -> waits;
            case PULLING_IN -> pullsIn;
        };
    }

    @Override
    public void cross() {
        ledBy = now.journal.cause();
        switch (state) {
            case PULLED -> enter(State.LETTING_GO, now.seconds + coil.dropOutSeconds());
            case LETTING_GO -> enter(State.PULLED, NO_DEADLINE);
            case RELEASED -> enter(State.PULLING_IN, now.seconds + coil.pullInSeconds());
            case PULLING_IN -> enter(State.RELEASED, NO_DEADLINE);
        }
    }

    @Override
    public double deadline() {
        return deadline;
    }

    @Override
    public void expire() {
        boolean letsGo = state == State.LETTING_GO;
        enter(letsGo ? State.RELEASED : State.PULLED, NO_DEADLINE);
        if (movesContacts) {
            now.log(
                    letsGo ? StoryEvent.Kind.CONTACTS_OPEN : StoryEvent.Kind.CONTACTS_CLOSE,
                    placed.part(),
                    letsGo
                            ? "drops out: "
                                    + EventWords.volts(volts())
                                    + " left at its "
                                    + coil.name()
                            : "pulls in: " + EventWords.volts(volts()) + " at its " + coil.name(),
                    ledBy);
        }
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof CoilDevice coilThen) {
            state = coilThen.state;
            resting = coilThen.resting;
        }
    }

    @Override
    public boolean yieldsWithin(double seconds) {
        if (resting || !movesContacts) {
            return false;
        }
        return switch (state) {
            case PULLED -> volts() < coil.dropOutVolts() && coil.dropOutSeconds() < seconds;
            case RELEASED -> volts() >= coil.pullInVolts() && coil.pullInSeconds() < seconds;
            case LETTING_GO, PULLING_IN -> true;
        };
    }

    @Override
    public int blameRank() {
        return movesContacts ? 4 : 2;
    }

    @Override
    public String remedy() {
        return "a coil fed from where its own contacts do not pull it down, or a drop-out"
                + " voltage further below its pull-in";
    }

    @Override
    public void giveUp() {
        resting = true;
        enter(State.RELEASED, NO_DEADLINE);
    }

    private void enter(State next, double until) {
        state = next;
        deadline = until;
    }

    double volts() {
        return Math.abs(now.voltsBetween(placed.from(), placed.to()));
    }
}
