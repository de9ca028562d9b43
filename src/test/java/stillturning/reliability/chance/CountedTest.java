package stillturning.reliability.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Thorough;

/** Families drawn by lot, against every combination of events counted one by one. */
class CountedTest {
    private static final int ROUNDS = 500;

    private record Family(int events, List<List<Integer>> sets, List<Double> likely) {
        static Family of(SplittableRandom random) {
            int events = 1 + random.nextInt(9);
            List<List<Integer>> sets = new ArrayList<>();
            for (int n = random.nextInt(14); n > 0; n--) {
                int order = 1 + random.nextInt(4);
                sets.add(random.ints(order, 0, events).boxed().toList());
            }
            double most = random.nextInt(3) == 0 ? 1 : .1;
            double[] chances = random.doubles(events, 0, most).toArray();
            if (random.nextInt(5) == 0) {
                chances[random.nextInt(events)] = random.nextInt(2);
            }
            return new Family(events, sets, DoubleStream.of(chances).boxed().toList());
        }

        double[] chances() {
            return likely.stream().mapToDouble(chance -> chance).toArray();
        }

        double counted() {
            return Cases.counted(sets, chances());
        }

        double counted(int event, double chance) {
            double[] changed = chances();
            changed[event] = chance;
            return Cases.counted(sets, changed);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void topIsTheCountedOneAndWithinItsBounds(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < ROUNDS; round++) {
            Family family = Family.of(random);
            double counted = family.counted();
            Exposure exposure = Cases.perFlight(family.chances());
            Estimate exact =
                    Chance.of(CutUnion.of(family.events(), family.sets()), exposure).average();
            assertEquals(counted, exact.value(), 1e-12 * counted, () -> "" + family);
            Estimate bounded =
                    Chance.of(CutUnion.of(family.events(), family.sets(), 0), exposure).average();
            double slack = 1e-12;
            assertTrue(bounded.low() <= counted + slack, () -> family + " " + bounded);
            assertTrue(bounded.high() >= counted - slack, () -> family + " " + bounded);
            assertTrue(bounded.rareEventSum() >= bounded.minCutUpperBound() - slack);
            assertTrue(bounded.low() >= 0 && bounded.high() <= 1 + slack);
            assertEquals(exact.minCutUpperBound(), bounded.value(), 0);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void intersectionsAddUpToTheTop(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < ROUNDS; round++) {
            Family family = Family.of(random);
            CutUnion union = CutUnion.of(family.events(), family.sets());
            InclusionExclusion found =
                    InclusionExclusion.of(union, Cases.perFlight(family.chances()), 14);
            double counted = family.counted();
            List<Double> partial = found.partialSums();
            assertTrue(found.complete());
            for (int k = 0; k < partial.size(); k++) {
                double over = partial.get(k) - counted;
                assertTrue(k % 2 == 0 ? over > -1e-9 : over < 1e-9, () -> family + " " + partial);
            }
            double last = partial.isEmpty() ? 0 : partial.get(partial.size() - 1);
            assertEquals(counted, last, 1e-9, () -> "" + family);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void importancesAreThoseOfTheCountedTop(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < ROUNDS / 2; round++) {
            Family family = Family.of(random);
            CutUnion union = CutUnion.of(family.events(), family.sets());
            double top = family.counted();
            for (Importance found : Chance.importances(union, Cases.perFlight(family.chances()))) {
                int event = found.events().get(0);
                double always = family.counted(event, 1);
                double never = family.counted(event, 0);
                assertEquals(always, found.always(), 1e-12, () -> family + " " + found);
                assertEquals(never, found.never(), 1e-12, () -> family + " " + found);
                double q = family.chances()[event];
                // pivoting on one event: Q = q Q(1) + (1 - q) Q(0)
                assertEquals(top, q * found.always() + (1 - q) * found.never(), 1e-12);
                double with =
                        Cases.counted(
                                union.sets().stream().filter(s -> s.contains(event)).toList(),
                                family.chances());
                assertEquals(
                        top == 0 ? 0 : with / top,
                        found.fussellVeselyUnion().orElseThrow(),
                        1e-9,
                        () -> family + " " + found);
                if (top > 0) {
                    assertEquals(found.birnbaum() * q / top, found.criticality(), 1e-9);
                }
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void orderAndRepetitionOfSetsChangeNothing(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < ROUNDS; round++) {
            Family family = Family.of(random);
            List<List<Integer>> jumbled = new ArrayList<>(family.sets());
            jumbled.addAll(family.sets());
            for (int i = jumbled.size() - 1; i > 0; i--) {
                int other = random.nextInt(i + 1);
                List<Integer> moved = jumbled.get(i);
                jumbled.set(i, jumbled.get(other));
                jumbled.set(other, moved);
            }
            CutUnion plain = CutUnion.of(family.events(), family.sets());
            CutUnion mixed = CutUnion.of(family.events(), jumbled);
            assertEquals(plain.sets(), mixed.sets());
            assertEquals(plain.absorbed() + family.sets().size(), mixed.absorbed());
            Exposure exposure = Cases.perFlight(family.chances());
            assertEquals(Chance.of(plain, exposure), Chance.of(mixed, exposure));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void meanOverTheIntervalIsTheAreaUnderTheCountedTop(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 20; round++) {
            Family family = Family.of(random);
            double[] rates = random.doubles(family.events(), .001, 1).toArray();
            List<Occurrence> occurrences = new ArrayList<>();
            for (double rate : rates) {
                occurrences.add(Cases.latent(rate, 1));
            }
            double found =
                    Cases.average(
                            CutUnion.of(family.events(), family.sets()),
                            Exposure.of(Cases.HOUR, occurrences));
            assertEquals(simpson(family.sets(), rates), found, 1e-8, () -> "" + family);
        }
    }

    private static double simpson(List<List<Integer>> sets, double[] rates) {
        int pieces = 200;
        double sum = 0;
        for (int i = 0; i <= pieces; i++) {
            double age = (double) i / pieces;
            double[] chances =
                    IntStream.range(0, rates.length)
                            .mapToDouble(e -> -Math.expm1(-rates[e] * age))
                            .toArray();
            double weight = i == 0 || i == pieces ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * Cases.counted(sets, chances) / (3 * pieces);
        }
        return sum;
    }

    @Test
    void blocksOfTwinsAreMuchSmallerThanTheirSets() {
        List<List<Integer>> sets = new ArrayList<>();
        for (int one = 0; one < 60; one++) {
            for (int other = 60; other < 120; other++) {
                sets.add(List.of(one, other));
            }
        }
        CutUnion block = CutUnion.of(120, sets);
        assertEquals(3600, block.sets().size());
        assertEquals(2, block.nodes());
        double any = 1 - Math.pow(.999, 60);
        assertEquals(any * any, Cases.average(block, Cases.even(120, .001)), 1e-15);
    }

    @Thorough
    @Test
    void longChainOfPairsNeedsNoDeepStack() {
        List<List<Integer>> sets =
                IntStream.range(0, 20_000).mapToObj(e -> List.of(e, e + 1)).toList();
        CutUnion chain = CutUnion.of(20_001, sets, 4_000_000);
        assertEquals(Basis.EXACT, chain.basis());
        // none of n neighbours together: a(n) = p a(n-1) + qp a(n-2)
        double p = .9999;
        double before = 1;
        double now = 1;
        for (int n = 1; n < 20_001; n++) {
            double next = p * now + (1 - p) * p * before;
            before = now;
            now = next;
        }
        assertEquals(1 - now, Cases.average(chain, Cases.even(20_001, 1 - p)), 1e-10);
    }
}
