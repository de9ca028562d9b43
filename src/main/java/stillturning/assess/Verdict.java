package stillturning.assess;

import java.util.List;
import java.util.Optional;
import stillturning.failure.Failure;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.Story.Feed;

/**
 * What one failure does to one candidate.
 *
 * @param planned the story with a pilot who keeps to the procedures
 * @param late the story with one who takes three times as long
 * @param unaided the story with one who does nothing; the same where there is nothing to do
 * @param losses what no longer works although nobody switched it off
 * @param engineOwn whether it is the loss of something that the engine cannot do without, however
 *     well it is supplied: the same in every candidate, and held against none
 * @param actBySeconds when the engine stops if the pilot does nothing (s); empty if it does not
 *     depend on him
 */
public record Verdict(
        Failure failure,
        Outcome outcome,
        Story planned,
        Story late,
        Story unaided,
        Losses losses,
        boolean engineOwn,
        Optional<Double> actBySeconds) {

    /**
     * What is lost once the quick events are over.
     *
     * @param engineLoads loads that the engine's logic names
     * @param otherLoads every other load
     * @param feeds source–input pairs of the engine's loads
     */
    public record Losses(List<String> engineLoads, List<String> otherLoads, List<Feed> feeds) {
        public Losses {
            engineLoads = List.copyOf(engineLoads);
            otherLoads = List.copyOf(otherLoads);
            feeds = List.copyOf(feeds);
        }
    }

    /** The story with a pilot of this kind. */
    public Story by(Pilot pilot) {
        return switch (pilot) {
            case PLANNED -> planned;
            case LATE -> late;
            case NEVER -> unaided;
        };
    }

    /** Whether what the pilot does ends an engine that would have run on without him. */
    public boolean procedureHarms() {
        return outcome == Outcome.ENGINE_LOST
                && planned.engine().endurance().seconds() < unaided.engine().endurance().seconds();
    }
}
