package stillturning.reliability.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.reliability.chance.ChanceRanges.RateContributor;
import stillturning.reliability.chance.Occurrence.LatentOccurrence;
import stillturning.reliability.chance.Occurrence.PerFlight;

class ChanceRangesTest {
    private static final CutUnion ONE = CutUnion.of(1, List.of(List.of(0)));
    private static final CutUnion PAIR = CutUnion.of(2, List.of(List.of(0, 1)));

    private static Occurrence spread(double median, double errorFactor) {
        return new PerFlight(new Lognormal(median, errorFactor));
    }

    private static Exposure pair(double oneFactor, double otherFactor, List<Integer> sources) {
        return new Exposure(
                Cases.HOUR, List.of(spread(1e-3, oneFactor), spread(1e-3, otherFactor)), sources);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void oneEventHasTheRangeOfItsRate(long seed) {
        // median 1e-6, EF 10: mean 2.66398e-6, 5th 1e-7, 95th 1e-5 (computed)
        ChanceRanges found =
                Chance.ranges(ONE, Exposure.of(Cases.HOUR, List.of(spread(1e-6, 10))), 2000, seed);
        assertEquals(1, found.average().low5() / 1e-7, .01);
        assertEquals(1, found.average().median() / 1e-6, .01);
        assertEquals(1, found.average().high95() / 1e-5, .01);
        assertEquals(1, found.average().mean() / 2.66398e-6, .03);
        assertEquals(found.average(), found.last());
        assertEquals(List.of(new RateContributor(0, 1)), rounded(found));
        assertEquals(2000, found.average().samples());
        assertEquals(seed, found.average().seed());
        assertEquals(Basis.EXACT, found.basis());
    }

    private static List<RateContributor> rounded(ChanceRanges ranges) {
        return ranges.contributors().stream()
                .map(c -> new RateContributor(c.source(), Math.rint(c.share() * 1e9) / 1e9))
                .toList();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void productOfTwoHasTheRangeOfTheProduct(long seed) {
        // EF 3 and 10 give 12.82305 (computed); shares of ln 3 and ln 10, squared: .185 and .815
        ChanceRanges found = Chance.ranges(PAIR, pair(3, 10, List.of(0, 1)), 4000, seed);
        assertEquals(1, found.average().high95() / (1e-6 * 12.82305), .08);
        assertEquals(1, found.average().low5() / (1e-6 / 12.82305), .08);
        assertEquals(1, found.average().median() / 1e-6, .06);
        assertEquals(
                List.of(1, 0), found.contributors().stream().map(RateContributor::source).toList());
        assertEquals(.8, found.contributors().get(0).share(), .05);
        assertEquals(.18, found.contributors().get(1).share(), .05);
    }

    @Test
    void ratesOfOneSourceAreWrongTogether() {
        ChanceRange found = Chance.ranges(PAIR, pair(3, 3, List.of(7, 7)), 2000, 5).average();
        // median squared times exp(2 sigma^2), and EF squared: lognormal moments
        double sigma = new Lognormal(1, 3).sigma();
        assertEquals(1, found.mean() / (1e-6 * Math.exp(2 * sigma * sigma)), .03);
        assertEquals(1, found.high95() / 9e-6, .01);
        ChanceRange apart = Chance.ranges(PAIR, pair(3, 3, List.of(7, 8)), 2000, 5).average();
        assertEquals(1, apart.mean() / (1e-6 * Math.exp(sigma * sigma)), .05);
    }

    @Test
    void rangeAroundTheLastFlightIsThatOfTheEndOfTheInterval() {
        Occurrence latent =
                new LatentOccurrence(new Lognormal(1e-6 / Cases.HOUR, 3), 100 * Cases.HOUR);
        ChanceRanges found =
                Chance.ranges(ONE, Exposure.of(2 * Cases.HOUR, List.of(latent)), 500, 1);
        assertEquals(2, found.last().median() / found.average().median(), 1e-3);
        assertEquals(found.last().high95() / 2, found.lastPerHour().high95(), 1e-15);
        assertEquals(found.average().mean() / 2, found.averagePerHour().mean(), 1e-15);
    }

    @Test
    void sameSeedSameRangeWhateverTheNumberOfThreads() throws Exception {
        List<List<Integer>> sets = new ArrayList<>();
        List<Occurrence> occurrences = new ArrayList<>();
        for (int event = 0; event < 30; event++) {
            sets.add(List.of(event, (event * 7 + 1) % 30));
            occurrences.add(spread(1e-4 * (event + 1), 2 + event % 5));
        }
        CutUnion union = CutUnion.of(30, sets);
        Exposure exposure = Exposure.of(Cases.HOUR, occurrences);
        ChanceRanges alone = inPool(1, union, exposure);
        assertEquals(alone, inPool(7, union, exposure));
        assertNotEquals(alone, Chance.ranges(union, exposure, 300, 2));
    }

    private static ChanceRanges inPool(int threads, CutUnion union, Exposure exposure)
            throws Exception {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> Chance.ranges(union, exposure, 300, 1)).get();
        } finally {
            pool.shutdown();
        }
    }

    @Test
    void nothingContributesWhereNothingIsSpread() {
        ChanceRanges found = Chance.ranges(PAIR, Cases.even(2, .1), 100, 1);
        assertTrue(found.contributors().isEmpty());
        assertEquals(.01, found.average().low5(), 1e-15);
        assertEquals(.01, found.average().high95(), 1e-15);
    }

    @Test
    void spreadThatReachesAboveCertaintyStopsThere() {
        ChanceRange found =
                Chance.ranges(ONE, Exposure.of(1, List.of(spread(.5, 30))), 200, 1).average();
        assertEquals(1, found.high95(), 0);
        // E[min(1, x)] of a lognormal by its partial moments, computed here: 0.545
        double sigma = new Lognormal(1, 30).sigma();
        NormalDistribution normal = new NormalDistribution();
        double capped =
                .5
                                * Math.exp(sigma * sigma / 2)
                                * normal.cumulativeProbability(Math.log(2) / sigma - sigma)
                        + 1
                        - normal.cumulativeProbability(Math.log(2) / sigma);
        assertEquals(capped, Cases.average(ONE, spread(.5, 30)), .03 * capped);
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 0, 19, 1_000_001})
    void tooFewOrTooManySamplesAreRefused(int samples) {
        assertThrows(
                IllegalArgumentException.class,
                () -> Chance.ranges(ONE, Cases.even(1, .1), samples, 1));
    }
}
