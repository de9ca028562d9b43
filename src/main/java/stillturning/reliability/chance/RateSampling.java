package stillturning.reliability.chance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;
import org.apache.commons.math3.stat.ranking.NaturalRanking;
import stillturning.reliability.chance.ChanceRanges.RateContributor;
import stillturning.reliability.chance.Flights.Both;

/** Draws the rates anywhere in their spread, those of one source together. */
final class RateSampling {
    /** Chance alone would bring a correlation this strong once in 100,000 times. */
    private static final double STANDS_OUT = 20;

    private static final double LEAST_SHARE = .01;

    private static final int BATCH = 64;

    private final CutUnion union;
    private final Exposure exposure;
    private final FlightProbabilities course;
    private final int samples;
    private final long seed;

    private final Deviations deviations;

    RateSampling(CutUnion union, Exposure exposure, int samples, long seed) {
        this.union = union;
        this.exposure = exposure;
        this.samples = samples;
        this.seed = seed;
        course = new FlightProbabilities(exposure, union.highestOrder());
        deviations = new Deviations(exposure, samples, seed);
    }

    ChanceRanges ranges() {
        int batches = (samples + BATCH - 1) / BATCH;
        List<Both> told =
                IntStream.range(0, batches)
                        .parallel()
                        .mapToObj(this::batch)
                        .flatMap(List::stream)
                        .toList();
        double[] average = told.stream().mapToDouble(Both::average).toArray();
        double[] last = told.stream().mapToDouble(Both::last).toArray();
        return new ChanceRanges(
                exposure.flightSeconds(),
                union.basis(),
                range(average),
                range(last),
                contributors(average));
    }

    /** Neighbouring samples, which work in the same room. */
    private List<Both> batch(int batch) {
        Top top = union.top();
        double[] scratch = new double[0];
        List<Both> told = new ArrayList<>();
        for (int n = batch * BATCH; n < Math.min(samples, (batch + 1) * BATCH); n++) {
            Flights flights = course.flights(rates(n));
            int needed = top.scratch(flights.size());
            scratch = scratch.length < needed ? new double[needed] : scratch;
            told.add(flights.of(top, scratch));
        }
        return told;
    }

    private double[] rates(int sample) {
        double[] rates = new double[union.events()];
        for (int event = 0; event < rates.length; event++) {
            double deviation = deviations.at(exposure.sources().get(event), sample);
            rates[event] = exposure.occurrences().get(event).spread().at(deviation);
        }
        return rates;
    }

    private ChanceRange range(double[] chances) {
        Percentile percentile = new Percentile().withEstimationType(EstimationType.R_7);
        percentile.setData(chances);
        double sum = 0;
        for (double chance : chances) {
            sum += chance;
        }
        return new ChanceRange(
                percentile.evaluate(5),
                percentile.evaluate(50),
                percentile.evaluate(95),
                sum / samples,
                samples,
                seed);
    }

    private List<RateContributor> contributors(double[] chances) {
        NaturalRanking ranking = new NaturalRanking();
        PearsonsCorrelation correlation = new PearsonsCorrelation();
        double[] ranks = ranking.rank(chances);
        List<RateContributor> contributors = new ArrayList<>();
        deviations
                .bySource()
                .forEach(
                        (source, column) -> {
                            double r = correlation.correlation(ranking.rank(column), ranks);
                            double share = r * r;
                            // without any spread of the outcome r is not a number, and nobody
                            // stands out
                            if (share >= LEAST_SHARE
                                    && share * (samples - 2) > STANDS_OUT * (1 - share)) {
                                contributors.add(new RateContributor(source, share));
                            }
                        });
        contributors.sort(Comparator.comparingDouble(RateContributor::share).reversed());
        return contributors;
    }
}
