package stillturning.story.timeline;

import java.util.ArrayList;
import java.util.List;
import stillturning.model.Candidate;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.story.Moment;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Setting.Race;
import stillturning.story.SteadyState;
import stillturning.story.StoryEvent;
import stillturning.story.TripContest;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.stride.StepLimits;
import stillturning.story.timeline.wiring.Layouts;

/**
 * What flows in a candidate in one phase of the flight, with nothing wrong and after failures. Once
 * made it never changes, and may be asked by several threads at once.
 */
public final class SteadyStates {

    private final Study study;
    private final Phase phase;
    private final Candidate candidate;
    private final Layouts layouts;
    private final Run healthy;
    private final SteadyState rest;

    /**
     * Brings a candidate to rest in a phase.
     *
     * @throws UntoldStory if it has no steady state there
     */
    public SteadyStates(Study study, Candidate candidate, Phase phase) throws UntoldStory {
        this.study = study;
        this.phase = phase;
        this.candidate = candidate;
        this.layouts = new Layouts(candidate);
        this.healthy = new Run(candidate, layouts.intact(), scene(Setting.with(Pilot.NEVER)));
        crank(healthy);
        healthy.comeToRest();
        this.rest = healthy.flow();
    }

    /** With nothing wrong, at the beginning of the phase. */
    public SteadyState rest() {
        return rest;
    }

    /**
     * With nothing wrong, at the end of the phase: batteries have filled or run down meanwhile.
     *
     * @throws UntoldStory if a state on the way cannot be computed
     */
    public SteadyState atEnd() throws UntoldStory {
        Run run = after(List.of(), Setting.with(Pilot.NEVER));
        run.carryOn(phase.seconds());
        return run.flow();
    }

    /**
     * The instant of a failure, before anything has opened.
     *
     * @throws UntoldStory if it cannot be computed
     */
    public SteadyState instant(Failure failure) throws UntoldStory {
        Run run = after(failure.hits(), Setting.with(Pilot.NEVER));
        run.inject(failure);
        return run.flow();
    }

    /**
     * What a failure leads to while the phase lasts.
     *
     * @param first the instant of the failure
     * @param steady each state in which nothing quick goes on any more, and the last one, in order
     *     of time
     * @param happenings events in order of time
     * @param contests what gave way first, and who might have
     */
    public record Course(
            SteadyState first,
            List<SteadyState> steady,
            List<StoryEvent> happenings,
            List<TripContest> contests) {
        public Course {
            steady = List.copyOf(steady);
            happenings = List.copyOf(happenings);
            contests = List.copyOf(contests);
        }
    }

    /**
     * What a failure leads to while the phase lasts, the pilot doing as planned.
     *
     * @param race where in their bands the protectors are
     * @throws UntoldStory if a state on the way cannot be computed
     */
    public Course course(Failure failure, Race race) throws UntoldStory {
        Run run = after(failure.hits(), Setting.with(Pilot.PLANNED).with(race));
        run.inject(failure);
        SteadyState first = run.flow();
        List<SteadyState> steady = new ArrayList<>();
        run.follow(phase.seconds(), () -> steady.add(run.flow()));
        return new Course(first, steady, run.happenings(), run.contests());
    }

    private Run after(List<Candidate.Hit> hits, Setting setting) {
        Run run = new Run(candidate, layouts.whole(hits), scene(setting));
        run.resume(healthy);
        crank(run);
        return run;
    }

    /** In a phase in which the starter runs, it draws all the time. */
    private void crank(Run run) {
        boolean starts =
                study.aircraft()
                        .engine()
                        .starting()
                        .starter()
                        .flatMap(study.aircraft()::load)
                        .filter(load -> load.use().phases().contains(phase.name()))
                        .isPresent();
        if (starts) {
            run.crank();
        }
    }

    private FlightConditions scene(Setting setting) {
        return new FlightConditions(
                study.aircraft(), phase, Moment.heldIn(phase.name()), setting, StepLimits.QUICK);
    }
}
