package stillturning.story.device.plant;

import java.util.List;
import stillturning.model.Circuit.Placed;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.Open;
import stillturning.network.law.Resistive;
import stillturning.parts.element.Protector;
import stillturning.story.Setting;
import stillturning.story.StoryEvent;
import stillturning.story.device.BranchDevice;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;
import stillturning.story.device.Stateful;
import stillturning.story.device.Watch;

/** A fuse or breaker: closed until its heat is up or a hand pulls it. */
final class ProtectorDevice implements BranchDevice {

    /** Lever position of a breaker that has opened by itself, until a hand moves it again. */
    private static final String TRIPPED = "tripped";

    private final Placed placed;
    private final int branch;
    private final Situation now;
    private final TripDevice tripper;
    private final BranchLaw closed;
    private final boolean resettable;
    private boolean blown;
    private int leversSeen = -1;
    private boolean pulled;

    ProtectorDevice(Placed placed, Protector protector, int branch, Situation now) {
        this.placed = placed;
        this.branch = branch;
        this.now = now;
        this.closed = new Resistive(protector.ohms());
        this.resettable = protector.pullable();
        this.tripper = new TripDevice(placed.part(), protector.trip(), branch, now);
    }

    @Override
    public List<Stateful> heats() {
        return List.of(tripper.heat());
    }

    @Override
    public int branch() {
        return branch;
    }

    @Override
    public BranchLaw law() {
        return open() ? Open.CIRCUIT : closed;
    }

    @Override
    public boolean waits() {
        return false;
    }

    @Override
    public boolean yieldsWithin(double seconds) {
        return tripper.opensWithin(seconds);
    }

    @Override
    public boolean gaveWay() {
        return blown || TRIPPED.equals(now.levers.at(placed.part()));
    }

    @Override
    public double margin() {
        return open() ? NOTHING_TO_WATCH : tripper.heat().margin();
    }

    @Override
    public Watch watch() {
        return open() ? Watch.Plain.NOTHING : tripper.heat().watch();
    }

    @Override
    public void cross() {
        double amps = Math.abs(now.amps(branch));
        if (tripper.crossed()) {
            trip();
            now.log(
                    StoryEvent.Kind.PROTECTOR_OPENS,
                    placed.part(),
                    "opens at " + EventWords.amps(amps) + tripper.doubt());
        }
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof ProtectorDevice then) {
            blown = then.blown;
            tripper.heat().adopt(then.tripper.heat());
        }
    }

    /** A breaker that trips moves its own lever, so that the next move resets it. */
    private void trip() {
        if (resettable) {
            now.levers.put(placed.part(), TRIPPED);
        } else {
            blown = true;
        }
    }

    private boolean open() {
        if (leversSeen != now.levers.changes()) {
            leversSeen = now.levers.changes();
            String position = now.levers.at(placed.part());
            pulled = Setting.PULLED.equals(position) || TRIPPED.equals(position);
        }
        return blown || pulled;
    }
}
