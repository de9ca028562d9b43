package stillturning.reliability.cutset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Minimal sets against published trees, and against trying everything. */
class CutSearchTest {

    /** A tree over named events, each a letter. */
    private static List<String> cuts(String events, int order, Predicate<Letters> top) {
        CutSets sets =
                CutSearch.of(
                        events.length(),
                        order,
                        set ->
                                top.test(Letters.of(events, set))
                                        ? SetVerdict.LOST
                                        : SetVerdict.LIVES,
                        SetSearchWatch.NOBODY);
        assertTrue(sets.complete());
        return sets.minimal().stream()
                .map(set -> set.stream().map(i -> events.substring(i, i + 1)).toList())
                .map(names -> String.join("", names))
                .toList();
    }

    private record Letters(String happened) {
        static Letters of(String events, int[] set) {
            StringBuilder happened = new StringBuilder();
            for (int i : set) {
                happened.append(events.charAt(i));
            }
            return new Letters(happened.toString());
        }

        boolean has(char event) {
            return happened.indexOf(event) >= 0;
        }
    }

    /**
     * NUREG-0492, pressure tank, simplified tree: E1 = T + K2 + S (S1 + K1 + R), cut sets read in a
     * second source (university exercise). T tank, K relay K2, S pressure switch, s switch S1, k
     * relay K1, R timer.
     */
    @Test
    void thePressureTank() {
        assertEquals(
                List.of("T", "K", "Ss", "Sk", "SR"),
                cuts(
                        "TKSskR",
                        3,
                        x ->
                                x.has('T')
                                        || x.has('K')
                                        || (x.has('S')
                                                && (x.has('s') || x.has('k') || x.has('R')))));
    }

    /**
     * NUREG-0492 page XI-3 as a university exercise gives it (read in a second source): five
     * singles and 24 doubles, 29 in all.
     */
    @Test
    void thePressureTankWithAllItsCauses() {
        String first = "abcde";
        String one = "fgh";
        String other = "ijklmnop";
        List<String> found =
                cuts(
                        first + one + other,
                        3,
                        x ->
                                first.chars().anyMatch(c -> x.has((char) c))
                                        || (one.chars().anyMatch(c -> x.has((char) c))
                                                && other.chars().anyMatch(c -> x.has((char) c))));
        assertEquals(29, found.size());
        assertEquals(5, found.stream().filter(s -> s.length() == 1).count());
        assertEquals(24, found.stream().filter(s -> s.length() == 2).count());
    }

    /**
     * Small trees of the same family; read in second sources (course exercises and lecture notes).
     */
    @Test
    void smallTrees() {
        // landing gear does not deploy: (A+B+C)((C+A)(C+B))
        assertEquals(
                List.of("C", "AB"),
                cuts(
                        "ABC",
                        3,
                        x ->
                                (x.has('A') || x.has('B') || x.has('C'))
                                        && (x.has('C') || x.has('A'))
                                        && (x.has('C') || x.has('B'))));
        // no flow to deluge nozzles: (A+B)(A+C)(D+B)(D+C)
        assertEquals(
                List.of("AD", "BC"),
                cuts(
                        "ABCD",
                        4,
                        x ->
                                (x.has('A') || x.has('B'))
                                        && (x.has('A') || x.has('C'))
                                        && (x.has('D') || x.has('B'))
                                        && (x.has('D') || x.has('C'))));
        // E1+E2+[E4 E5 (E6+E7)]+E3+(E6+E8), adapted there from Rausand & Hoyland: 456 is absorbed
        assertEquals(
                List.of("1", "2", "3", "6", "8", "457"),
                cuts(
                        "12345678",
                        3,
                        x ->
                                x.has('1')
                                        || x.has('2')
                                        || (x.has('4') && x.has('5') && (x.has('6') || x.has('7')))
                                        || x.has('3')
                                        || x.has('6')
                                        || x.has('8')));
        // x1 x2 (y1 + y2) + y2 x1
        assertEquals(
                List.of("xz", "xXy"),
                cuts(
                        "xXyz",
                        3,
                        x ->
                                (x.has('x') && x.has('X') && (x.has('y') || x.has('z')))
                                        || (x.has('z') && x.has('x'))));
        // loss of power (E1 E2) + E3, lecture notes, read
        assertEquals(
                List.of("3", "12"), cuts("123", 3, x -> (x.has('1') && x.has('2')) || x.has('3')));
    }

    /**
     * Five-component bridge: minimal cuts {1,2}, {4,5}, {1,3,5}, {2,3,4} (Barlow & Proschan 1975
     * and others; from memory, unverified).
     */
    @Test
    void theBridge() {
        assertEquals(
                List.of("12", "45", "135", "234"),
                cuts(
                        "12345",
                        4,
                        x ->
                                List.of("14", "25", "135", "234").stream()
                                        .allMatch(
                                                path ->
                                                        path.chars()
                                                                .anyMatch(c -> x.has((char) c)))));
    }

    /** Minimal cuts of a k-out-of-n system: C(n, n-k+1), each of order n-k+1 (from memory). */
    @Test
    void threeOfFive() {
        CutSets sets =
                CutSearch.of(
                        5,
                        4,
                        set -> set.length > 2 ? SetVerdict.LOST : SetVerdict.LIVES,
                        SetSearchWatch.NOBODY);
        assertEquals(10, sets.minimal().size());
        assertTrue(sets.minimal().stream().allMatch(set -> set.size() == 3));
    }

    /**
     * Any function of the events at all, also where more events are less bad: tried against every
     * subset.
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void whateverTheFunction(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int trial = 0; trial < 1000; trial++) {
            int events = 1 + random.nextInt(7);
            double share = random.nextDouble();
            BitSet lost = new BitSet();
            for (int mask = 1; mask < 1 << events; mask++) {
                lost.set(mask, random.nextDouble() < share);
            }
            against(events, lost, "seed " + seed + " trial " + trial);
        }
    }

    /** Random networks of edges between two terminals, where more events are never less bad. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void networks(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int trial = 0; trial < 1000; trial++) {
            int nodes = 2 + random.nextInt(4);
            int edges = 1 + random.nextInt(8);
            int[][] ends = new int[edges][];
            for (int i = 0; i < edges; i++) {
                ends[i] = new int[] {random.nextInt(nodes), random.nextInt(nodes)};
            }
            BitSet lost = new BitSet();
            for (int mask = 1; mask < 1 << edges; mask++) {
                lost.set(mask, !joined(nodes, ends, mask));
            }
            against(edges, lost, "seed " + seed + " trial " + trial);
        }
    }

    private static boolean joined(int nodes, int[][] ends, int gone) {
        int reached = 1;
        for (int round = 0; round < nodes; round++) {
            for (int i = 0; i < ends.length; i++) {
                int both = 1 << ends[i][0] | 1 << ends[i][1];
                reached |= (gone & 1 << i) == 0 && (reached & both) != 0 ? both : 0;
            }
        }
        return (reached & 2) != 0;
    }

    private static void against(int events, BitSet lost, String which) {
        CutSets found =
                CutSearch.of(
                        events,
                        3,
                        set -> lost.get(mask(set)) ? SetVerdict.LOST : SetVerdict.LIVES,
                        SetSearchWatch.NOBODY);
        List<Integer> minimal = new ArrayList<>();
        Map<Integer, List<Integer>> healings = new HashMap<>();
        for (int mask = 1; mask < 1 << events; mask++) {
            if (Integer.bitCount(mask) <= 3 && lost.get(mask) && noneInside(lost, mask)) {
                minimal.add(mask);
                for (int by = 0; by < events; by++) {
                    if ((mask & 1 << by) == 0
                            && Integer.bitCount(mask) < 3
                            && !lost.get(mask | 1 << by)) {
                        healings.computeIfAbsent(mask, m -> new ArrayList<>()).add(by);
                    }
                }
            }
        }
        assertEquals(
                minimal.stream().sorted().toList(),
                found.minimal().stream().map(CutSearchTest::mask).sorted().toList(),
                which);
        Map<Integer, List<Integer>> undone = new HashMap<>();
        found.healings()
                .forEach(
                        h ->
                                undone.computeIfAbsent(mask(h.set()), m -> new ArrayList<>())
                                        .add(h.by()));
        assertEquals(healings, undone, which);
    }

    private static boolean noneInside(BitSet lost, int mask) {
        for (int part = mask - 1 & mask; part > 0; part = part - 1 & mask) {
            if (lost.get(part)) {
                return false;
            }
        }
        return true;
    }

    private static int mask(int[] set) {
        return IntStream.of(set).map(i -> 1 << i).sum();
    }

    private static int mask(List<Integer> set) {
        return set.stream().mapToInt(i -> 1 << i).sum();
    }

    @Test
    void nothingIsAskedAboveWhatIsLostAndFound() {
        AtomicInteger triples = new AtomicInteger();
        CutSearch.of(
                6,
                3,
                set -> {
                    triples.addAndGet(set.length == 3 ? 1 : 0);
                    return set[0] == 0 && set.length == 1 ? SetVerdict.LOST : SetVerdict.LIVES;
                },
                SetSearchWatch.NOBODY);
        assertEquals(10, triples.get(), "triples of the other five");
    }

    @Test
    void whatNobodyCanSayIsNamed() {
        CutSets sets =
                CutSearch.of(
                        3,
                        2,
                        set ->
                                set.length == 2 && set[0] == 0
                                        ? SetVerdict.UNTOLD
                                        : SetVerdict.LIVES,
                        SetSearchWatch.NOBODY);
        assertEquals(List.of(List.of(0, 1), List.of(0, 2)), sets.untold());
        assertTrue(sets.minimal().isEmpty());
        assertEquals(sets.untold(), sets.feared());
        assertEquals(sets.untold(), sets.ofOrder(2));
    }

    @Test
    void whatCannotHappenTogetherIsNoCut() {
        CutSets sets =
                CutSearch.of(
                        3,
                        3,
                        set -> set.length > 1 ? SetVerdict.IMPOSSIBLE : SetVerdict.LIVES,
                        SetSearchWatch.NOBODY);
        assertTrue(sets.minimal().isEmpty() && sets.healings().isEmpty());
    }

    /** Called off and taken up again, the search ends as if it had never stopped. */
    @Test
    void aSearchGoesOnWhereItWasCalledOff() {
        SetOracle trial =
                set -> IntStream.of(set).sum() % 7 == 6 ? SetVerdict.LOST : SetVerdict.LIVES;
        CutSets whole = CutSearch.of(20, 3, trial, SetSearchWatch.NOBODY);
        Map<SearchBlock, Searched> kept = new ConcurrentHashMap<>();
        CutSets first = CutSearch.of(20, 3, trial, new Keeping(kept, 25));
        assertFalse(first.complete());
        int before = kept.size();
        AtomicInteger asked = new AtomicInteger();
        CutSets second =
                CutSearch.of(
                        20,
                        3,
                        set -> {
                            asked.incrementAndGet();
                            return trial.of(set);
                        },
                        new Keeping(kept, Integer.MAX_VALUE));
        assertTrue(before >= 20, "some blocks were done: " + before);
        assertEquals(whole, second);
        assertTrue(asked.get() < whole.asked(), "and are not done again");
    }

    private record Keeping(Map<SearchBlock, Searched> kept, int most) implements SetSearchWatch {
        @Override
        public Optional<Searched> known(SearchBlock block) {
            return Optional.ofNullable(kept.get(block));
        }

        @Override
        public void done(Searched searched) {
            kept.put(searched.block(), searched);
        }

        @Override
        public boolean cancelled() {
            return kept.size() >= most;
        }
    }

    @Test
    void onlyWhatMakesSenseIsSearched() {
        SetOracle never = set -> SetVerdict.LIVES;
        assertTrue(CutSearch.of(0, 3, never, SetSearchWatch.NOBODY).minimal().isEmpty());
        assertThrows(
                IllegalArgumentException.class,
                () -> CutSearch.of(3, 5, never, SetSearchWatch.NOBODY));
        assertThrows(
                IllegalArgumentException.class,
                () -> CutSearch.of(32_767, 1, never, SetSearchWatch.NOBODY));
        assertThrows(
                IllegalArgumentException.class,
                () -> CutSearch.of(3, 0, never, SetSearchWatch.NOBODY));
    }

    /** One event less than too many: each is asked about alone, the last one too. */
    @Test
    void asManyEventsAsCanBeNumberedAreAllAskedAbout() {
        int most = 32_766;
        CutSets sets =
                CutSearch.of(
                        most,
                        1,
                        set -> set[0] == most - 1 ? SetVerdict.LOST : SetVerdict.LIVES,
                        SetSearchWatch.NOBODY);
        assertEquals(List.of(List.of(most - 1)), sets.minimal());
        assertEquals(most, sets.asked());
    }
}
