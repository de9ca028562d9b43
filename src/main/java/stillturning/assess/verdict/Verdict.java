package stillturning.assess.verdict;

import static java.util.Objects.requireNonNull;

import java.util.Comparator;
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
 * @param outcome what it comes to with a pilot who keeps to the procedures
 * @param stories what happens, as far as the outcome hangs on it
 * @param losses what no longer works although nobody switched it off
 * @param engineOwn whether it is the loss of something that the engine cannot do without, however
 *     well it is supplied: the same in every candidate, and held against none
 * @param actBySeconds when the engine stops if the pilot does nothing (s); empty if it does not
 *     depend on him
 * @param inBand the worst that the tolerance of the protectors leaves open, if anything
 * @param depth what nothing but reading about this failure asks for
 */
public record Verdict(
        Failure failure,
        Outcome outcome,
        VerdictStories stories,
        Losses losses,
        boolean engineOwn,
        Optional<Double> actBySeconds,
        Optional<ToleranceOutcome> inBand,
        Lazy<Depth> depth) {

    /**
     * What happens; the same story where there is nothing for a pilot to do.
     *
     * @param planned with a pilot who keeps to the procedures
     * @param unaided with one who does nothing
     */
    public record VerdictStories(Story planned, Story unaided) {}

    /**
     * What is told of a failure beside its outcome.
     *
     * @param late what happens with a pilot who is slow
     * @param standing with one who keeps to the procedures, the propeller standing still once the
     *     engine stops; empty if it does not stop
     * @param rulings what it comes to, by pilot
     * @param beside what else a pilot who keeps to the procedures has to know
     */
    public record Depth(
            Story late,
            Optional<Story> standing,
            Map<Pilot, Ruling> rulings,
            Lazy<List<Remark>> beside) {
        public Depth {
            rulings = Map.copyOf(rulings);
            if (rulings.size() < Pilot.values().length) {
                throw new IllegalArgumentException("a pilot without an outcome");
            }
        }

        /** The same, with more that a pilot who keeps to the procedures has to know. */
        Depth with(Lazy<List<Remark>> more) {
            return new Depth(late, standing, rulings, more);
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

    /** What it comes to with a pilot of this kind. */
    public Outcome outcome(Pilot pilot) {
        return pilot == Pilot.PLANNED ? outcome : ruling(pilot).outcome();
    }

    /**
     * Whether most of the time that is left has gone before anybody can notice anything, where the
     * pilot keeps to the procedures.
     */
    public boolean isUnseen() {
        return Remarks.of(outcome, planned(), unaided()).stream()
                .anyMatch(remark -> remark.topic() == Remark.Topic.UNSEEN);
    }

    /** What a pilot who keeps to the procedures has to know beside the outcome. */
    public List<Remark> remarks() {
        return remarks(Pilot.PLANNED);
    }

    /** What a pilot of this kind has to know beside the outcome, the gravest first. */
    public List<Remark> remarks(Pilot pilot) {
        List<Remark> own = ruling(pilot).remarks();
        List<Remark> beside = pilot == Pilot.PLANNED ? depth.get().beside().get() : List.of();
        return Stream.concat(own.stream(), beside.stream())
                .sorted(Comparator.comparing(Remark::topic))
                .toList();
    }

    private Ruling ruling(Pilot pilot) {
        return requireNonNull(depth.get().rulings().get(pilot), pilot.words());
    }

    /** The story with a pilot who keeps to the procedures. */
    public Story planned() {
        return stories.planned;
    }

    /** The story with a pilot who is slow. */
    public Story late() {
        return depth.get().late();
    }

    /**
     * The story with a pilot who keeps to the procedures, the propeller standing still once the
     * engine stops; empty if it does not stop.
     */
    public Optional<Story> standing() {
        return depth.get().standing();
    }

    /** The story with a pilot who does nothing. */
    public Story unaided() {
        return stories.unaided;
    }

    /** The story with a pilot of this kind. */
    public Story with(Pilot pilot) {
        return switch (pilot) {
            case PLANNED -> planned();
            case LATE -> late();
            case NEVER -> unaided();
        };
    }

    /** Why it cannot be told to its end, where the outcome hangs on that. */
    public Optional<String> untold() {
        return Stream.of(stories.planned, stories.unaided)
                .flatMap(story -> story.untold().stream())
                .findFirst();
    }

    /** The same, with what the tolerance of the protectors leaves open. */
    Verdict within(Optional<ToleranceOutcome> band) {
        return new Verdict(failure, outcome, stories, losses, engineOwn, actBySeconds, band, depth);
    }

    /** The same, told otherwise in depth. */
    Verdict told(Lazy<Depth> other) {
        return new Verdict(
                failure, outcome, stories, losses, engineOwn, actBySeconds, inBand, other);
    }

    /** Whether something worse may come of it, within the tolerance of the protectors. */
    public boolean mayBeWorse() {
        return inBand.filter(band -> band.then().outcome().compareTo(outcome) < 0).isPresent();
    }

    /** Whether what the pilot does ends an engine that would have run on without him. */
    public boolean procedureHarms() {
        return outcome == Outcome.ENGINE_LOST
                && planned().engine().endurance().seconds()
                        < unaided().engine().endurance().seconds();
    }
}
