package stillturning.story.timeline;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoublePredicate;
import java.util.function.Function;
import java.util.function.Supplier;
import stillturning.model.Candidate;
import stillturning.model.failure.Failure;
import stillturning.network.NodalSolver;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.Open;
import stillturning.story.AdverseEffect;
import stillturning.story.Balance;
import stillturning.story.Endurance;
import stillturning.story.FirstSign;
import stillturning.story.Moment.Batteries;
import stillturning.story.Moment.FlightSpan;
import stillturning.story.MotorStart;
import stillturning.story.NormalFlight;
import stillturning.story.Snapshot;
import stillturning.story.StartAttempt;
import stillturning.story.SteadyState;
import stillturning.story.Story;
import stillturning.story.Story.Aftermath;
import stillturning.story.Story.EngineFate;
import stillturning.story.Story.Measurements;
import stillturning.story.StoryEvent;
import stillturning.story.TripContest;
import stillturning.story.UntoldStory;
import stillturning.story.WatchedStory;
import stillturning.story.device.BranchLayout;
import stillturning.story.device.Device;
import stillturning.story.device.EventLog;
import stillturning.story.device.Situation;
import stillturning.story.device.plant.Plant;
import stillturning.story.device.plant.WorstStart;
import stillturning.story.timeline.watch.SignWatch;
import stillturning.story.timeline.wiring.Layouts.Laid;

/** One candidate in one condition, wired up and ready to play. */
final class Run {

    private final FlightConditions scene;
    private final BranchLayout layout;
    private final Situation now;
    private final Plant plant;
    private final EngineAndPilot engineAndPilot;
    private final Recorder recorder;
    private final EnergyMeter meter;
    private final Simulation simulation;
    private final SignWatch signs;
    private final Readings readings;
    private final EventLog journal = new EventLog();
    private Runnable watching = () -> {};
    private Optional<WorstStart> starts = Optional.empty();

    /** What works once the quick events are over, from then on. */
    private Optional<Aftermath> aftermath = Optional.empty();

    Run(Candidate candidate, Laid laid, FlightConditions scene) {
        this.scene = scene;
        this.layout = laid.layout();
        BranchLaw[] laws = new BranchLaw[layout.from.length];
        Arrays.fill(laws, Open.CIRCUIT);
        NodalSolver solver = new NodalSolver(layout.topology, layout.from, layout.to, laws);
        this.now =
                new Situation(
                        solver,
                        laid.circuit().returns(),
                        scene.aircraft(),
                        scene.phase(),
                        scene.setting(),
                        part -> zone(candidate, part),
                        journal);
        now.levers.putAll(candidate.cockpit().flight());
        now.starting.putAll(candidate.cockpit().starting());
        this.plant = new Plant(laid.circuit(), layout, now);
        this.engineAndPilot = new EngineAndPilot(plant, candidate.cockpit(), scene, now);
        if (scene.moment().batteries() == Batteries.TIRED) {
            double left = scene.aircraft().engine().starting().tiredCharge();
            plant.cells().forEach(cell -> cell.charge(left * cell.value()));
        }
        this.signs = new SignWatch(plant.loads(), now);
        this.readings = new Readings(candidate, layout, plant, engineAndPilot, signs, now);
        this.recorder = new Recorder(candidate, plant, engineAndPilot.engine(), now);
        this.meter = new EnergyMeter(plant, layout, now, scene.stride().missing());
        this.simulation = new Simulation(plant, engineAndPilot, now, meter, scene.stride());
    }

    private static String zone(Candidate candidate, String part) {
        return candidate.part(part).map(known -> known.tag().zone()).orElse("");
    }

    /** The engine has not been started yet. */
    void stand() {
        engineAndPilot.engine().stand();
    }

    /** The flight goes on from here. */
    void fly() {
        engineAndPilot.fly();
    }

    /** Plays until normal flight is reached. */
    NormalFlight comeToRest() throws UntoldStory {
        if (now.phase.engineOff()) {
            stand();
        }
        simulation.comeToRest();
        return readings.normal(happenings());
    }

    /** Contacts that are held here and do not close where all is switched on from dead. */
    List<StoryEvent> staysOpen(Run fromDead) throws UntoldStory {
        fromDead.plant.release();
        fromDead.comeToRest();
        Set<String> closed = fromDead.journal.partsOf(StoryEvent.Kind.CONTACTS_CLOSE);
        return fromDead.plant.staysOpen(plant, closed);
    }

    /** Takes over where another run came to rest. */
    void resume(Run healthy) {
        resume(healthy, healthy.simulation::likeness);
    }

    /**
     * Takes over where another run came to rest.
     *
     * @param likeness of what is to be taken over, by name
     */
    void resume(Run healthy, Function<String, Optional<Device>> likeness) {
        for (Map.Entry<String, Device> entry : simulation.devices().entrySet()) {
            Optional<Device> like = likeness.apply(entry.getKey());
            if (like.isPresent()) {
                entry.getValue().adopt(like.get());
            }
        }
        double[] volts = new double[layout.topology.nets()];
        for (int net = 0; net < volts.length; net++) {
            // nets that only a fault has come last
            volts[net] = net < healthy.layout.topology.nets() ? healthy.now.solver.volts(net) : 0;
        }
        now.solver.start(volts);
        signs.before(healthy.readings.working());
    }

    /** As far as a failure can be told, with the wanted ones of all instants that are recorded. */
    WatchedStory watch(Failure failure, double horizonSeconds, DoublePredicate wanted) {
        SnapshotRecorder film = film();
        watching =
                () -> {
                    if (wanted.test(now.seconds)) {
                        film.take();
                    }
                };
        return new WatchedStory(tellAsFar(failure, horizonSeconds), film.frames());
    }

    /** What stands at this instant. */
    Snapshot frame() {
        return film().take();
    }

    private SnapshotRecorder film() {
        return new SnapshotRecorder(plant, layout, engineAndPilot.engine(), now);
    }

    /**
     * Has it found out, while it tells, at which moment the start of a motor would harm the engine
     * most.
     *
     * @param enoughSeconds time to get down from the first sign: what starts later starts on the
     *     ground (s)
     */
    void lookForStarts(double enoughSeconds) {
        boolean held = scene.moment().span() == FlightSpan.HELD;
        Supplier<Optional<FirstSign>> sign = signs::first;
        starts = Optional.of(new WorstStart(plant, now, held, enoughSeconds, sign));
    }

    /** The worst moment of each motor whose start would harm the engine. */
    List<MotorStart.Of> harmfulStarts() {
        return starts.map(WorstStart::harmful).orElse(List.of());
    }

    /** How far to go at once (s), so that it does not hang on steps when starts are asked about. */
    private double limit(double horizonSeconds) {
        return Math.min(horizonSeconds, starts.map(WorstStart::nextSeconds).orElse(horizonSeconds));
    }

    /** Plays a failure to its end. */
    Story tell(Failure failure, double horizonSeconds) throws UntoldStory {
        play(failure, horizonSeconds);
        return story(failure, readings.fate(horizonSeconds), meter.balance());
    }

    /** Plays a failure to its end, or to where it cannot be computed any further. */
    Story tellAsFar(Failure failure, double horizonSeconds) {
        try {
            play(failure, horizonSeconds);
        } catch (UntoldStory e) {
            EngineDevice engine = engineAndPilot.engine();
            return brokenOff(failure, engine.stopped() ? engine.stoppedAt() : now.seconds, e);
        }
        try {
            return story(failure, readings.fate(horizonSeconds), meter.balance());
        } catch (UntoldStory e) {
            // of a story that does not balance nothing is certain
            return brokenOff(failure, 0, e);
        }
    }

    private Story brokenOff(Failure failure, double toldSeconds, UntoldStory why) {
        String reason = String.valueOf(why.getMessage());
        // there is nothing to read where no state was found
        journal.whenTold(() -> {});
        now.log(StoryEvent.Kind.UNTOLD, subject(failure), "cannot be told on: " + reason);
        EngineFate fate = readings.fate(new Endurance.Untold(toldSeconds, reason), false);
        return story(failure, fate, meter.asFarAsTold());
    }

    private void play(Failure failure, double horizonSeconds) throws UntoldStory {
        now.levers.putAll(failure.atOnce());
        now.log(StoryEvent.Kind.FAILURE, subject(failure), failure.name());
        signs.begin(failure);
        shedAtOnce();
        journal.solved();
        journal.whenTold(recorder::glimpse);
        boolean over = false;
        while (!over) {
            simulation.settle();
            look();
            if (simulation.quiet()) {
                aftermath = aftermath.or(() -> Optional.of(readings.aftermath()));
                if (starts.isPresent()) {
                    starts.get().look();
                }
            }
            over =
                    engineAndPilot.landed()
                            || simulation.over(horizonSeconds, engineAndPilot.engine().stopped());
            if (!over) {
                simulation.advance(limit(horizonSeconds));
                look();
            }
        }
    }

    private Story story(Failure failure, EngineFate fate, Balance balance) {
        Aftermath after = aftermath.orElseGet(readings::aftermath);
        return new Story(
                failure,
                scene.moment(),
                scene.setting(),
                happenings(),
                fate,
                new Aftermath(after.working(), after.feeds(), engineAndPilot.acted()),
                new Measurements(
                        journal.contests(),
                        recorder.traces(),
                        recorder.bars(),
                        balance,
                        plant.doubtfullySteadied()),
                now.seconds);
    }

    private void look() {
        recorder.look();
        watching.run();
    }

    /** Keeps the key turned, so that the starter draws. */
    void crank() {
        now.crank(true);
    }

    /** Lets a failure happen, and whatever happens at the same instant. */
    void inject(Failure failure) throws UntoldStory {
        now.levers.putAll(failure.atOnce());
        now.log(StoryEvent.Kind.FAILURE, subject(failure), failure.name());
        journal.solved();
        simulation.settle();
    }

    /**
     * Plays on until nothing more can happen or the horizon is reached.
     *
     * @param steady told whenever nothing quick goes on any more, and at the end
     */
    void follow(double horizonSeconds, Runnable steady) throws UntoldStory {
        boolean over = false;
        while (!over) {
            simulation.settle();
            if (simulation.quiet()) {
                steady.run();
            }
            over = simulation.over(horizonSeconds, engineAndPilot.engine().stopped());
            if (!over) {
                simulation.advance(horizonSeconds);
            }
        }
        if (!simulation.quiet()) {
            steady.run();
        }
    }

    /** Plays on to the horizon (s). */
    void carryOn(double horizonSeconds) throws UntoldStory {
        simulation.settle();
        while (now.seconds < horizonSeconds) {
            simulation.advance(horizonSeconds);
            simulation.settle();
        }
    }

    /** Notes what a pilot could notice. */
    PilotViewRecorder looker() {
        return new PilotViewRecorder(engineAndPilot, plant.loads(), now);
    }

    /** What is true at this instant. */
    Situation now() {
        return now;
    }

    /** What works and what the sources give at this instant. */
    NormalFlight state() {
        return readings.normal(List.of());
    }

    /** Every device by its name. */
    Map<String, Device> devices() {
        return simulation.devices();
    }

    /** The device of this name; for what only a fault has, the first of the same part. */
    Optional<Device> like(String name) {
        return simulation.likeness(name);
    }

    /** What flows at this instant. */
    SteadyState flow() {
        return readings.flow();
    }

    List<StoryEvent> happenings() {
        return Repetitions.shortened(journal.happenings());
    }

    List<TripContest> contests() {
        return journal.contests();
    }

    /**
     * Stands at rest, then turns the key. An attempt that cannot be told on counts as failed.
     *
     * @param conditions in words
     */
    StartAttempt start(String conditions) {
        return starting().start(conditions);
    }

    /**
     * Plays a failure, has the engine stopped by something else some time after it, and tries to
     * start it again: by the air where that turns it, else by the starter.
     *
     * @param afterSeconds when it is stopped (s)
     * @param patienceSeconds how long one waits for it to run again (s)
     */
    StartAttempt restart(Failure failure, double afterSeconds, double patienceSeconds)
            throws UntoldStory {
        inject(failure);
        carryOn(afterSeconds);
        return starting().again(failure.name(), patienceSeconds);
    }

    private StartTrial starting() {
        return new StartTrial(plant, engineAndPilot.engine(), simulation, now, journal);
    }

    private void shedAtOnce() {
        Set<String> off = scene.setting().shedding().atOnce();
        if (!off.isEmpty()) {
            now.shed.add(off);
            now.log(
                    StoryEvent.Kind.PILOT,
                    AdverseEffect.COCKPIT,
                    "switches off all that the engine can spare");
        }
    }

    static String subject(Failure failure) {
        return failure.hits().isEmpty() ? "cockpit" : failure.hits().get(0).part();
    }
}
