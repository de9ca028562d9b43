package stillturning.story.device.plant;

import java.util.List;
import java.util.Optional;
import stillturning.model.Circuit.Placed;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.LimitedConductor;
import stillturning.network.law.Open;
import stillturning.parts.element.Channel;
import stillturning.story.StoryEvent;
import stillturning.story.device.BranchDevice;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;
import stillturning.story.device.Stateful;
import stillturning.story.device.Watch;

/** An electronic switch: obeys its lever while its logic works, else goes to its default. */
final class ChannelDevice implements BranchDevice {

    private final Placed placed;
    private final Channel channel;
    private final int branch;
    private final Situation now;
    private final Optional<SupplyDevice> logic;
    private final TripDevice tripper;
    private final BranchLaw closed;
    private boolean tripped;

    ChannelDevice(
            Placed placed,
            Channel channel,
            int branch,
            Optional<SupplyDevice> logic,
            Situation now) {
        this.placed = placed;
        this.channel = channel;
        this.branch = branch;
        this.now = now;
        this.logic = logic;
        this.closed =
                new LimitedConductor(channel.switching().ohms(), channel.switching().limitAmps());
        this.tripper = new TripDevice(placed.part(), channel.trip(), branch, now);
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
        return tripped || !wanted() ? Open.CIRCUIT : closed;
    }

    @Override
    public boolean yieldsWithin(double seconds) {
        return tripper.opensWithin(seconds);
    }

    @Override
    public boolean gaveWay() {
        return tripped;
    }

    @Override
    public double margin() {
        return tripped ? NOTHING_TO_WATCH : tripper.heat().margin();
    }

    @Override
    public Watch watch() {
        return tripped ? Watch.Plain.NOTHING : tripper.heat().watch();
    }

    @Override
    public void cross() {
        double amps = Math.abs(now.amps(branch));
        if (tripper.crossed()) {
            tripped = true;
            now.log(
                    StoryEvent.Kind.PROTECTOR_OPENS,
                    placed.part(),
                    channel.name() + " trips at " + EventWords.amps(amps) + tripper.doubt());
        }
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof ChannelDevice then) {
            tripped = then.tripped;
            tripper.heat().adopt(then.tripper.heat());
        }
    }

    private boolean wanted() {
        if (!logic.map(SupplyDevice::works).orElse(false)) {
            return channel.closedByDefault();
        }
        return !"off".equals(now.levers.at(channel.lever()));
    }
}
