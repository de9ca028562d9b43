package stillturning.story.device.plant;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import stillturning.model.Circuit.Placed;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.LimitedSource;
import stillturning.network.law.Open;
import stillturning.parts.element.Generator;
import stillturning.parts.element.Generator.WithoutBattery;
import stillturning.story.StoryEvent.Kind;
import stillturning.story.device.BranchDevice;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;

/**
 * An alternator: delivers while it turns and its field is fed, less on a weak field; and when it
 * loses its battery, its voltage jumps for a moment before it goes on or gives up.
 *
 * <p>What it can deliver follows its field in steps, each an event, since a law must not depend on
 * the voltage of another branch.
 */
public final class GeneratorDevice implements BranchDevice {

    /** Steps of the field from nothing to full. */
    private static final int LEVELS = 20;

    /** How far the field may be from its step before the step is moved, in steps. */
    private static final double SLACK = 0.75;

    /**
     * How far the voltage would jump without a clamp if all of the output were dropped at once,
     * against the set point: to 101 V at a nominal 12 V, the top of the unsuppressed load dump of
     * ISO 16750-2 (from memory, unverified). In proportion for less: a guess.
     */
    private static final double JUMP = (101 - 14) / 14.0;

    /** Less than this is the leak of an open contact (A). */
    private static final double LEAK_AMPS = 1e-6;

    /** A jump that is smaller than this is none (V). */
    private static final double LEAST_JUMP_VOLTS = 0.5;

    private final Placed placed;
    private final Generator generator;
    private final int branch;
    private final Situation now;
    private final Optional<CoilDevice> field;
    private final BooleanSupplier circuitSteadies;
    private final BooleanSupplier excitable;
    private BranchLaw delivering = Open.CIRCUIT;
    private double limitAmps;
    private double standing = Double.POSITIVE_INFINITY;
    private boolean delivers = true;
    private boolean steadied = true;
    private int level = LEVELS;
    private boolean resting;
    private double dumpVolts;
    private double droppedFrom;
    private double dumpEnds = NO_DEADLINE;

    /** The event of a load dump whose voltage the network has still to say; below 0 for none. */
    private int dumpTold = -1;

    private double carriedAmps;
    private boolean adopted;

    /**
     * @param excitable whether another source that can give reaches its field
     */
    public GeneratorDevice(
            Placed placed,
            Generator generator,
            int branch,
            Optional<CoilDevice> field,
            BooleanSupplier circuitSteadies,
            BooleanSupplier excitable,
            Situation now) {
        this.placed = placed;
        this.generator = generator;
        this.branch = branch;
        this.field = field;
        this.circuitSteadies = circuitSteadies;
        this.excitable = excitable;
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
        carriedAmps = adopted ? carriedAmps : amps();
        adopted = false;
        double amps =
                Math.min(
                        generator.output().ampsAt(now.revsPerSecond()) * level / LEVELS,
                        standingAmps());
        if (!delivers || amps <= 0) {
            return Open.CIRCUIT;
        }
        if (dumps()) {
            return source(dumpVolts, amps);
        }
        if (amps != limitAmps) {
            limitAmps = amps;
            delivering = source(generator.regulation().setVolts(), amps);
        }
        return delivering;
    }

    /**
     * Most that its field allows in the milliseconds of a motor's start: what it gave before. The
     * current of a field moves in tenths of a second (the 40 to 400 ms of a load dump in ISO
     * 16750-2 are its decay; from memory, unverified). Magnets give at once what they can.
     */
    private double standingAmps() {
        if (!now.fieldsStand || generator.hasMagnets()) {
            standing = Double.POSITIVE_INFINITY;
        } else if (Double.isInfinite(standing)) {
            standing = Math.max(0, amps());
        }
        return standing;
    }

    /** Its law while its field stands as it is. */
    BranchLaw standing() {
        boolean gives = now.solver.law(branch).conducts();
        if (!gives || generator.hasMagnets()) {
            return now.solver.law(branch);
        }
        double amps = Math.max(0, amps());
        return amps == 0 ? Open.CIRCUIT : source(generator.regulation().setVolts(), amps);
    }

    private BranchLaw source(double setVolts, double amps) {
        return new LimitedSource(setVolts, generator.regulation().droopOhms(), amps);
    }

    @Override
    public double margin() {
        if (resting) {
            return NOTHING_TO_WATCH;
        }
        if (dumpTold >= 0) {
            return NOW;
        }
        if (steadied != circuitSteadies.getAsBoolean()) {
            return NOW;
        }
        if (now.fieldsStand) {
            return NOT_NOW;
        }
        if (delivers != able()) {
            return NOW;
        }
        return delivers ? SLACK - Math.abs(LEVELS * fieldShare() - level) : NOT_NOW;
    }

    @Override
    public void cross() {
        if (dumpTold >= 0) {
            double reached = now.voltsBetween(placed.from(), placed.to());
            now.journal.reword(dumpTold, dumpWords(EventWords.volts(reached)));
            dumpTold = -1;
        } else if (steadied != circuitSteadies.getAsBoolean()) {
            steadied = !steadied;
            dumpEnds = NO_DEADLINE;
            if (!steadied && delivers) {
                dump();
            }
        } else if (delivers != able()) {
            turn();
        } else {
            level = (int) Math.round(LEVELS * fieldShare());
        }
    }

    /** The current that has just lost its way lifts the voltage. */
    private void dump() {
        double dropped = (carriedAmps - amps()) / generator.output().largestAmps();
        double setVolts = generator.regulation().setVolts();
        double jump =
                Math.min(generator.alone().clampVolts() - setVolts, JUMP * dropped * setVolts);
        double seconds = generator.alone().dumpSeconds();
        if (jump < LEAST_JUMP_VOLTS || seconds == 0 || isShutOff()) {
            return;
        }
        dumpVolts = setVolts + jump;
        droppedFrom = carriedAmps;
        dumpEnds = now.seconds + seconds;
        now.log(Kind.LOAD_DUMP, placed.part(), dumpWords(EventWords.volts(dumpVolts)));
        dumpTold = now.journal.latest();
    }

    /**
     * Magnets with their output open: no field has to fall, and a regulator with nothing behind it
     * passes nothing on. Common practice, no published source.
     */
    private boolean isShutOff() {
        return generator.hasMagnets() && Math.abs(amps()) < LEAK_AMPS;
    }

    /**
     * How high it jumps is for the network to say: loads that take all that it can give hold it
     * below what it would jump to by itself.
     */
    private String dumpWords(String volts) {
        return "loses its battery while it delivers "
                + EventWords.amps(droppedFrom)
                + ": its voltage jumps to "
                + volts
                + " for "
                + EventWords.milliseconds(generator.alone().dumpSeconds());
    }

    private void turn() {
        delivers = able();
        dumpEnds = NO_DEADLINE;
        level = delivers ? Math.max(1, level) : level;
        boolean unsteady =
                turns() && excited() && generator.alone().then() == WithoutBattery.UNSTEADY;
        if (delivers) {
            now.log(Kind.SOURCE_STARTS, placed.part(), "delivers again");
        } else if (unsteady) {
            now.log(
                    Kind.SOURCE_UNSTEADY,
                    placed.part(),
                    "goes on without a battery, but its voltage is not to be relied on:"
                            + " taken as no supply");
        } else {
            now.log(Kind.SOURCE_STOPS, placed.part(), "stops delivering: " + why());
        }
    }

    @Override
    public double deadline() {
        return dumpEnds;
    }

    @Override
    public void expire() {
        dumpEnds = NO_DEADLINE;
    }

    @Override
    public int blameRank() {
        return 1;
    }

    @Override
    public String remedy() {
        return "a field fed from where it does not fall with its own output";
    }

    @Override
    public void giveUp() {
        resting = true;
        delivers = false;
        dumpEnds = NO_DEADLINE;
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof GeneratorDevice then) {
            delivers = then.delivers;
            steadied = then.steadied;
            level = then.level;
            resting = then.resting;
            carriedAmps = then.amps();
            adopted = true;
        }
    }

    private boolean able() {
        return turns() && excited() && (steadied || dumps() || !generator.needsBattery());
    }

    private boolean dumps() {
        return dumpEnds != NO_DEADLINE;
    }

    private boolean turns() {
        return generator.output().ampsAt(now.revsPerSecond()) > 0;
    }

    private boolean excited() {
        return field.map(CoilDevice::pulled).orElse(!generator.needsField());
    }

    /** How much of its full field it has, 0 to 1. */
    private double fieldShare() {
        double full = generator.fullFieldVolts();
        return full == 0 ? 1 : Math.min(1, field.map(CoilDevice::volts).orElse(0.0) / full);
    }

    private String why() {
        if (!turns()) {
            return "it turns too slowly";
        }
        if (excited()) {
            return "no battery steadies it";
        }
        boolean magnets = generator.hasMagnets();
        String unfed = magnets ? "its regulator is not fed" : "its field is not fed";
        String lasting = magnets ? ", nor will it be" : ", and cannot be excited again";
        return excitable.getAsBoolean()
                ? unfed
                : unfed + lasting + " while nothing alive reaches it";
    }
}
