package stillturning.desktop.viewmodel.breaking;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.assess.Assess;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate;
import stillturning.model.failure.Failure;
import stillturning.report.oneline.DrawingStates;
import stillturning.story.Moment;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.UntoldStory;
import stillturning.story.WatchedStory;
import stillturning.story.timeline.Timeline;

/**
 * What a failure leads to in a candidate, told and shown.
 *
 * @param candidate with its levers as they stood before the flight
 * @param verdict what it comes to
 * @param stories what happens, with every instant, by pilot
 */
public record PlayedFailure(
        Candidate candidate,
        Failure failure,
        Moment moment,
        Verdict verdict,
        Map<Pilot, WatchedStory> stories,
        LaidOutCandidate laid,
        DrawingStates looks) {

    public PlayedFailure {
        stories = Collections.unmodifiableMap(new EnumMap<>(stories));
    }

    /**
     * Plays it with every kind of pilot.
     *
     * @param before what was drawn before, if anything
     * @param shape width over height of what it is shown on, 0 while nobody knows
     * @throws UntoldStory if a state on the way cannot be computed, or the engine does not even run
     *     before anything fails
     */
    static PlayedFailure of(Request request, Optional<LaidOutCandidate> before, double shape)
            throws UntoldStory {
        Candidate set = request.set();
        Failure failure = request.failure();
        Timeline timeline = Timeline.quick(request.study(), set, request.moment());
        if (!timeline.normal().engineRuns()) {
            throw timeline.neverRan();
        }
        Map<Pilot, WatchedStory> stories = new EnumMap<>(Pilot.class);
        for (Pilot pilot : Pilot.values()) {
            stories.put(pilot, timeline.watch(failure, Setting.with(pilot)));
        }
        LaidOutCandidate laid =
                LaidOutCandidate.of(request.study(), request.candidate(), before, shape);
        return new PlayedFailure(
                set,
                failure,
                request.moment(),
                Assess.one(request.study(), set, failure, request.moment()),
                stories,
                laid,
                new DrawingStates(set, laid.drawn(), failure, timeline.before()));
    }

    /** The story with a pilot of this kind. */
    public WatchedStory with(Pilot pilot) {
        return Optional.ofNullable(stories.get(pilot)).orElseThrow();
    }

    /** How the drawing looks at a time (s) with a pilot of this kind. */
    public DrawingStates.ShownStates looksAt(Pilot pilot, double seconds) {
        return looks.at(with(pilot).at(seconds));
    }

    /** What a pilot of this kind has to do. */
    public List<PilotStep> steps(Pilot pilot) {
        return PilotStep.of(candidate, with(pilot).story());
    }
}
