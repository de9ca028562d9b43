package stillturning.reliability.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.reliability.chance.Occurrence.Active;
import stillturning.reliability.chance.Occurrence.LatentOccurrence;
import stillturning.reliability.chance.Occurrence.PerFlight;

/** The probability that stands for everything that the rates may be. */
class MeanOfRatesTest {

    private static Exposure ofOneSource(Occurrence... occurrences) {
        return new Exposure(
                Cases.HOUR, List.of(occurrences), Collections.nCopies(occurrences.length, 7));
    }

    private static Occurrence rare(double errorFactor) {
        return new PerFlight(new Lognormal(1e-9, errorFactor));
    }

    private static double mean(double errorFactor) {
        return new Lognormal(1e-9, errorFactor).mean();
    }

    private static CutUnion all(int events) {
        return CutUnion.of(events, List.of(IntStream.range(0, events).boxed().toList()));
    }

    /**
     * Mean of the square over square of the mean, exp(sigma²), sigma = ln(EF) / 1.6449: lognormal
     * moments, computed here. That knowledge of one source so multiplies: G. Apostolakis, S. Kaplan
     * (1981), from memory, unverified.
     */
    @ParameterizedTest
    @CsvSource({"3, 1.5622", "10, 7.0968", "30, 71.93"})
    void aPairOfOneSourceHasTheMeanOfTheSquare(double errorFactor, double times) {
        double found = Cases.average(all(2), ofOneSource(rare(errorFactor), rare(errorFactor)));
        assertEquals(times, found / (mean(errorFactor) * mean(errorFactor)), 1e-3 * times);
        double apart = Cases.average(all(2), rare(errorFactor), rare(errorFactor));
        assertEquals(1, apart / (mean(errorFactor) * mean(errorFactor)), 1e-6);
    }

    /** E[x³] = E[x]³ exp(3 sigma²) of a lognormal, computed here. */
    @ParameterizedTest
    @ValueSource(doubles = {3, 10})
    void threeOfOneSourceHaveTheMeanOfTheCube(double errorFactor) {
        double sigma = new Lognormal(1, errorFactor).sigma();
        double found =
                Cases.average(
                        all(3),
                        ofOneSource(rare(errorFactor), rare(errorFactor), rare(errorFactor)));
        double times = Math.exp(3 * sigma * sigma);
        assertEquals(times, found / Math.pow(mean(errorFactor), 3), 1e-3 * times);
    }

    /** Two latent events of one age and one source: the mean of λ² times T²/3; at the end λ²T². */
    @Test
    void whatAgesTogetherIsWrongTogetherToo() {
        Lognormal rate = new Lognormal(1e-8 / Cases.HOUR, 10);
        LatentOccurrence latent = new LatentOccurrence(rate, 100 * Cases.HOUR);
        TopChance found = Chance.of(all(2), ofOneSource(latent, latent));
        double sigma = rate.sigma();
        double square = 1e-16 * Math.exp(2 * sigma * sigma);
        assertEquals(square * 1e4 / 3, found.average().value(), 1e-3 * square * 1e4 / 3);
        assertEquals(square * 1e4, found.last().value(), 1e-3 * square * 1e4);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void theHeadlineIsTheMeanOfTheRangeBeneathIt(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int events = random.nextInt(3, 15);
        List<Occurrence> occurrences = new ArrayList<>();
        List<Integer> sources = new ArrayList<>();
        for (int event = 0; event < events; event++) {
            occurrences.add(occurrence(random));
            sources.add(random.nextInt(4));
        }
        List<List<Integer>> sets = new ArrayList<>();
        for (int set = 0; set < random.nextInt(1, 30); set++) {
            sets.add(random.ints(random.nextInt(1, 4), 0, events).boxed().toList());
        }
        CutUnion union = CutUnion.of(events, sets);
        Exposure exposure = new Exposure(Cases.HOUR, occurrences, sources);
        TopChance found = Chance.of(union, exposure);
        ChanceRanges sampled = Chance.ranges(union, exposure, 40_000, seed);
        // the error of 40,000 samples of what is spread no wider than this is below 2 %
        assertEquals(1, found.average().value() / sampled.average().mean(), .03);
        assertEquals(1, found.last().value() / sampled.last().mean(), .03);
        double upper = found.average().minCutUpperBound();
        assertTrue(found.average().value() <= upper * (1 + 1e-12), found::toString);
        assertTrue(upper <= found.average().rareEventSum() * (1 + 1e-12), found::toString);
    }

    /** From rare to nearly certain. */
    private static Occurrence occurrence(SplittableRandom random) {
        double median = Math.pow(10, random.nextDouble(-5, -.3));
        Lognormal spread = new Lognormal(median, random.nextDouble(1, 5));
        Lognormal perSecond = spread.times(1 / Cases.HOUR);
        return switch (random.nextInt(3)) {
            case 0 -> new Active(perSecond);
            case 1 -> new LatentOccurrence(perSecond.times(.05), 20 * Cases.HOUR);
            default -> new PerFlight(spread);
        };
    }

    /** A pair of one source beside a pair of two, all of EF 10: shares 7.0968 and 1 of the sum. */
    @Test
    void importancesCountWhatIsWrongTogether() {
        CutUnion union = CutUnion.of(4, List.of(List.of(0, 1), List.of(2, 3)));
        Exposure exposure =
                new Exposure(
                        Cases.HOUR,
                        List.of(rare(10), rare(10), rare(10), rare(10)),
                        List.of(0, 0, 1, 2));
        double share = 7.0968 / 8.0968;
        Importance first = Chance.importance(union, exposure, List.of(0));
        assertEquals(share, first.fussellVeselySum(), 1e-4);
        assertEquals(share, first.criticality(), 1e-4);
        assertEquals(share, first.fussellVeselyUnion().orElseThrow(), 1e-4);
        assertEquals(1, first.always() / mean(10), 1e-6, "its partner alone");
        assertEquals(
                1,
                first.top() / Chance.of(union, exposure).average().value(),
                1e-6,
                "the headline");
        Importance third = Chance.importance(union, exposure, List.of(2));
        assertEquals(1 - share, third.criticality(), 1e-4);
    }

    @Test
    void whatIsKnownExactlyStaysExact() {
        CutUnion union = CutUnion.of(3, List.of(List.of(0, 1), List.of(1, 2)));
        Exposure exposure = Cases.perFlight(.1, .2, .3);
        double counted = Cases.counted(union.sets(), new double[] {.1, .2, .3});
        assertEquals(counted, Cases.average(union, exposure), 1e-15);
    }
}
