package stillturning.reliability.cover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.reliability.cover.CoverChoice.Proof;

class CoverTest {
    private static final long PLENTY = Cover.CONFLICTS;

    /**
     * Which of five tests sees which of six states, the first healthy: after Pattipati and
     * Alexandridis 1990 (matrix from memory, unverified). Answers computed for it as written.
     */
    private static final int[][] SEES = {
        {0, 0, 0, 0, 0},
        {0, 1, 0, 0, 1},
        {0, 0, 1, 1, 0},
        {1, 0, 0, 1, 1},
        {1, 1, 0, 0, 0},
        {1, 1, 1, 1, 0}
    };

    private static CoverSet of(int cost, Integer... items) {
        return new CoverSet(cost, List.of(items));
    }

    private static List<CoverSet> detecting() {
        return IntStream.range(0, 5)
                .mapToObj(
                        test ->
                                new CoverSet(
                                        1,
                                        IntStream.range(1, 6)
                                                .filter(state -> SEES[state][test] == 1)
                                                .map(state -> state - 1)
                                                .boxed()
                                                .toList()))
                .toList();
    }

    /** A pair of states is told apart by the tests that see one of them alone. */
    private static List<CoverSet> isolating() {
        List<int[]> pairs = new ArrayList<>();
        for (int one = 0; one < 6; one++) {
            for (int other = 0; other < one; other++) {
                pairs.add(new int[] {one, other});
            }
        }
        return IntStream.range(0, 5)
                .mapToObj(
                        test ->
                                new CoverSet(
                                        1,
                                        IntStream.range(0, pairs.size())
                                                .filter(
                                                        p ->
                                                                SEES[pairs.get(p)[0]][test]
                                                                        != SEES[pairs.get(p)[1]][
                                                                                test])
                                                .boxed()
                                                .toList()))
                .toList();
    }

    @Test
    void fewestTestsThatDetectEveryFault() {
        CoverChoice found = Cover.of(5, detecting());
        assertEquals(List.of(1, 3), found.chosen()); // t2, t4; greedy would need three
        assertEquals(2, found.cost());
        assertEquals(2, found.lowerBound());
        assertEquals(Proof.CHEAPEST_AND_FIRST, found.proof());
        assertEquals(
                new EquallyCheap(List.of(List.of(1, 3)), true),
                Cover.all(5, detecting(), 10, PLENTY));
    }

    @Test
    void fewestTestsThatIsolateEveryState() {
        EquallyCheap all = Cover.all(15, isolating(), 100, PLENTY);
        assertEquals(
                List.of(
                        List.of(0, 1, 2),
                        List.of(0, 1, 3),
                        List.of(0, 2, 4),
                        List.of(0, 3, 4),
                        List.of(1, 2, 4),
                        List.of(1, 3, 4)),
                all.choices());
        assertTrue(all.complete());
        assertEquals(List.of(0, 1, 2), Cover.of(15, isolating()).chosen());
    }

    @Test
    void limitLeavesTheRestUntold() {
        EquallyCheap some = Cover.all(15, isolating(), 4, PLENTY);
        assertEquals(4, some.choices().size());
        assertFalse(some.complete());
        assertTrue(Cover.all(15, isolating(), 6, PLENTY).complete());
    }

    @Test
    void whatNothingCoversIsNamed() {
        CoverChoice found = Cover.of(4, List.of(of(3, 1), of(5, 1, 2)));
        assertEquals(List.of(0, 3), found.uncovered());
        assertEquals(List.of(1), found.chosen());
        assertEquals(5, found.cost());
    }

    @Test
    void nothingToCoverCostsNothing() {
        CoverChoice none = new CoverChoice(List.of(), 0, 0, Proof.CHEAPEST_AND_FIRST, List.of());
        assertEquals(none, Cover.of(0, List.of()));
        assertEquals(none, Cover.of(0, List.of(of(1), of(2))));
        assertEquals(List.of(0, 1), Cover.of(2, List.of(of(7))).uncovered());
        assertEquals(
                new EquallyCheap(List.of(List.of()), true),
                Cover.all(2, List.of(of(7)), 3, PLENTY));
    }

    @Test
    void firstByNumberAmongEquals() {
        // {0, 3} and {1, 2} and {0, 1, 4} cost 4 each: the last has 1 where the first has 3
        List<CoverSet> offers =
                List.of(of(2, 0, 1), of(1, 2, 0), of(3, 1, 3), of(2, 2, 3), of(1, 3));
        assertEquals(
                List.of(List.of(0, 1, 4), List.of(0, 3), List.of(1, 2)),
                Cover.all(4, offers, 10, PLENTY).choices());
        assertEquals(List.of(0, 1, 4), Cover.of(4, offers).chosen());
    }

    @Test
    void largeCostsDoNotOverflow() {
        int most = Integer.MAX_VALUE;
        CoverChoice found =
                Cover.of(3, List.of(of(most, 0), of(most, 1), of(most, 2), of(1, 0, 1)));
        assertEquals(1L + most, found.cost());
        assertEquals(List.of(2, 3), found.chosen());
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void choiceIsTheOneThatTryingAllFinds(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 500; round++) {
            int items = random.nextInt(10);
            List<CoverSet> offers = drawn(random, items, random.nextInt(10), 1 + random.nextInt(3));
            List<List<Integer>> cheapest = tried(offers);
            CoverChoice found = Cover.of(items, offers);
            assertEquals(cheapest.get(0), found.chosen(), () -> items + " " + offers);
            assertEquals(Proof.CHEAPEST_AND_FIRST, found.proof());
            assertEquals(found.cost(), found.lowerBound());
            EquallyCheap all = Cover.all(items, offers, 2000, PLENTY);
            assertEquals(cheapest, all.choices(), () -> items + " " + offers);
            assertTrue(all.complete());
        }
    }

    private static List<CoverSet> drawn(
            SplittableRandom random, int items, int sets, int highestCost) {
        List<CoverSet> offers = new ArrayList<>();
        for (int set = 0; set < sets; set++) {
            double share = random.nextDouble(.1, .6);
            offers.add(
                    new CoverSet(
                            1 + random.nextInt(highestCost),
                            IntStream.range(0, items)
                                    .filter(item -> random.nextDouble() < share)
                                    .boxed()
                                    .toList()));
        }
        return offers;
    }

    /** All cheapest choices, by trying every one; the first by numbers first. */
    private static List<List<Integer>> tried(List<CoverSet> offers) {
        int all = offers.stream().mapToInt(CoverTest::mask).reduce(0, (a, b) -> a | b);
        List<List<Integer>> cheapest = new ArrayList<>();
        int least = Integer.MAX_VALUE;
        // the lowest number is the highest bit, so that counting down is the order by numbers
        for (int choice = (1 << offers.size()) - 1; choice >= 0; choice--) {
            int covered = 0;
            int cost = 0;
            List<Integer> chosen = new ArrayList<>();
            for (int set = 0; set < offers.size(); set++) {
                if ((choice >> (offers.size() - 1 - set) & 1) == 1) {
                    covered |= mask(offers.get(set));
                    cost += offers.get(set).cost();
                    chosen.add(set);
                }
            }
            if (covered == all && cost <= least) {
                if (cost < least) {
                    cheapest.clear();
                    least = cost;
                }
                cheapest.add(chosen);
            }
        }
        return cheapest;
    }

    private static int mask(CoverSet offer) {
        return offer.items().stream().mapToInt(item -> 1 << item).sum();
    }

    @Test
    void withoutBudgetTheAnswerIsACoverAndSaysThatNothingIsProven() {
        SplittableRandom random = new SplittableRandom(9);
        int items = 60;
        List<CoverSet> offers =
                IntStream.range(0, 40)
                        .mapToObj(set -> new CoverSet(1, random.ints(6, 0, items).boxed().toList()))
                        .toList();
        CoverChoice found = Cover.of(items, offers, 0);
        assertEquals(Proof.NONE, found.proof());
        assertTrue(found.lowerBound() < found.cost());
        CoverChoice proven = Cover.of(items, offers);
        assertTrue(found.lowerBound() <= proven.cost() && proven.cost() <= found.cost());
        assertEquals(Proof.CHEAPEST_AND_FIRST, proven.proof());
        assertEquals(proven, Cover.of(items, offers));
        for (CoverChoice choice : List.of(found, proven)) {
            long covered =
                    choice.chosen().stream()
                            .flatMap(set -> offers.get(set).items().stream())
                            .distinct()
                            .count();
            assertEquals(items - choice.uncovered().size(), covered);
        }
        EquallyCheap unproven = Cover.all(items, offers, 5, 0);
        assertEquals(new EquallyCheap(List.of(found.chosen()), false), unproven);
    }

    @Test
    void whatMakesNoSenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> of(0, 1));
        assertThrows(IllegalArgumentException.class, () -> of(-3, 1));
        assertThrows(IllegalArgumentException.class, () -> Cover.of(2, List.of(of(1, 2))));
        assertThrows(IllegalArgumentException.class, () -> Cover.of(2, List.of(of(1, -1))));
        assertThrows(
                IllegalArgumentException.class, () -> Cover.all(2, List.of(of(1, 1)), 0, PLENTY));
    }
}
