package stillturning.reliability.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.reliability.chance.Occurrence.LatentOccurrence;

/** Every number that is printed of a probability: bounds and values over the length of a flight. */
class BoundsTest {

    private static final Occurrence LATENT =
            new LatentOccurrence(new Lognormal(1e-4 / Cases.HOUR, 3), 50 * Cases.HOUR);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void theLowerBoundIsThatOfSinglesAndPairs(long seed) {
        Random random = new Random(seed);
        double[] chances = random.doubles(7, 0, .4).toArray();
        Set<Set<Integer>> drawn = new HashSet<>();
        for (int i = 0; i < 9; i++) {
            Set<Integer> set = new TreeSet<>();
            random.ints(1 + random.nextInt(3), 0, chances.length).forEach(set::add);
            drawn.add(set);
        }
        List<List<Integer>> sets = drawn.stream().map(List::copyOf).map(BoundsTest::up).toList();
        double singles = 0;
        double pairs = 0;
        for (int i = 0; i < sets.size(); i++) {
            singles += together(sets.get(i), List.of(), chances);
            for (int j = 0; j < i; j++) {
                pairs += together(sets.get(i), sets.get(j), chances);
            }
        }
        double best = 0;
        for (int among = 1; among <= sets.size(); among++) {
            best = Math.max(best, 2.0 / (among + 1) * (singles - pairs / among));
        }
        double lower =
                new CutSetSums(sets.stream().map(BoundsTest::array).toList()).lowerBound(chances);
        assertEquals(best, lower, 1e-12);
        assertTrue(lower <= Cases.counted(sets, chances) + 1e-12);
    }

    /** Pairs are formed among the first few thousand: those that matter. */
    @Test
    void amongVeryManySetsTheLikeliestBound() {
        double[] chances = new double[4000];
        Arrays.fill(chances, 1e-6);
        chances[chances.length - 1] = .3;
        List<int[]> sets =
                IntStream.range(0, chances.length).mapToObj(event -> new int[] {event}).toList();
        double lower = new CutSetSums(sets).lowerBound(chances);
        assertTrue(lower >= .3 && lower < .31, () -> lower + "");
    }

    private static List<Integer> up(List<Integer> set) {
        return set.stream().sorted().toList();
    }

    private static int[] array(List<Integer> set) {
        return set.stream().mapToInt(Integer::intValue).toArray();
    }

    private static double together(List<Integer> one, List<Integer> other, double[] chances) {
        Set<Integer> both = new TreeSet<>(one);
        both.addAll(other);
        return both.stream().mapToDouble(event -> chances[event]).reduce(1, (a, b) -> a * b);
    }

    @Test
    void everyValueIsHalvedOverTwoHours() {
        CutUnion union = CutUnion.of(2, List.of(List.of(0), List.of(1)));
        Exposure exposure = Exposure.of(2 * Cases.HOUR, List.of(LATENT, LATENT));
        TopChance chance = Chance.of(union, exposure);
        assertEquals(halves(values(chance.average())), values(chance.averagePerHour()));
        assertEquals(halves(values(chance.last())), values(chance.lastPerHour()));
        ChanceRanges ranges = Chance.ranges(union, exposure, 200, 1);
        assertEquals(halves(values(ranges.average())), values(ranges.averagePerHour()));
        assertEquals(halves(values(ranges.last())), values(ranges.lastPerHour()));
    }

    private static List<Double> values(Estimate of) {
        return List.of(of.value(), of.low(), of.high(), of.minCutUpperBound(), of.rareEventSum());
    }

    private static List<Double> values(ChanceRange of) {
        return List.of(of.low5(), of.median(), of.high95(), of.mean());
    }

    private static List<Double> halves(List<Double> values) {
        List<Double> halves = new ArrayList<>();
        values.forEach(value -> halves.add(value / 2));
        assertTrue(values.stream().allMatch(value -> value > 0), values::toString);
        return halves;
    }
}
