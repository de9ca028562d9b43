package stillturning.assess;

import java.util.List;
import java.util.Optional;
import stillturning.failure.Failure;
import stillturning.story.Story;
import stillturning.story.Story.Feed;

/**
 * What one failure does to one candidate.
 *
 * @param planned the story with a pilot who keeps to the procedures
 * @param unaided the story with one who does nothing; the same where there is nothing to do
 * @param losses what no longer works although nobody switched it off
 * @param engineOwn whether it is the loss of something that the engine cannot do without, however
 *     well it is supplied: the same in every candidate, and held against none
 * @param actBySeconds when the engine stops if the pilot does nothing (s); empty if it does not
 *     depend on him
 * @param inBand the worst that the tolerance of the protectors leaves open, if anything
 */
public record Verdict(
        Failure failure,
        Outcome outcome,
        Story planned,
        Story unaided,
        Losses losses,
        boolean engineOwn,
        Optional<Double> actBySeconds,
        Optional<InBand> inBand) {

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

    /** The same, with what the tolerance of the protectors leaves open. */
    Verdict within(Optional<InBand> band) {
        return new Verdict(
                failure, outcome, planned, unaided, losses, engineOwn, actBySeconds, band);
    }

    /** Whether something worse may come of it, within the tolerance of the protectors. */
    public boolean mayBeWorse() {
        return inBand.filter(band -> band.then().outcome().compareTo(outcome) < 0).isPresent();
    }

    /** Whether what the pilot does ends an engine that would have run on without him. */
    public boolean procedureHarms() {
        return outcome == Outcome.ENGINE_LOST
                && planned.engine().endurance().seconds() < unaided.engine().endurance().seconds();
    }
}
