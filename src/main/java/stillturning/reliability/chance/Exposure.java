package stillturning.reliability.chance;

import java.util.List;
import java.util.stream.IntStream;

/**
 * How often every event happens, and in how long a flight.
 *
 * @param flightSeconds length of a flight (s)
 * @param occurrences by event
 * @param sources by event: where its rate is known from, by a number of the caller's. Events of the
 *     same source are wrong together: a sample that draws one high draws all of them high
 */
public record Exposure(double flightSeconds, List<Occurrence> occurrences, List<Integer> sources) {

    /**
     * @throws IllegalArgumentException if the flight's length is not above 0 and finite, or not
     *     every event has a source
     */
    public Exposure {
        occurrences = List.copyOf(occurrences);
        sources = List.copyOf(sources);
        if (!(flightSeconds > 0 && flightSeconds < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a flight of " + flightSeconds + " s is none");
        }
        if (sources.size() != occurrences.size()) {
            throw new IllegalArgumentException(
                    sources.size() + " sources for " + occurrences.size() + " events");
        }
    }

    /** The same of some events alone, in this order. */
    public Exposure of(List<Integer> events) {
        return new Exposure(
                flightSeconds,
                events.stream().map(occurrences::get).toList(),
                events.stream().map(sources::get).toList());
    }

    /**
     * Mean of the product of two events' rates over the product of their means: above 1 where both
     * are known from one source and so wrong together.
     *
     * @see "lognormal moments; NUREG-1855 calls it state-of-knowledge correlation (from memory,
     *     unverified)"
     */
    public double together(int one, int other) {
        return Knowledge.of(of(List.of(one, other))).meanOverMeans(new int[] {0, 1});
    }

    /** Every event with a source of its own. */
    public static Exposure of(double flightSeconds, List<Occurrence> occurrences) {
        return new Exposure(
                flightSeconds,
                occurrences,
                IntStream.range(0, occurrences.size()).boxed().toList());
    }
}
