package stillturning.device;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import stillturning.element.Generator;
import stillturning.model.Circuit.Placed;
import stillturning.network.BranchLaw;
import stillturning.network.LimitedSource;
import stillturning.network.Open;
import stillturning.story.Happening;

/**
 * An alternator: delivers while it turns, its field is fed, and a battery steadies it if needed.
 */
public final class GeneratorDevice implements Placing {

    private final Placed placed;
    private final Generator generator;
    private final int branch;
    private final Situation now;
    private final Optional<CoilDevice> field;
    private final BooleanSupplier batteryJoined;
    private BranchLaw delivering = new Open();
    private double limitAmps;
    private boolean delivers = true;

    public GeneratorDevice(
            Placed placed,
            Generator generator,
            int branch,
            Optional<CoilDevice> field,
            BooleanSupplier batteryJoined,
            Situation now) {
        this.placed = placed;
        this.generator = generator;
        this.branch = branch;
        this.field = field;
        this.batteryJoined = batteryJoined;
        this.now = now;
    }

    public Placed placed() {
        return placed;
    }

    public boolean delivers() {
        return delivers;
    }

    public double amps() {
        return -now.amps(branch);
    }

    @Override
    public int branch() {
        return branch;
    }

    @Override
    public BranchLaw law() {
        double amps = generator.output().ampsAt(now.revsPerSecond());
        if (!delivers || amps <= 0) {
            return new Open();
        }
        if (amps != limitAmps) {
            limitAmps = amps;
            delivering =
                    new LimitedSource(
                            generator.regulation().setVolts(),
                            generator.regulation().droopOhms(),
                            amps);
        }
        return delivering;
    }

    @Override
    public double margin() {
        return delivers == able() ? NOT_NOW : NOW;
    }

    @Override
    public void cross() {
        delivers = able();
        now.log(
                delivers ? Happening.Kind.SOURCE_STARTS : Happening.Kind.SOURCE_STOPS,
                placed.part(),
                delivers ? "delivers again" : "stops delivering: " + why());
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof GeneratorDevice then) {
            delivers = then.delivers;
        }
    }

    private boolean able() {
        return turns() && excited() && (!generator.needsBattery() || batteryJoined.getAsBoolean());
    }

    private boolean turns() {
        return generator.output().ampsAt(now.revsPerSecond()) > 0;
    }

    private boolean excited() {
        return field.map(CoilDevice::pulled).orElse(false);
    }

    private String why() {
        if (!turns()) {
            return "it turns too slowly";
        }
        return excited() ? "no battery steadies it" : "its field is not fed";
    }
}
