package stillturning.assess;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.story.NormalFlight;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.timeline.Timeline;

/**
 * A candidate with nothing wrong.
 *
 * @param normal how it flies
 * @param course what becomes of it although nothing fails and nobody acts
 * @param nearLimit a flight in which a protector opens that does not in that course
 */
public record NothingBroken(NormalFlight normal, Story course, Optional<NearLimit> nearLimit) {

    static final Failure NOTHING = Failure.levers("nothing fails", Map.of());

    /** One of which nothing is known of protectors near their limits. */
    public NothingBroken(NormalFlight normal, Story course) {
        this(normal, course, Optional.empty());
    }

    static NothingBroken of(Study study, Candidate candidate, Timeline timeline) {
        Story course = course(timeline);
        return new NothingBroken(
                timeline.normal(),
                course,
                NearLimit.of(study, candidate).filter(near -> !opens(course, near.protector())));
    }

    /** The same without what may open near its limit. */
    static NothingBroken inBrief(Timeline timeline) {
        return new NothingBroken(timeline.normal(), course(timeline));
    }

    private static Story course(Timeline timeline) {
        return timeline.tellAsFar(NOTHING, Setting.with(Pilot.NEVER));
    }

    private static boolean opens(Story course, String protector) {
        return course.of(StoryEvent.Kind.PROTECTOR_OPENS).stream()
                .anyMatch(opened -> opened.part().equals(protector));
    }

    /** Whether something happens, although nothing fails: every failure would seem to cause it. */
    public boolean unwell() {
        return !normal.givenUp().isEmpty() || !normal.lost().isEmpty() || !happenings().isEmpty();
    }

    /** What happens although nothing fails, in order of time. */
    public List<StoryEvent> happenings() {
        return course.happenings().stream()
                .filter(h -> h.kind() != StoryEvent.Kind.FAILURE)
                .toList();
    }

    /** Whether the engine runs, and the electrical system would let it run on. */
    public boolean engineRunsOn() {
        return normal.engineRuns() && !course.engine().endurance().ends();
    }
}
