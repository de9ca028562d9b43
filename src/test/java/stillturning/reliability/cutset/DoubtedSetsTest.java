package stillturning.reliability.cutset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sets for which nobody can say, against trying every subset. */
class DoubtedSetsTest {

    /** Any function at all, some of whose values nobody knows. */
    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void aDoubtHidesNothingThatIsKnownAndCountsWhereNothingKnownIsInside(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int trial = 0; trial < 500; trial++) {
            int events = 1 + random.nextInt(6);
            BitSet lost = new BitSet();
            BitSet untold = new BitSet();
            for (int mask = 1; mask < 1 << events; mask++) {
                lost.set(mask, random.nextInt(4) == 0);
                untold.set(mask, random.nextInt(4) == 0);
            }
            BitSet known = (BitSet) lost.clone();
            known.andNot(untold);
            CutSets found =
                    CutSearch.of(
                            events,
                            3,
                            set ->
                                    untold.get(mask(set))
                                            ? SetVerdict.UNTOLD
                                            : lost.get(mask(set))
                                                    ? SetVerdict.LOST
                                                    : SetVerdict.LIVES,
                            SetSearchWatch.NOBODY);
            BitSet either = (BitSet) known.clone();
            either.or(untold);
            List<Integer> feared = new ArrayList<>();
            for (int mask = 1; mask < 1 << events; mask++) {
                boolean minimal = known.get(mask) && noneInside(known, mask);
                boolean doubted = untold.get(mask) && noneInside(either, mask);
                if (Integer.bitCount(mask) <= 3 && (minimal || doubted)) {
                    feared.add(mask);
                }
            }
            assertEquals(
                    feared,
                    found.feared().stream()
                            .map(set -> mask(set.stream().mapToInt(Integer::intValue).toArray()))
                            .sorted()
                            .toList(),
                    "seed " + seed + " trial " + trial);
            assertEquals(
                    found.feared(),
                    IntStream.rangeClosed(1, 3)
                            .boxed()
                            .flatMap(size -> ofOrder(found, size).stream())
                            .toList(),
                    "seed " + seed + " trial " + trial);
        }
    }

    private static List<List<Integer>> ofOrder(CutSets found, int size) {
        List<List<Integer>> sets = found.ofOrder(size);
        assertTrue(sets.stream().allMatch(set -> set.size() == size));
        return sets;
    }

    private static boolean noneInside(BitSet sets, int mask) {
        for (int part = mask - 1 & mask; part > 0; part = part - 1 & mask) {
            if (sets.get(part)) {
                return false;
            }
        }
        return true;
    }

    private static int mask(int[] set) {
        return IntStream.of(set).map(i -> 1 << i).sum();
    }
}
