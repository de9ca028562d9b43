package stillturning.assess;

import java.util.List;
import java.util.Map;
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
 */
public record NothingBroken(NormalFlight normal, Story course) {

    private static final Failure NOTHING = Failure.levers("nothing fails", Map.of());

    static NothingBroken of(Timeline timeline) {
        return new NothingBroken(
                timeline.normal(), timeline.tellAsFar(NOTHING, Setting.with(Pilot.NEVER)));
    }

    /** Whether something happens, although nothing fails: every failure would seem to cause it. */
    public boolean unwell() {
        return !normal.givenUp().isEmpty() || !happenings().isEmpty();
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
