package stillturning.reliability.chance;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import stillturning.reliability.chance.Flights.Both;

/**
 * How likely it is that at least one cut set comes true in a flight, if events are independent. An
 * aid for comparing: it is as good as the rates are.
 *
 * <p>Latent events of the same interval are inspected together, so what they do jointly is averaged
 * over their common age. Different intervals count as out of step: where one is k times the other
 * and starts with it, a pair across both comes out too rare by one part in 3k. Which of two events
 * comes first within a flight does not matter.
 */
public final class Chance {
    private static final int FEWEST_SAMPLES = 20;
    private static final int MOST_SAMPLES = 1_000_000;

    private Chance() {}

    /**
     * The probability in the mean of everything that the rates may be, those of one source being
     * wrong together.
     *
     * @throws IllegalArgumentException if not every event has an occurrence, or latent events have
     *     more than three different intervals
     */
    public static TopChance of(CutUnion union, Exposure exposure) {
        checkFit(union, exposure);
        Flights flights = MeanFlights.of(union, exposure);
        CutSetSums sums = union.sums();
        boolean exact = union.basis() == Basis.EXACT;
        Both upper = flights.of(sums::upperBound);
        Both value = exact ? flights.of(union.top()) : upper;
        Both low = exact ? value : flights.of(sums::lowerBound);
        Both rare = flights.of(sums::rareEventSum);
        return new TopChance(
                exposure.flightSeconds(),
                estimate(union, value.average(), low.average(), upper.average(), rare.average()),
                estimate(union, value.last(), low.last(), upper.last(), rare.last()),
                union.byOrder());
    }

    private static Estimate estimate(
            CutUnion union, double value, double low, double upper, double rare) {
        return new Estimate(union.basis(), value, low, value, upper, rare);
    }

    /** The importance of every event for the average flight, in the order of the events. */
    public static List<Importance> importances(CutUnion union, Exposure exposure) {
        ImportanceSums weighing = importanceSums(union, exposure);
        return IntStream.range(0, union.events())
                .parallel()
                .mapToObj(event -> weighing.importance(new TreeSet<>(Set.of(event))))
                .toList();
    }

    /**
     * The importance of some events together, for the average flight: the modes of one thing, or
     * all that one cause takes.
     *
     * @throws IllegalArgumentException if the group is empty or names an event that does not exist
     */
    public static Importance importance(
            CutUnion union, Exposure exposure, Collection<Integer> group) {
        TreeSet<Integer> events = new TreeSet<>(group);
        if (events.isEmpty() || events.first() < 0 || events.last() >= union.events()) {
            throw new IllegalArgumentException(
                    "group %s is empty or names an event outside 0 to %d"
                            .formatted(events, union.events() - 1));
        }
        return importanceSums(union, exposure).importance(events);
    }

    private static ImportanceSums importanceSums(CutUnion union, Exposure exposure) {
        return new ImportanceSums(union, flights(union, exposure), Knowledge.of(exposure));
    }

    /**
     * The probability's range when every rate may be anywhere in its spread; the same for the same
     * seed, on any machine.
     *
     * @param samples 20 to 1,000,000
     * @throws IllegalArgumentException if the number of samples is outside
     */
    public static ChanceRanges ranges(CutUnion union, Exposure exposure, int samples, long seed) {
        if (samples < FEWEST_SAMPLES || samples > MOST_SAMPLES) {
            throw new IllegalArgumentException(
                    "%d samples; %d to %d can be drawn"
                            .formatted(samples, FEWEST_SAMPLES, MOST_SAMPLES));
        }
        checkFit(union, exposure);
        return new RateSampling(union, exposure, samples, seed).ranges();
    }

    /**
     * An event's rate divided by the beta factor: a share takes all of its equals along.
     *
     * @param beta share, 0 to 1
     * @throws IllegalArgumentException if beta is outside
     * @see "NUREG/CR-4780 (from memory, unverified)"
     */
    public static BetaSplit split(Occurrence occurrence, double beta) {
        if (!(beta >= 0 && beta <= 1)) {
            throw new IllegalArgumentException("a beta factor of " + beta + " is outside 0 to 1");
        }
        return new BetaSplit(occurrence.times(1 - beta), occurrence.times(beta));
    }

    /** With every rate at its mean. */
    private static Flights flights(CutUnion union, Exposure exposure) {
        checkFit(union, exposure);
        FlightProbabilities course = new FlightProbabilities(exposure, union.highestOrder());
        return course.flights(course.means());
    }

    private static void checkFit(CutUnion union, Exposure exposure) {
        if (exposure.occurrences().size() != union.events()) {
            throw new IllegalArgumentException(
                    "%d occurrences for %d events"
                            .formatted(exposure.occurrences().size(), union.events()));
        }
    }

    /**
     * One event's rate, divided into what happens to it alone and what takes its equals along.
     *
     * @param own the rest, to stand in its place
     * @param common one event for all that share it
     */
    public record BetaSplit(Occurrence own, Occurrence common) {}
}
