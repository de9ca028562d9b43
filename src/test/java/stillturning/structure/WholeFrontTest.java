package stillturning.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ForkJoinPool;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.assess.front.Found;
import stillturning.assess.front.FrontSearch;
import stillturning.assess.front.SearchLimits;
import stillturning.assess.front.SearchWatch;
import stillturning.assess.front.Space;
import stillturning.assess.front.TrialResult;
import stillturning.bench.Effort;
import stillturning.bench.Thorough;
import stillturning.model.Candidate;
import stillturning.model.EngineLogic;
import stillturning.parts.Part;
import stillturning.parts.switching.Switch.Throw;
import stillturning.structure.shape.CandidateForm;
import stillturning.structure.shape.CanonicalGraph;

/**
 * Small families of wirings, every member of which is looked at: the search finds the same front
 * without looking at every member. Judged by their shape, which is quick.
 */
class WholeFrontTest {

    /** How a member of a family is wired: one number for each decision. */
    private record Family(
            String name, List<Integer> choices, BiConsumer<Rig, List<Integer>> wiring) {
        @Override
        public String toString() {
            return name;
        }

        List<List<Integer>> members() {
            List<List<Integer>> all = List.of(List.of());
            for (int choice : choices) {
                List<List<Integer>> longer = new ArrayList<>();
                for (List<Integer> shorter : all) {
                    IntStream.range(0, choice)
                            .forEach(
                                    n ->
                                            longer.add(
                                                    Stream.concat(shorter.stream(), Stream.of(n))
                                                            .toList()));
                }
                all = longer;
            }
            return all;
        }

        Rig rig(List<Integer> member) {
            Rig rig = new Rig();
            rig.battery("battery").alternator("alternator", true).ground("ground").bus("bus");
            rig.join("battery.minus", "alternator.case", "ground.stud")
                    .join("battery.plus", "alternator.output", "alternator.field", "bus.bar");
            wiring.accept(rig, member);
            return rig;
        }
    }

    static Stream<Family> families() {
        return Stream.of(
                        new Family(
                                "two inputs from two buses",
                                List.of(4, 4, 4, 4, 3, 3),
                                WholeFrontTest::twoInputs),
                        new Family(
                                "two of three loads on plugs",
                                List.of(4, 4, 4, 3, 3, 4),
                                WholeFrontTest::plugs),
                        new Family(
                                "returns on two grounds",
                                List.of(6, 6, 6, 5, 2),
                                WholeFrontTest::returns))
                .limit(Effort.cases(1, 3));
    }

    /**
     * Two loads with two inputs each, which come from nowhere, the bus, a second bus or a battery.
     */
    private static void twoInputs(Rig rig, List<Integer> member) {
        secondBus(rig, member.get(4), member.get(5));
        rig.load("computer", "a", "b").load("pump", "a", "b").allOf("computer", "pump");
        rig.join("computer.minus", "pump.minus", "ground.stud");
        for (int n = 0; n < 4; n++) {
            String input = (n < 2 ? "computer." : "pump.") + (n % 2 == 0 ? "a" : "b");
            feed(rig, "feed-" + n, member.get(n), input);
        }
    }

    private static void feed(Rig rig, String name, int from, String to) {
        if (from > 0) {
            rig.breaker(name);
            rig.join(name + ".out", to);
            rig.join(
                    name + ".in",
                    from == 1 ? "bus.bar" : from == 2 ? "second.bar" : "battery.plus");
        }
    }

    /** None, fed by a tie of some kind, with a battery of its own or with none. */
    private static void secondBus(Rig rig, int battery, int tie) {
        rig.bus("second");
        if (battery > 0) {
            rig.battery("other").join("other.minus", "ground.stud");
            if (battery == 1) {
                rig.join("other.plus", "second.bar");
            } else {
                rig.diode("guard").join("other.plus", "guard.in").join("guard.out", "second.bar");
            }
        }
        if (tie == 1) {
            rig.diode("tie").join("bus.bar", "tie.in").join("tie.out", "second.bar");
        } else if (tie == 2) {
            rig.lever("tie", Throw.SINGLE, 1, "on")
                    .join("bus.bar", "tie.in")
                    .join("tie.out", "second.bar");
        }
    }

    /** Three pumps, two of which are needed, wired, on one plug or on another. */
    private static void plugs(Rig rig, List<Integer> member) {
        secondBus(rig, member.get(3), member.get(4));
        rig.connector("plug", 3).connector("other-plug", 3);
        rig.load("pump-1", "plus").load("pump-2", "plus").load("pump-3", "plus");
        rig.needs(new EngineLogic.AtLeast(2, List.of(one("pump-1"), one("pump-2"), one("pump-3"))));
        for (int n = 0; n < 3; n++) {
            int pin = n + 1;
            String load = "pump-" + pin;
            rig.join(load + ".minus", "ground.stud");
            String from = n < member.get(5) ? "second.bar" : "bus.bar";
            switch (member.get(n)) {
                case 0 -> rig.join(from, load + ".plus");
                case 1 ->
                        rig.join(from, "plug." + pin + "a")
                                .join("plug." + pin + "b", load + ".plus");
                case 2 ->
                        rig.join(from, "other-plug." + pin + "a")
                                .join("other-plug." + pin + "b", load + ".plus");
                default -> feed(rig, "breaker-" + pin, 1, load + ".plus");
            }
        }
    }

    private static EngineLogic one(String load) {
        return new EngineLogic.One(load);
    }

    /** Three loads, any of which is enough, each with its feed and its way back. */
    private static void returns(Rig rig, List<Integer> member) {
        secondBus(rig, member.get(3) % 3, member.get(3) / 2);
        rig.ground("other-ground");
        if (member.get(4) == 1) {
            rig.wire("strap").join("strap.a", "other-ground.stud").join("strap.b", "battery.minus");
        }
        rig.load("lane-1", "plus")
                .load("lane-2", "plus")
                .load("lane-3", "plus")
                .anyOf("lane-1", "lane-2", "lane-3");
        for (int n = 0; n < 3; n++) {
            String load = "lane-" + (n + 1);
            rig.join(load + ".plus", member.get(n) % 2 == 0 ? "bus.bar" : "second.bar");
            String back =
                    List.of("ground.stud", "other-ground.stud", "battery.minus")
                            .get(member.get(n) / 2);
            rig.join(load + ".minus", back);
        }
    }

    /** What a member is worth, worked out once. */
    private static final class Judged implements Space<List<Integer>> {
        private final Family family;
        private final boolean knowing;
        private final Map<List<Integer>, TrialResult> trials;
        private final Map<List<Integer>, CanonicalGraph> forms;
        private final Map<List<Integer>, List<Double>> best = new ConcurrentHashMap<>();

        Judged(
                Family family,
                boolean knowing,
                Map<List<Integer>, TrialResult> trials,
                Map<List<Integer>, CanonicalGraph> forms) {
            this.family = family;
            this.knowing = knowing;
            this.trials = trials;
            this.forms = forms;
        }

        @Override
        public List<List<Integer>> starts() {
            List<Integer> most = family.choices.stream().map(n -> n - 1).toList();
            return List.of(family.choices.stream().map(n -> 0).toList(), most);
        }

        @Override
        public List<Step<List<Integer>>> steps(List<Integer> from) {
            List<Step<List<Integer>>> steps = new ArrayList<>();
            for (int at = 0; at < from.size(); at++) {
                for (int to = 0; to < family.choices.get(at); to++) {
                    if (to != from.get(at)) {
                        List<Integer> other = new ArrayList<>(from);
                        other.set(at, to);
                        steps.add(new Choice(at + " to " + to, to < from.get(at), other));
                    }
                }
            }
            return steps;
        }

        private record Choice(String words, boolean less, List<Integer> to)
                implements Step<List<Integer>> {
            @Override
            public StepEffect turn() {
                return less ? StepEffect.LESS : StepEffect.MORE;
            }

            @Override
            public Optional<List<Integer>> taken() {
                return Optional.of(List.copyOf(to));
            }
        }

        @Override
        public Object form(List<Integer> member) {
            return forms.computeIfAbsent(member, m -> CandidateForm.of(family.rig(m).candidate()));
        }

        @Override
        public FirstLook look(List<Integer> member, List<String> evidence) {
            return new FirstLook() {
                @Override
                public List<Double> atBest() {
                    return knowing
                            ? best.computeIfAbsent(member, m -> atBestOf(family.rig(m).candidate()))
                            : List.of(0.0, 0.0, 0.0);
                }

                @Override
                public TrialResult trial() {
                    return trials.computeIfAbsent(member, m -> tried(family.rig(m)));
                }
            };
        }

        private static List<Double> atBestOf(Candidate candidate) {
            return List.of(0.0, parts(candidate), (double) Structure.independentLoops(candidate));
        }

        private static TrialResult tried(Rig rig) {
            StructureFindings found = rig.findings();
            if (!found.engineSupplied()) {
                return new TrialResult.Missed("supplied", found.unsupplied().size(), List.of());
            }
            return new TrialResult.Met(
                    List.of(
                            (double) found.singlePoints().size(),
                            parts(rig.candidate()),
                            (double) found.independentLoops()),
                    List.of());
        }

        private static double parts(Candidate candidate) {
            return candidate.parts().stream().filter(p -> p.role() != Part.Role.LOAD).count();
        }
    }

    private static Set<String> values(Found<List<Integer>> found) {
        Set<String> values = new TreeSet<>();
        found.front().forEach(m -> values.add(m.trial().worth().orElseThrow().toString()));
        return values;
    }

    private static Set<String> frontOf(List<List<Double>> all) {
        Set<String> front = new TreeSet<>();
        for (List<Double> one : new HashSet<>(all)) {
            boolean outdone =
                    all.stream()
                            .anyMatch(
                                    other ->
                                            !other.equals(one)
                                                    && IntStream.range(0, 3)
                                                            .allMatch(
                                                                    i ->
                                                                            other.get(i)
                                                                                    <= one.get(i)));
            if (!outdone) {
                front.add(one.toString());
            }
        }
        return front;
    }

    @Thorough
    @ParameterizedTest
    @MethodSource("families")
    void theSearchFindsWhatLookingAtEveryMemberFinds(Family family) throws Exception {
        List<List<Integer>> members = family.members();
        assertTrue(members.size() >= 2000, members.size() + " members");
        Map<List<Integer>, TrialResult> trials = new ConcurrentHashMap<>();
        Map<List<Integer>, CanonicalGraph> forms = new ConcurrentHashMap<>();
        Judged all = new Judged(family, true, trials, forms);
        List<List<Double>> met =
                members.parallelStream()
                        .flatMap(m -> all.look(m, List.of()).trial().worth().stream())
                        .toList();
        SearchLimits limits = new SearchLimits(99, 1_000_000);

        List<Found<List<Integer>>> found = new ArrayList<>();
        for (int threads : new int[] {1, 2, 8}) {
            ForkJoinPool pool = new ForkJoinPool(threads);
            try {
                found.add(pool.submit(() -> FrontSearch.in(all, limits, SearchWatch.NOBODY)).get());
            } finally {
                pool.shutdown();
            }
        }
        Found<List<Integer>> one = found.get(0);
        assertTrue(one.whole());
        assertEquals(frontOf(met), values(one));
        assertTrue(one.front().size() > 1, "a front of one is no test");
        assertEquals(one, found.get(1));
        assertEquals(one, found.get(2));
        assertTrue(one.tally().tried() < members.size(), "nothing was saved");

        Found<List<Integer>> unscreened =
                FrontSearch.in(
                        new Judged(family, false, trials, forms), limits, SearchWatch.NOBODY);
        assertEquals(values(one), values(unscreened));
    }
}
