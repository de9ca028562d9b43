package stillturning.story.device.battery;

import java.util.function.BooleanSupplier;
import stillturning.model.Circuit.Placed;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.Resistive;
import stillturning.network.law.SourceBehindOhms;
import stillturning.parts.element.Capacitor;
import stillturning.story.Balance.Account;
import stillturning.story.device.Device;
import stillturning.story.device.Situation;

/**
 * A capacitor: charges and discharges while anything moves its bus, and rests while a source holds
 * that.
 *
 * <p>It would follow each drift of a battery's voltage within seconds, which is as good as at once
 * and costs thousands of steps an hour. So it rests, drawing its leakage only, as soon as hardly
 * any current is left and a source holds its bus, until the voltage there has moved by {@link
 * #WAKING_VOLTS}; its own is never further than that from where it would come to.
 */
public final class CapacitorDevice implements Store {

    /** Half of it in the mean is a fault of half a percent of the energy at 14 V. */
    private static final double WAKING_VOLTS = 0.1;

    /** Full to empty in more than five hours: hardly any current. */
    private static final double RESTING_PER_SECOND = 5e-5;

    /**
     * Nothing is joined to it that changes it faster; its leakage alone is not followed. Far below
     * what counts as standing still, so that no step ends at this bend.
     */
    private static final double ALONE_PER_SECOND = 1e-10;

    /** A way that is no end of anything, only a first guess of a step. */
    private static final double LEAST_WAY = 0.01;

    private enum State {
        /** Before time begins: at the voltage of its bus, however long that took. */
        FOLLOWS,
        /** Has come to rest, the voltage of its bus not yet read. */
        SETTLES,
        RESTS,
        ACTS
    }

    private final Placed placed;
    private final Capacitor capacitor;
    private final int branch;
    private final BooleanSupplier held;
    private final Situation now;
    private final BranchLaw leaking;
    private State state = State.FOLLOWS;
    private double charge;
    private double restVolts;

    /**
     * @param held whether a source that gives is joined to its plus
     */
    public CapacitorDevice(
            Placed placed, Capacitor capacitor, int branch, BooleanSupplier held, Situation now) {
        this.placed = placed;
        this.capacitor = capacitor;
        this.branch = branch;
        this.held = held;
        this.now = now;
        this.leaking = new Resistive(capacitor.leakOhms());
    }

    @Override
    public Placed placed() {
        return placed;
    }

    @Override
    public int branch() {
        return branch;
    }

    @Override
    public BranchLaw law() {
        return state == State.ACTS
                ? new SourceBehindOhms(Math.max(0, innerVolts()), capacitor.ohms())
                : leaking;
    }

    /** Voltage at its terminals (V). */
    private double volts() {
        return now.voltsBetween(placed.from(), placed.to());
    }

    /** Voltage behind its resistance (V). */
    private double innerVolts() {
        return charge * capacitor.ratedVolts();
    }

    @Override
    public double dischargeAmps() {
        return -now.amps(branch);
    }

    @Override
    public double margin() {
        return switch (state) {
            case FOLLOWS -> NOTHING_TO_WATCH;
            case SETTLES -> NOW;
            case RESTS -> WAKING_VOLTS - Math.abs(volts() - restVolts);
            case ACTS -> held.getAsBoolean() ? Math.abs(perSecond()) - RESTING_PER_SECOND : NOT_NOW;
        };
    }

    @Override
    public void cross() {
        switch (state) {
            case FOLLOWS -> {}
            case SETTLES -> rest();
            case RESTS -> state = State.ACTS;
            case ACTS -> state = State.SETTLES;
        }
    }

    private void rest() {
        restVolts = volts();
        state = State.RESTS;
    }

    @Override
    public void begin() {
        rest();
        charge = Math.max(0, restVolts) / capacitor.ratedVolts();
    }

    @Override
    public boolean onlyFollows() {
        return true;
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof CapacitorDevice then) {
            state = then.state;
            charge = then.charge;
            restVolts = then.restVolts;
        }
    }

    @Override
    public double value() {
        return charge;
    }

    @Override
    public void value(double value) {
        charge = value;
    }

    @Override
    public double perSecond() {
        double amps = dischargeAmps();
        if (state != State.ACTS || Math.abs(amps) < ALONE_PER_SECOND * capacitor.fullCoulombs()) {
            return 0;
        }
        return -(amps + innerVolts() / capacitor.leakOhms()) / capacitor.fullCoulombs();
    }

    @Override
    public double way() {
        double full = Math.max(1, 2 * charge);
        // a shift of its ground may draw it below 0, where its voltage is taken as 0
        return perSecond() < 0 ? Math.max(LEAST_WAY, charge) : full - charge;
    }

    @Override
    public double storingWatts() {
        return innerVolts() * capacitor.fullCoulombs() * perSecond();
    }

    @Override
    public double joulesDownFrom(double before) {
        double full = capacitor.fullCoulombs() * capacitor.ratedVolts() / 2;
        return full * (before * before - charge * charge);
    }

    @Override
    public Account account() {
        return Account.CAPACITORS;
    }

    /** Without a source beside it, it is soon at its end. */
    @Override
    public boolean quick() {
        return state == State.ACTS && !held.getAsBoolean();
    }
}
