package stillturning.assess.front;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.assess.front.Found.Member;

/** The search on spaces drawn at random, held against walking them step by step. */
class RandomSpacesTest {

    static IntStream seeds() {
        return IntStream.range(0, 60);
    }

    /** Things 0 to n - 1, of which always two are one; steps, values and misses at random. */
    private static final class Drawn implements Space<Integer> {
        private final Map<Integer, List<Step<Integer>>> steps = new HashMap<>();
        private final Map<Integer, List<Double>> values = new HashMap<>();
        private final Map<Integer, Double> shortfalls = new HashMap<>();
        private final boolean knowing;
        private final int forms;

        Drawn(int seed, int forms, boolean knowing) {
            Random random = new Random(seed);
            this.forms = forms;
            this.knowing = knowing;
            for (int form = 0; form < forms; form++) {
                List<Double> own = new ArrayList<>();
                for (int i = 0; i < 3; i++) {
                    own.add((double) random.nextInt(12));
                }
                values.put(form, own);
                shortfalls.put(form, random.nextInt(3) == 0 ? 0.0 : 1 + random.nextInt(5));
            }
            for (int form = 0; form < forms; form++) {
                List<Step<Integer>> own = new ArrayList<>();
                for (int i = 0; i < 3; i++) {
                    int to = random.nextInt(8) == 0 ? -1 : random.nextInt(2 * forms);
                    own.add(step(i, List.of(StepEffect.values()).get(random.nextInt(3)), to));
                }
                steps.put(form, own);
            }
        }

        private static Step<Integer> step(int number, StepEffect turn, int to) {
            return new Step<>() {
                @Override
                public String words() {
                    return "step " + number;
                }

                @Override
                public StepEffect turn() {
                    return turn;
                }

                @Override
                public Optional<Integer> taken() {
                    return to < 0 ? Optional.empty() : Optional.of(to);
                }
            };
        }

        @Override
        public List<Integer> starts() {
            return List.of(0, 1);
        }

        @Override
        public List<Step<Integer>> steps(Integer from) {
            return steps.getOrDefault(from % forms, List.of());
        }

        @Override
        public Object form(Integer thing) {
            return thing % forms;
        }

        @Override
        public FirstLook look(Integer thing, List<String> evidence) {
            return new FirstLook() {
                @Override
                public List<Double> atBest() {
                    return atBestOf(thing);
                }

                @Override
                public TrialResult trial() {
                    return trialOf(thing);
                }
            };
        }

        private List<Double> atBestOf(int thing) {
            List<Double> best = new ArrayList<>(values.getOrDefault(thing % forms, List.of()));
            best.set(2, 0.0);
            if (!knowing) {
                best.replaceAll(value -> Double.NEGATIVE_INFINITY);
            }
            return best;
        }

        private TrialResult trialOf(int thing) {
            double shortfall = shortfalls.getOrDefault(thing % forms, 0.0);
            return shortfall > 0
                    ? new TrialResult.Missed("drawn", shortfall, List.of())
                    : new TrialResult.Met(values.getOrDefault(thing % forms, List.of()), List.of());
        }

        /** The values that nothing within so many steps outdoes, by walking everywhere. */
        Set<String> trueFront(int limit) {
            Set<Integer> reached = new TreeSet<>(List.of(0, 1));
            Set<Integer> edge = reached;
            for (int n = 0; n < limit; n++) {
                Set<Integer> next = new TreeSet<>();
                for (int from : edge) {
                    for (Step<Integer> step : steps(from)) {
                        step.taken().map(to -> to % forms).ifPresent(next::add);
                    }
                }
                next.removeAll(reached);
                reached.addAll(next);
                edge = next;
            }
            List<List<Double>> met = new ArrayList<>();
            for (int form : reached) {
                if (shortfalls.getOrDefault(form, 0.0) == 0) {
                    met.add(values.getOrDefault(form, List.of()));
                }
            }
            Set<String> front = new TreeSet<>();
            for (List<Double> each : met) {
                if (met.stream().noneMatch(rival -> outdoes(rival, each))) {
                    front.add(each.toString());
                }
            }
            return front;
        }

        private static boolean outdoes(List<Double> one, List<Double> other) {
            return !one.equals(other)
                    && IntStream.range(0, one.size()).allMatch(i -> one.get(i) <= other.get(i));
        }
    }

    private static Set<String> values(Found<Integer> found) {
        Set<String> values = new TreeSet<>();
        for (Member<Integer> member : found.front()) {
            if (member.trial() instanceof TrialResult.Met met) {
                values.add(met.values().toString());
            }
        }
        return values;
    }

    private static Found<Integer> search(Space<Integer> space, int steps) {
        return FrontSearch.in(space, new SearchLimits(steps, 1_000_000), SearchWatch.NOBODY);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyLimitOfStepsHasItsWholeFront(int seed) {
        Drawn space = new Drawn(seed, 300, true);
        for (int limit : new int[] {0, 1, 2, 3, 5, 8, 100}) {
            Found<Integer> found = search(space, limit);
            assertTrue(found.whole());
            assertEquals(space.trueFront(limit), values(found), "limit " + limit);
            found.front().forEach(m -> assertTrue(m.steps().size() <= limit));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void knowingWhatAThingIsWorthAtBestSavesTrialsAndCostsNothing(int seed) {
        Found<Integer> with = search(new Drawn(seed, 300, true), 6);
        Found<Integer> without = search(new Drawn(seed, 300, false), 6);
        assertEquals(values(without), values(with));
        assertEquals(0, without.tally().outdone());
        assertEquals(without.tally().tried(), with.tally().tried() + with.tally().outdone());
        assertTrue(with.tally().outdone() > 0);
    }

    @Test
    void theWayToAThingLeadsThere() {
        Drawn space = new Drawn(7, 300, true);
        for (Member<Integer> member : search(space, 8).front()) {
            int at = space.starts().get(member.start());
            for (String words : member.steps()) {
                at =
                        space.steps(at).stream()
                                .filter(step -> step.words().equals(words))
                                .findFirst()
                                .flatMap(Space.Step::taken)
                                .orElseThrow();
            }
            assertEquals(space.form(member.thing()), space.form(at));
        }
    }

    @Test
    void oneTwoAndEightThreadsFindTheSameHoweverManyTrialsThereAre() throws Exception {
        for (int trials : new int[] {3, 50, 117, 1_000_000}) {
            List<Found<Integer>> found = new ArrayList<>();
            for (int threads : new int[] {1, 2, 8}) {
                ForkJoinPool pool = new ForkJoinPool(threads);
                try {
                    found.add(
                            pool.submit(
                                            () ->
                                                    FrontSearch.in(
                                                            new Drawn(3, 400, true),
                                                            new SearchLimits(20, trials),
                                                            SearchWatch.NOBODY))
                                    .get());
                } finally {
                    pool.shutdown();
                }
            }
            assertEquals(found.get(0), found.get(1));
            assertEquals(found.get(0), found.get(2));
            assertEquals(trials == 1_000_000, found.get(0).whole());
            assertTrue(found.get(0).tally().tried() <= trials);
        }
    }

    @Test
    void whatWasCalledOffGoesOnWithoutTryingAnythingTwice() {
        Found<Integer> whole = search(new Drawn(5, 400, true), 9);
        Map<String, TrialResult> kept = new LinkedHashMap<>();
        Set<String> triedAgain = new HashSet<>();
        SearchWatch keeping =
                new SearchWatch() {
                    private int rounds;

                    @Override
                    public Optional<TrialResult> known(String way) {
                        return Optional.ofNullable(kept.get(way));
                    }

                    @Override
                    public void done(String way, TrialResult trial) {
                        kept.put(way, trial);
                    }

                    @Override
                    public void seen(Tally tally, List<List<Double>> front) {
                        rounds++;
                    }

                    @Override
                    public boolean enough() {
                        return rounds > 4;
                    }
                };
        Found<Integer> part =
                FrontSearch.in(new Drawn(5, 400, true), new SearchLimits(9, 1_000_000), keeping);
        assertFalse(part.whole());
        assertEquals(part.tally().tried() + part.tally().outdone(), kept.size());
        Map<String, TrialResult> before = Map.copyOf(kept);
        Drawn again = new Drawn(5, 400, true);
        SearchWatch goingOn =
                new SearchWatch() {
                    @Override
                    public Optional<TrialResult> known(String way) {
                        return Optional.ofNullable(before.get(way));
                    }

                    @Override
                    public void done(String way, TrialResult trial) {
                        if (!before.containsKey(way)) {
                            triedAgain.add(way);
                        }
                    }
                };
        Found<Integer> rest = FrontSearch.in(again, new SearchLimits(9, 1_000_000), goingOn);
        assertEquals(whole, rest);
        assertEquals(
                whole.tally().tried() + whole.tally().outdone(), before.size() + triedAgain.size());
    }

    @Test
    void theTallyAddsUp() {
        Found<Integer> found = search(new Drawn(11, 300, true), 7);
        Tally tally = found.tally();
        int missed = new TreeMap<>(tally.missed()).values().stream().mapToInt(n -> n).sum();
        assertEquals(tally.tried(), tally.met() + missed);
        assertTrue(tally.twice() > 0 && tally.refused() > 0);
    }
}
