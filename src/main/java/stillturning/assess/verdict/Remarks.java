package stillturning.assess.verdict;

import java.util.ArrayList;
import java.util.List;
import stillturning.assess.verdict.Remark.Topic;
import stillturning.quantity.Formats;
import stillturning.story.Story;
import stillturning.story.Story.EngineFate;
import stillturning.story.StoryEvent;

/** What is said beside an outcome, from the story that it sums up. */
final class Remarks {

    private Remarks() {}

    static List<Remark> of(Outcome outcome, Story story) {
        List<Remark> remarks = new ArrayList<>();
        EngineFate engine = story.engine();
        if (outcome != Outcome.ENGINE_LOST && engine.endurance().ends()) {
            remarks.add(
                    new Remark(
                            Topic.STOPS_LATER,
                            "the engine stops for good after "
                                    + Formats.lasting(engine.endurance().seconds())));
        }
        if (outcome == Outcome.REDUNDANCY_LOST && engine.interrupted()) {
            remarks.add(new Remark(Topic.FALTERED_BEFORE, interruption(story)));
        }
        return List.copyOf(remarks);
    }

    private static String interruption(Story story) {
        EngineFate engine = story.engine();
        return engine.stoppedAndCameBack()
                ? "before that it stops, and runs again after "
                        + Formats.duration(
                                story.of(StoryEvent.Kind.ENGINE_RESTARTS).get(0).seconds())
                : "before that it falters for "
                        + Formats.duration(engine.longestInterruptionSeconds());
    }
}
