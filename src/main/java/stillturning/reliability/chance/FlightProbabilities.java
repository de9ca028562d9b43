package stillturning.reliability.chance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import stillturning.reliability.chance.Occurrence.Active;
import stillturning.reliability.chance.Occurrence.LatentOccurrence;
import stillturning.reliability.chance.Occurrence.PerFlight;

/**
 * From rates to the probabilities of the events, flight after flight. Latent events of the same
 * interval are inspected together and so grow old together: what they do jointly is averaged over
 * their common age, by Gauss-Legendre. Different intervals fall in no step with each other: every
 * age of one meets every age of the other. Where one interval is k times the other and starts with
 * it, that makes a pair across both too rare by one in 3k.
 */
final class FlightProbabilities {
    private static final int MOST_INTERVALS = 3;

    /** Higher orders are too rare to ask for more ages. */
    private static final int MOST_POWERS = 30;

    /** Ages to look at in each piece, by how few events are expected in the interval. */
    private enum Look {
        HARDLY(.01, 3),
        FEW(.1, 4),
        MANY(Double.POSITIVE_INFINITY, 6);

        private final double below;
        private final int ages;

        Look(double below, int ages) {
            this.below = below;
            this.ages = ages;
        }
    }

    /** Pieces halve towards age 0 until the first expects less than one event, or so often. */
    private static final int MOST_HALVINGS = 20;

    /** How a chance follows what is expected. */
    private enum Growth {
        TO_CERTAINTY,
        IN_PROPORTION
    }

    private final double flightSeconds;
    private final List<Occurrence> occurrences;
    private final List<Double> intervals;
    private final Map<Look, GaussIntegrator> rules = new EnumMap<>(Look.class);

    /** An age as a share of the interval, and the share of all flights that it stands for. */
    private record Age(double share, double weight) {}

    /**
     * @param highestOrder of the cut sets: so many powers of the age can be multiplied
     */
    FlightProbabilities(Exposure exposure, int highestOrder) {
        flightSeconds = exposure.flightSeconds();
        occurrences = exposure.occurrences();
        intervals = List.copyOf(intervals(occurrences));
        if (intervals.size() > MOST_INTERVALS) {
            throw new IllegalArgumentException(
                    "%d different inspection intervals; at most %d can be averaged over"
                            .formatted(intervals.size(), MOST_INTERVALS));
        }
        GaussIntegratorFactory gauss = new GaussIntegratorFactory();
        int powers = (Math.min(highestOrder, MOST_POWERS) + 3) / 2;
        for (Look look : Look.values()) {
            rules.put(look, gauss.legendre(Math.max(look.ages, powers), 0, 1));
        }
    }

    private static SortedSet<Double> intervals(List<Occurrence> occurrences) {
        SortedSet<Double> intervals = new TreeSet<>();
        for (Occurrence occurrence : occurrences) {
            if (occurrence instanceof LatentOccurrence latent) {
                intervals.add(latent.intervalSeconds());
            }
        }
        return intervals;
    }

    /** The mean of every event's rate or probability. */
    double[] means() {
        return occurrences.stream().mapToDouble(o -> o.spread().mean()).toArray();
    }

    /** The median of every event's rate or probability. */
    double[] medians() {
        return occurrences.stream().mapToDouble(o -> o.spread().median()).toArray();
    }

    /** Flights that stand for all between inspections, and the last before all of them. */
    Flights flights(double[] rates) {
        return flights(rates, Growth.TO_CERTAINTY);
    }

    /** The same as if every chance were in proportion to its rate, beyond 1 as well. */
    Flights proportional(double[] rates) {
        return flights(rates, Growth.IN_PROPORTION);
    }

    private Flights flights(double[] rates, Growth growth) {
        Flights flights = new Flights();
        double[] shares = new double[intervals.size()];
        eachAge(rates, 1, 0, shares, weight -> flights.add(weight, chances(rates, growth, shares)));
        Arrays.fill(shares, 1);
        flights.addLast(chances(rates, growth, shares));
        return flights;
    }

    /** Sets the shares to the ages of all intervals from the next one on, and tells each weight. */
    private void eachAge(
            double[] rates, double weight, int next, double[] shares, DoubleConsumer told) {
        if (next == shares.length) {
            told.accept(weight);
            return;
        }
        for (Age age : ages(expected(rates, intervals.get(next)))) {
            shares[next] = age.share;
            eachAge(rates, weight * age.weight, next + 1, shares, told);
        }
    }

    private double[] chances(double[] rates, Growth growth, double[] shares) {
        double[] chances = new double[rates.length];
        for (int event = 0; event < chances.length; event++) {
            Occurrence occurrence = occurrences.get(event);
            double expected = rates[event] * exposed(occurrence, shares);
            chances[event] =
                    growth == Growth.IN_PROPORTION ? expected : occurrence.chance(expected);
        }
        return chances;
    }

    /** What multiplies the rate: a time (s), or 1. */
    private double exposed(Occurrence occurrence, double[] shares) {
        if (occurrence instanceof LatentOccurrence latent) {
            double seconds = latent.intervalSeconds();
            return seconds * shares[intervals.indexOf(seconds)];
        }
        if (occurrence instanceof Active) {
            return flightSeconds;
        }
        if (occurrence instanceof PerFlight) {
            return 1;
        }
        throw new IllegalStateException("unknown " + occurrence);
    }

    private double expected(double[] rates, double interval) {
        return IntStream.range(0, rates.length)
                .filter(
                        event ->
                                occurrences.get(event) instanceof LatentOccurrence latent
                                        && latent.intervalSeconds() == interval)
                .mapToDouble(event -> rates[event] * interval)
                .sum();
    }

    private List<Age> ages(double expected) {
        Look look =
                Stream.of(Look.values())
                        .filter(l -> expected < l.below)
                        .findFirst()
                        .orElse(Look.MANY);
        GaussIntegrator rule = Objects.requireNonNull(rules.get(look));
        List<Age> ages = new ArrayList<>();
        double to = 1;
        for (int halving = 0; expected * to > 1 && halving < MOST_HALVINGS; halving++) {
            piece(rule, to / 2, to, ages);
            to /= 2;
        }
        piece(rule, 0, to, ages);
        return ages;
    }

    private static void piece(GaussIntegrator rule, double from, double to, List<Age> ages) {
        for (int i = 0; i < rule.getNumberOfPoints(); i++) {
            ages.add(
                    new Age(
                            from + (to - from) * rule.getPoint(i),
                            (to - from) * rule.getWeight(i)));
        }
    }
}
