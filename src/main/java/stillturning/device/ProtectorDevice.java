package stillturning.device;

import stillturning.element.Protector;
import stillturning.model.Circuit.Placed;
import stillturning.network.BranchLaw;
import stillturning.network.Open;
import stillturning.network.Resistive;
import stillturning.story.Happening;
import stillturning.story.Setting;

/** A fuse or breaker: closed until its heat is up or a hand pulls it. */
final class ProtectorDevice implements Placing {

    private final Placed placed;
    private final int branch;
    private final Situation now;
    private final Tripper tripper;
    private final BranchLaw closed;
    private boolean open;

    ProtectorDevice(Placed placed, Protector protector, int branch, Situation now) {
        this.placed = placed;
        this.branch = branch;
        this.now = now;
        this.closed = new Resistive(protector.ohms());
        this.tripper =
                new Tripper(
                        protector.ratedAmps(),
                        protector.curve(),
                        protector.coolingSeconds(),
                        branch,
                        now.setting.race().edgeOf(placed.part()),
                        now);
    }

    Stateful heat() {
        return tripper;
    }

    @Override
    public int branch() {
        return branch;
    }

    @Override
    public BranchLaw law() {
        return open || Setting.PULLED.equals(now.levers.get(placed.part())) ? new Open() : closed;
    }

    @Override
    public double margin() {
        return open ? NOTHING_TO_WATCH : tripper.margin();
    }

    @Override
    public void cross() {
        double amps = Math.abs(now.amps(branch));
        if (tripper.crossed()) {
            open = true;
            tripper.forget();
            now.log(Happening.Kind.PROTECTOR_OPENS, placed.part(), "opens at " + Say.amps(amps));
        }
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof ProtectorDevice then) {
            open = then.open;
            tripper.adopt(then.tripper);
        }
    }
}
