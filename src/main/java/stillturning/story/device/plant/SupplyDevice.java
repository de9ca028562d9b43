package stillturning.story.device.plant;

import java.util.Optional;
import stillturning.model.Circuit.Placed;
import stillturning.model.LoadNeed;
import stillturning.model.LoadNeed.Inrush;
import stillturning.model.Phase;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.Open;
import stillturning.network.law.Resistive;
import stillturning.parts.element.Consumer;
import stillturning.parts.element.Tolerance;
import stillturning.story.StoryEvent;
import stillturning.story.device.BranchDevice;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;
import stillturning.story.device.Watch;

/** A load's supply: works, starves, works on its own battery, has stopped, or is coming back. */
public final class SupplyDevice implements BranchDevice {

    private enum State {
        WORKS,
        STARVES,
        ON_ITS_OWN,
        STOPPED,
        COMES_BACK
    }

    /** A load says only of what lasts as long that it works on its own battery (s). A guess. */
    private static final double SAYS_SO_SECONDS = 1;

    private final Placed placed;
    private final double nominalVolts;
    private final Tolerance tolerance;
    private final Optional<LoadNeed> need;
    private final int branch;
    private final Situation now;
    private final BranchLaw average;
    private final BranchLaw running;
    private final BranchLaw standing;
    private BranchLaw drawing;
    private boolean started;
    private final boolean cranks;
    private final Reserve reserve;
    private int phaseSeen = -1;
    private boolean inPhase;
    private int shedSeen;
    private boolean shed;
    private boolean paused;
    private final Watch fed;
    private final Watch starving;
    private final Watch stopped;
    private State state = State.WORKS;
    private double deadline = NO_DEADLINE;
    private double runsOut = NO_DEADLINE;
    private int ledBy = -1;
    private boolean destroyed;

    /**
     * @param need the study's load that this is; empty for the electronics inside a part
     */
    public SupplyDevice(
            Placed placed, Consumer consumer, Optional<LoadNeed> need, int branch, Situation now) {
        this.placed = placed;
        this.nominalVolts = consumer.demand().nominalVolts();
        this.tolerance = consumer.tolerance();
        this.reserve = new Reserve(tolerance);
        this.need = need;
        this.branch = branch;
        this.now = now;
        this.cranks =
                need.isPresent()
                        && now.aircraft.engine().starting().starter().equals(Optional.of(part()));
        this.running = LoadLaw.running(consumer, 1);
        this.average =
                now.setting.blocks().even() && duty() < 1
                        ? LoadLaw.running(consumer, duty())
                        : running;
        this.drawing = average;
        this.standing =
                inrush().amps() > 0
                        ? LoadLaw.atRest(consumer, inrush().amps(), nominalVolts)
                        : running;
        this.fed = Watch.OfVolts.atLeast(placed.from(), placed.to(), tolerance.minimumVolts());
        this.starving = Watch.OfVolts.atMost(placed.from(), placed.to(), tolerance.minimumVolts());
        this.stopped = Watch.OfVolts.atMost(placed.from(), placed.to(), tolerance.restartVolts());
    }

    /** Whether it is the electronics inside a part, not a load of the study. */
    public boolean insidePart() {
        return need.isEmpty();
    }

    public String part() {
        return placed.part();
    }

    public Placed placed() {
        return placed;
    }

    /** Wanted in this phase, not shed, and supplied. */
    public boolean works() {
        return wanted()
                && !destroyed
                && (state == State.WORKS || state == State.STARVES || state == State.ON_ITS_OWN);
    }

    /** Whether it works on with less than its minimum voltage. */
    public boolean starves() {
        return works() && state != State.WORKS;
    }

    /** Whether it has gone over to the battery that it has for itself. */
    public boolean onItsOwnBattery() {
        return works() && state == State.ON_ITS_OWN;
    }

    /** Whether the pilot has switched it off. */
    public boolean shed() {
        if (shedSeen != now.shed.changes()) {
            shedSeen = now.shed.changes();
            shed = now.shed.contains(placed.part());
        }
        return shed;
    }

    public boolean wanted() {
        // nobody can shed a starter that runs on
        return (cranks && started)
                || (!paused && (started || (cranks ? now.cranking : inPhase())) && !shed());
    }

    /** Share of the time that it runs, 0 to 1. */
    double duty() {
        return need.map(n -> n.use().duty()).orElse(1.0);
    }

    /** Whether the study has it run in a phase. */
    public boolean runsIn(Phase phase) {
        return need.map(n -> n.use().phases().contains(phase.name())).orElse(true);
    }

    /** Switches it off or on between the blocks in which it runs. */
    void pause(boolean off) {
        paused = off;
    }

    /** Switches a load on that runs now and then. */
    void start() {
        started = true;
        drawing = startLaw();
    }

    /** It has come up to speed. */
    void run() {
        drawing = running;
    }

    /** It draws its average again. */
    void rest() {
        started = false;
        drawing = average;
    }

    /** While it comes up to speed: a rotor that stands still is the resistance of its winding. */
    BranchLaw startLaw() {
        double amps = inrush().amps();
        return amps > 0 ? new Resistive(nominalVolts / amps) : running;
    }

    /** Current while it runs, at its nominal voltage (A). */
    double fullAmps() {
        return need.map(n -> n.demand().amps()).orElse(0.0);
    }

    /** Once it runs. */
    BranchLaw runLaw() {
        return running;
    }

    /** What it draws when it is switched on. */
    Inrush inrush() {
        return need.map(n -> n.use().inrush()).orElse(Inrush.NONE);
    }

    /** How long it runs when it is switched on (s): its share of a phase in one go. A guess. */
    double runSeconds() {
        double phase =
                now.aircraft.phases().stream()
                        .filter(this::runsIn)
                        .mapToDouble(Phase::seconds)
                        .reduce((first, last) -> last)
                        .orElse(0);
        return duty() * (runsIn(now.phase) ? now.phase.seconds() : phase);
    }

    /** Whether the study has it switched on now and then, and nobody has shed it. */
    boolean mayStart() {
        return need.isPresent()
                && need.get().use().nowAndThen()
                && !cranks
                && !shed()
                && !destroyed;
    }

    /** Whether it works on if its present voltage lasts so long (s). */
    boolean bears(double seconds) {
        return works()
                && (volts() >= tolerance.minimumVolts() || seconds <= reserve.seconds(now.seconds));
    }

    /** Its voltage in shares of the least with which it works. */
    double plenty() {
        return volts() / tolerance.minimumVolts();
    }

    private boolean inPhase() {
        if (phaseSeen != now.phasesFlown) {
            phaseSeen = now.phasesFlown;
            inPhase = runsIn(now.phase);
        }
        return inPhase;
    }

    public double volts() {
        return now.voltsBetween(placed.from(), placed.to());
    }

    public void destroy() {
        destroyed = true;
        deadline = NO_DEADLINE;
    }

    public boolean destroyed() {
        return destroyed;
    }

    @Override
    public int branch() {
        return branch;
    }

    @Override
    public BranchLaw law() {
        if (destroyed || !wanted()) {
            return Open.CIRCUIT;
        }
        return standsStill() ? standing : drawing;
    }

    /**
     * A motor that runs all the time and has stopped comes up from rest once its supply is back. Of
     * one that runs now and then the average counts, and its start is asked about by itself.
     */
    private boolean standsStill() {
        return inrush().amps() > 0
                && !cranks
                && duty() == 1
                && (state == State.STOPPED || state == State.COMES_BACK);
    }

    private double comesBackIn() {
        double rises = standsStill() ? inrush().seconds() : 0;
        return Math.max(tolerance.bootSeconds(), rises);
    }

    @Override
    public boolean gaveWay() {
        return destroyed;
    }

    @Override
    public double margin() {
        if (destroyed || !wanted()) {
            return NOTHING_TO_WATCH;
        }
        return switch (state) {
            case WORKS -> volts() - tolerance.minimumVolts();
            case STARVES, ON_ITS_OWN -> tolerance.minimumVolts() - volts();
            case STOPPED -> tolerance.restartVolts() - volts();
            case COMES_BACK -> volts() - tolerance.minimumVolts();
        };
    }

    @Override
    public Watch watch() {
        if (destroyed || !wanted()) {
            return Watch.Plain.NOTHING;
        }
        return switch (state) {
            case WORKS, COMES_BACK -> fed;
            case STARVES, ON_ITS_OWN -> starving;
            case STOPPED -> stopped;
        };
    }

    @Override
    public void cross() {
        ledBy = now.journal.cause();
        switch (state) {
            case WORKS -> starve();
            case STARVES -> fed();
            case ON_ITS_OWN -> {
                fed();
                now.log(
                        StoryEvent.Kind.LOAD_FED_AGAIN,
                        placed.part(),
                        "is fed again at " + EventWords.volts(volts()),
                        ledBy);
            }
            case STOPPED -> enter(State.COMES_BACK, now.seconds + comesBackIn());
            case COMES_BACK -> enter(State.STOPPED, NO_DEADLINE);
        }
    }

    private void starve() {
        double ends = now.seconds + reserve.startsAt(now.seconds);
        runsOut = ends;
        double says = now.seconds + Math.max(tolerance.rideThroughSeconds(), SAYS_SO_SECONDS);
        boolean goesOver = tolerance.ownBattery().isPresent() && says < ends;
        enter(State.STARVES, goesOver ? says : ends);
    }

    private void fed() {
        reserve.endsAt(now.seconds);
        enter(State.WORKS, NO_DEADLINE);
    }

    @Override
    public double deadline() {
        return destroyed || !wanted() ? NO_DEADLINE : deadline;
    }

    @Override
    public void expire() {
        if (state == State.STARVES && runsOut > now.seconds) {
            enter(State.ON_ITS_OWN, runsOut);
            now.log(
                    StoryEvent.Kind.LOAD_ON_ITS_OWN,
                    placed.part(),
                    "goes over to its own battery: " + tooLittle(),
                    ledBy);
            return;
        }
        boolean starved = state == State.STARVES || state == State.ON_ITS_OWN;
        reserve.endsAt(now.seconds);
        enter(starved ? State.STOPPED : State.WORKS, NO_DEADLINE);
        now.log(
                starved ? StoryEvent.Kind.LOAD_STOPS : StoryEvent.Kind.LOAD_RESTARTS,
                placed.part(),
                starved ? stopped() : "works again at " + EventWords.volts(volts()),
                ledBy);
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof SupplyDevice then) {
            state = then.state;
            destroyed = then.destroyed;
            runsOut = then.runsOut;
            reserve.adopt(then.reserve);
        }
    }

    /** A load only suffers; the logic of a controller opens and closes its channels. */
    @Override
    public int blameRank() {
        return insidePart() ? 1 : 0;
    }

    @Override
    public String remedy() {
        return "a supply of its logic that its own channels cannot pull down";
    }

    @Override
    public void giveUp() {
        enter(State.STOPPED, NO_DEADLINE);
        destroyed = true;
    }

    private String stopped() {
        String own = tolerance.ownBattery().map(b -> ", and its own battery is empty").orElse("");
        return "stops: " + tooLittle() + own;
    }

    private String tooLittle() {
        return Math.abs(volts()) < 0.5
                ? "no supply"
                : EventWords.tooLittle(volts(), tolerance.minimumVolts());
    }

    private void enter(State next, double until) {
        state = next;
        deadline = until;
    }
}
