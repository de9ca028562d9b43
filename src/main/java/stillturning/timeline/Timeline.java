package stillturning.timeline;

import java.util.Optional;
import stillturning.failure.Failure;
import stillturning.model.Candidate;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.timeline.Run.Scene;

/** Tells what follows from failures in one candidate. For one thread at a time. */
public final class Timeline {

    /** A story that goes on longer is cut here (s). */
    public static final double HORIZON_SECONDS = 12 * 3600;

    private final Study study;
    private final Phase phase;
    private final Candidate candidate;
    private final Run healthy;
    private final Normal normal;

    /**
     * Brings a candidate to normal flight.
     *
     * @throws UntoldStory if it has no steady state there
     */
    public Timeline(Study study, Candidate candidate) throws UntoldStory {
        this.study = study;
        this.phase = study.goals().failurePhase();
        this.candidate = candidate;
        this.healthy =
                new Run(candidate, candidate.circuit(), Optional.empty(), scene(Pilot.NEVER));
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
        Run run =
                new Run(
                        candidate,
                        candidate.circuit(failure.hits()),
                        Optional.of(healthy.topology()),
                        scene(pilot));
        run.resume(healthy);
        return run.tell(failure, HORIZON_SECONDS);
    }

    private Scene scene(Pilot pilot) {
        return new Scene(study.aircraft(), phase, pilot);
    }
}
