package stillturning.assess.verdict;

import static java.util.Objects.requireNonNull;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.model.failure.Failure;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.Story.Feed;

/**
 * What one failure does to one candidate.
 *
 * @param rulings what it comes to, by pilot
 * @param stories what happens, by pilot
 * @param losses what no longer works although nobody switched it off
 * @param engineOwn whether it is the loss of something that the engine cannot do without, however
 *     well it is supplied: the same in every candidate, and held against none
 * @param actBySeconds when the engine stops if the pilot does nothing (s); empty if it does not
 *     depend on him
 * @param inBand the worst that the tolerance of the protectors leaves open, if anything
 */
public record Verdict(
        Failure failure,
        Map<Pilot, Ruling> rulings,
        Stories stories,
        Losses losses,
        boolean engineOwn,
        Optional<Double> actBySeconds,
        Optional<ToleranceOutcome> inBand) {

    /**
     * What happens; the same story where there is nothing for a pilot to do.
     *
     * @param planned with a pilot who keeps to the procedures
     * @param late with one who is slow
     * @param unaided with one who does nothing
     * @param standing with one who keeps to the procedures, the propeller standing still once the
     *     engine stops; empty if it does not stop
     */
    public record Stories(Story planned, Story late, Story unaided, Optional<Story> standing) {

        /** The story with a pilot of this kind. */
        Story with(Pilot pilot) {
            return switch (pilot) {
                case PLANNED -> planned;
                case LATE -> late;
                case NEVER -> unaided;
            };
        }
    }

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

    public Verdict {
        rulings = Map.copyOf(rulings);
        if (rulings.size() < Pilot.values().length) {
            throw new IllegalArgumentException(failure.name() + ": a pilot without an outcome");
        }
    }

    /** What it comes to with a pilot who keeps to the procedures. */
    public Outcome outcome() {
        return outcome(Pilot.PLANNED);
    }

    /** What it comes to with a pilot of this kind. */
    public Outcome outcome(Pilot pilot) {
        return ruling(pilot).outcome();
    }

    /** What a pilot who keeps to the procedures has to know beside the outcome. */
    public List<Remark> remarks() {
        return remarks(Pilot.PLANNED);
    }

    /** What a pilot of this kind has to know beside the outcome, the gravest first. */
    public List<Remark> remarks(Pilot pilot) {
        return ruling(pilot).remarks();
    }

    private Ruling ruling(Pilot pilot) {
        return requireNonNull(rulings.get(pilot), pilot.words());
    }

    /** The story with a pilot who keeps to the procedures. */
    public Story planned() {
        return stories.planned;
    }

    /** The story with a pilot who is slow. */
    public Story late() {
        return stories.late;
    }

    /** The story with a pilot who does nothing. */
    public Story unaided() {
        return stories.unaided;
    }

    /** The story with a pilot of this kind. */
    public Story with(Pilot pilot) {
        return stories.with(pilot);
    }

    /** Why it cannot be told to its end with some pilot or propeller, if so. */
    public Optional<String> untold() {
        return Stream.concat(
                        Stream.of(stories.planned, stories.late, stories.unaided),
                        stories.standing.stream())
                .flatMap(story -> story.untold().stream())
                .findFirst();
    }

    /** The same, with what the tolerance of the protectors leaves open. */
    Verdict within(Optional<ToleranceOutcome> band) {
        return new Verdict(failure, rulings, stories, losses, engineOwn, actBySeconds, band);
    }

    /** The same, with one thing more that a pilot who keeps to the procedures has to know. */
    Verdict noting(Remark remark) {
        Map<Pilot, Ruling> noted = new EnumMap<>(rulings);
        noted.computeIfPresent(Pilot.PLANNED, (pilot, ruling) -> ruling.noting(remark));
        return new Verdict(failure, noted, stories, losses, engineOwn, actBySeconds, inBand);
    }

    /** Whether something worse may come of it, within the tolerance of the protectors. */
    public boolean mayBeWorse() {
        return inBand.filter(band -> band.then().outcome().compareTo(outcome()) < 0).isPresent();
    }

    /** Whether what the pilot does ends an engine that would have run on without him. */
    public boolean procedureHarms() {
        return outcome() == Outcome.ENGINE_LOST
                && planned().engine().endurance().seconds()
                        < unaided().engine().endurance().seconds();
    }
}
