package stillturning.timeline;

import java.util.Optional;
import stillturning.failure.Failure;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.story.Moment;
import stillturning.story.Normal;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.UntoldStory;
import stillturning.timeline.Run.Scene;

/**
 * Tells what follows from failures in one candidate. Once made it never changes, and may be asked
 * by several threads at once: each story is played in a run of its own.
 */
public final class Timeline {

    /** A story that goes on longer is cut here (s). */
    public static final double HORIZON_SECONDS = 12 * 3600;

    private final Study study;
    private final Phase phase;
    private final double longestStepSeconds;
    private final Candidate candidate;
    private final Circuit intact;
    private final Run healthy;
    private final Normal normal;

    /**
     * Brings a candidate to normal flight.
     *
     * @throws UntoldStory if it has no steady state there
     */
    public Timeline(Study study, Candidate candidate) throws UntoldStory {
        this(study, candidate, Double.POSITIVE_INFINITY);
    }

    /** The same, carrying charges and heats no further than this at once (s). */
    Timeline(Study study, Candidate candidate, double longestStepSeconds) throws UntoldStory {
        this.study = study;
        this.longestStepSeconds = longestStepSeconds;
        this.phase = study.goals().failurePhase();
        this.candidate = candidate;
        this.intact = candidate.circuit();
        this.healthy =
                new Run(candidate, intact, Optional.empty(), scene(Setting.with(Pilot.NEVER)));
        this.normal = healthy.comeToRest();
    }

    /** The candidate with nothing wrong. */
    public Normal normal() {
        return normal;
    }

    /** The refusal of a candidate whose engine does not even run with nothing wrong. */
    public UntoldStory neverRan() {
        return new UntoldStory(
                "the engine does not run in normal flight; without supply: "
                        + study.aircraft().engine().logic().loads().stream()
                                .filter(load -> !normal.working().contains(load))
                                .reduce((a, b) -> a + ", " + b)
                                .orElse("nothing that it needs"));
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
     * What follows from a failure in this setting.
     *
     * @throws UntoldStory if a state on the way cannot be computed
     */
    public Story tell(Failure failure, Setting setting) throws UntoldStory {
        return tell(failure, setting, HORIZON_SECONDS);
    }

    /** The same, cut at another horizon (s). */
    Story tell(Failure failure, Setting setting, double horizonSeconds) throws UntoldStory {
        Run run =
                new Run(
                        candidate,
                        intact.failed(candidate, failure.hits()),
                        Optional.of(healthy.topology()),
                        scene(setting));
        run.resume(healthy);
        return run.tell(failure, horizonSeconds);
    }

    private Scene scene(Setting setting) {
        return new Scene(
                study.aircraft(), phase, Moment.heldIn(phase.name()), setting, longestStepSeconds);
    }
}
