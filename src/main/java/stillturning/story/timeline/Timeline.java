package stillturning.story.timeline;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.story.Moment;
import stillturning.story.Moment.FlightSpan;
import stillturning.story.MotorStart;
import stillturning.story.NormalFlight;
import stillturning.story.Pilot;
import stillturning.story.Rehearsal;
import stillturning.story.Rehearsal.MovePace;
import stillturning.story.Setting;
import stillturning.story.Setting.Propeller;
import stillturning.story.Snapshot;
import stillturning.story.Spell;
import stillturning.story.StartAttempt;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;
import stillturning.story.WatchedStory;
import stillturning.story.timeline.stride.StepLimits;
import stillturning.story.timeline.wiring.Layouts;
import stillturning.story.timeline.wiring.Layouts.Laid;

/**
 * Tells what follows from failures in one candidate. Once made it never changes, and may be asked
 * by several threads at once: each story is played in a run of its own.
 */
public final class Timeline {

    /** A story that goes on longer is cut here (s). */
    public static final double HORIZON_SECONDS = 12 * 3600;

    /** When the engine is stopped after a failure: once the procedures are done (s). A guess. */
    private static final double RESTART_AFTER_SECONDS = 300;

    /** How long one tries to get it running again (s). A guess. */
    private static final double PATIENCE_SECONDS = 60;

    private static final Failure NOTHING = new Failure("nothing", List.of(), Map.of());

    private final Study study;
    private final Moment moment;
    private final Phase phase;
    private final StepLimits stride;
    private final Candidate candidate;
    private final Layouts layouts;
    private final Run healthy;
    private final NormalFlight normal;
    private final Retold retold = new Retold();

    /**
     * Brings a candidate to normal flight in the phase in which the study's failures happen.
     *
     * @throws UntoldStory if it has no steady state there
     */
    public Timeline(Study study, Candidate candidate) throws UntoldStory {
        this(study, candidate, Moment.heldIn(study.goals().failurePhase().name()));
    }

    /**
     * Brings a candidate to normal flight at another moment.
     *
     * @throws UntoldStory if it has no steady state there
     * @throws IllegalArgumentException if the study has no such phase
     */
    public Timeline(Study study, Candidate candidate, Moment moment) throws UntoldStory {
        this(study, candidate, moment, StepLimits.EXACT);
    }

    /**
     * The same as {@link #Timeline(Study, Candidate)} in a third of the time: when what happens is
     * good to a few parts in 100,000.
     *
     * @throws UntoldStory if it has no steady state there
     */
    public static Timeline quick(Study study, Candidate candidate) throws UntoldStory {
        return quick(study, candidate, Moment.heldIn(study.goals().failurePhase().name()));
    }

    /**
     * The same as {@link #Timeline(Study, Candidate, Moment)} in a third of the time.
     *
     * @throws UntoldStory if it has no steady state there
     * @throws IllegalArgumentException if the study has no such phase
     */
    public static Timeline quick(Study study, Candidate candidate, Moment moment)
            throws UntoldStory {
        return new Timeline(study, candidate, moment, StepLimits.QUICK);
    }

    /** The same, carrying charges and heats no further than this at once (s). */
    Timeline(Study study, Candidate candidate, Moment moment, double longestStepSeconds)
            throws UntoldStory {
        this(study, candidate, moment, StepLimits.upTo(longestStepSeconds));
    }

    private Timeline(Study study, Candidate candidate, Moment moment, StepLimits stride)
            throws UntoldStory {
        this(study, candidate, new Layouts(candidate), moment, stride);
    }

    private Timeline(
            Study study, Candidate candidate, Layouts layouts, Moment moment, StepLimits stride)
            throws UntoldStory {
        this.study = study;
        this.candidate = candidate;
        this.layouts = layouts;
        this.stride = stride;
        this.moment = moment;
        this.phase =
                study.aircraft()
                        .phase(moment.phase())
                        .orElseThrow(
                                () ->
                                        new IllegalArgumentException(
                                                "the study has no phase " + moment.phase()));
        this.healthy = fresh();
        NormalFlight atRest = healthy.comeToRest();
        this.normal = atRest.andLost(fromDead());
    }

    /** What does not come on where all is switched on from dead. */
    private List<StoryEvent> fromDead() {
        try {
            return healthy.staysOpen(fresh());
        } catch (UntoldStory e) {
            String words = "cannot be told from dead: " + e.getMessage();
            return List.of(new StoryEvent(0, StoryEvent.Kind.UNTOLD, "engine", words, -1));
        }
    }

    private Run fresh() {
        Run run =
                new Run(
                        candidate,
                        layouts.intact(),
                        new FlightConditions(
                                study.aircraft(),
                                phase,
                                new Moment(phase.name(), FlightSpan.HELD, moment.batteries()),
                                Setting.with(Pilot.NEVER),
                                stride));
        if (study.aircraft().isStarted(phase)) {
            run.stand();
        }
        return run;
    }

    private Timeline(Timeline same, StepLimits stride) {
        study = same.study;
        moment = same.moment;
        phase = same.phase;
        this.stride = stride;
        candidate = same.candidate;
        layouts = same.layouts;
        healthy = same.healthy;
        normal = same.normal;
    }

    /**
     * Failures by what they leave, each group in the given order: the stories of one group differ
     * in nothing but the name, as those of a wire that is open and of one that it is crimped to.
     * Who tells one after the other has all but the first for nothing.
     */
    public Collection<List<Failure>> alike(List<Failure> failures) {
        return Retold.alike(failures, failure -> layouts.bare(failure.hits()).left());
    }

    /**
     * The same candidate at another moment, as exactly; what is known of its wiring is shared.
     *
     * @throws UntoldStory if it has no steady state there
     * @throws IllegalArgumentException if the study has no such phase
     */
    public Timeline at(Moment other) throws UntoldStory {
        return new Timeline(study, candidate, layouts, other, stride);
    }

    /**
     * The same candidate at the same moment of another study; what is known of its wiring is
     * shared.
     *
     * @throws UntoldStory if it has no steady state there
     * @throws IllegalArgumentException if that study has no such phase
     */
    public Timeline in(Study other) throws UntoldStory {
        return new Timeline(other, candidate, layouts, moment, stride);
    }

    /** The same candidate at the same moment, told exactly. */
    public Timeline exact() {
        return new Timeline(this, stride.exact());
    }

    /**
     * Starts the engine on the ground; nothing to tell where the study has no starter.
     *
     * @param hard with tired batteries in the cold, or as stated
     */
    public static Optional<StartAttempt> start(Study study, Candidate candidate, boolean hard) {
        return start(study, candidate, hard, List.of());
    }

    /**
     * The same with something wrong already.
     *
     * @param hits failure modes that were there before
     */
    public static Optional<StartAttempt> start(
            Study study, Candidate candidate, boolean hard, List<Hit> hits) {
        return StartTrial.onTheGround(study, candidate, hard, hits);
    }

    /** The candidate with nothing wrong. */
    public NormalFlight normal() {
        return normal;
    }

    /** Whose stories it tells. */
    public Candidate candidate() {
        return candidate;
    }

    /** When in the flight its failures happen. */
    public Moment moment() {
        return moment;
    }

    /** The refusal of a candidate whose engine does not even run with nothing wrong. */
    public UntoldStory neverRan() {
        return normal.neverRan(study.aircraft().engine().logic().loads());
    }

    /**
     * What follows from a failure.
     *
     * @throws UntoldStory if a state on the way cannot be computed
     */
    public Story tell(Failure failure, Pilot pilot) throws UntoldStory {
        return tell(failure, Setting.with(pilot));
    }

    /**
     * What follows from a failure in this setting. Where it is to look for starts: what follows if
     * the motor whose start does the engine most harm starts at its worst moment.
     *
     * @throws UntoldStory if a state on the way cannot be computed
     */
    public Story tell(Failure failure, Setting setting) throws UntoldStory {
        return tell(failure, setting, HORIZON_SECONDS);
    }

    /**
     * The same, cut at another horizon (s).
     *
     * @throws UntoldStory if a state on the way cannot be computed
     */
    public Story tell(Failure failure, Setting setting, double horizonSeconds) throws UntoldStory {
        Run run = looking(bare(failure), failure, setting);
        Story worst = run.tell(failure, horizonSeconds);
        for (MotorStart.Of start : run.harmfulStarts()) {
            Story with = after(failure, setting.with(start)).tell(failure, horizonSeconds);
            worst = with.engine().isWorseThan(worst.engine()) ? with : worst;
        }
        return worst;
    }

    /**
     * What follows from a failure in this setting, as far as it can be told: where a state on the
     * way cannot be computed, the story breaks off there, and the engine's endurance is {@link
     * stillturning.story.Endurance.Untold}.
     */
    public Story tellAsFar(Failure failure, Setting setting) {
        return retold.story(
                failure,
                layouts.bare(failure.hits()).left(),
                setting,
                () -> told(failure, setting));
    }

    private Story told(Failure failure, Setting setting) {
        Run run = looking(bare(failure), failure, setting);
        Story worst = run.tellAsFar(failure, HORIZON_SECONDS);
        for (MotorStart.Of start : run.harmfulStarts()) {
            Story with = after(failure, setting.with(start)).tellAsFar(failure, HORIZON_SECONDS);
            worst = with.engine().isWorseThan(worst.engine()) ? with : worst;
        }
        return worst;
    }

    /**
     * The same story as {@link #tellAsFar(Failure, Setting)}, with every instant that it was told
     * from.
     */
    public WatchedStory watch(Failure failure, Setting setting) {
        Setting told = tellAsFar(failure, setting).setting();
        Run run = looking(layouts.whole(failure.hits()), failure, told);
        return run.watch(failure, HORIZON_SECONDS, seconds -> true);
    }

    /**
     * A story that this time line has told before, with the instants at which something happens in
     * it. Nobody looks for starts again: the one that harms is known.
     */
    public WatchedStory watchEvents(Story told) {
        Setting setting = told.setting();
        Setting known = setting.looksForStarts() ? setting.with(new MotorStart.Never()) : setting;
        // what leads nowhere is there to look at, and moves the last digits
        return after(layouts.whole(told.failure().hits()), told.failure(), known)
                .watch(told.failure(), HORIZON_SECONDS, told::hasEventAt);
    }

    /** The candidate with nothing wrong, as it comes to every failure. */
    public Snapshot before() {
        return healthy.frame();
    }

    private Run looking(Laid laid, Failure failure, Setting setting) {
        Run run = after(laid, failure, setting);
        if (setting.looksForStarts()) {
            run.lookForStarts(study.goals().enoughSeconds());
        }
        return run;
    }

    /**
     * Tries to start the engine again in flight on what a failure leaves, after something else than
     * electricity has stopped it: by the air where that turns it, else by the starter.
     *
     * @throws UntoldStory if a state on the way cannot be computed
     */
    public StartAttempt restart(Failure failure) throws UntoldStory {
        return after(failure, Setting.with(Pilot.PLANNED))
                .restart(failure, RESTART_AFTER_SECONDS, PATIENCE_SECONDS);
    }

    private Laid bare(Failure failure) {
        return layouts.bare(failure.hits()).laid();
    }

    private Run after(Failure failure, Setting setting) {
        return after(bare(failure), failure, setting);
    }

    private Run after(Laid laid, Failure failure, Setting setting) {
        Run run = new Run(candidate, laid, scene(failure, setting));
        run.resume(healthy);
        run.fly();
        return run;
    }

    /**
     * What a pilot who only moves these levers can notice, step by step, of a failure that was
     * there before, and what harm the moves do on the way.
     *
     * @param steps positions by lever, moved one after the other in their order
     * @param pace from one move to the next, and how long each step is held after its last
     * @throws UntoldStory if a state on the way cannot be computed
     */
    public Rehearsal rehearse(Failure failure, List<Map<String, String>> steps, MovePace pace)
            throws UntoldStory {
        Setting setting = Setting.with(Pilot.NEVER).with(Propeller.STANDS);
        Run run = after(layouts.whole(failure.hits()), failure, setting);
        return Bench.rehearse(run, failure, steps, pace);
    }

    /**
     * What there is to see and to measure on the ground while the candidate is held in one
     * condition after the other, each beginning where the last ended; nobody follows a procedure.
     *
     * @throws UntoldStory if a state on the way cannot be computed
     */
    public List<Spell> hold(List<Spell.HeldCondition> conditions) throws UntoldStory {
        Setting setting = Setting.with(Pilot.NEVER).with(Propeller.STANDS);
        Bench bench =
                new Bench(
                        candidate,
                        healthy,
                        hits -> new Run(candidate, layouts.whole(hits), scene(NOTHING, setting)));
        List<Spell> spells = new ArrayList<>();
        for (Spell.HeldCondition condition : conditions) {
            spells.add(bench.hold(condition));
        }
        return List.copyOf(spells);
    }

    private FlightConditions scene(Failure failure, Setting setting) {
        return new FlightConditions(
                study.aircraft(), phase, moment, setting, failure.moves(), failure.dark(), stride);
    }
}
