package stillturning.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.model.EngineLogic;
import stillturning.model.EngineLogic.One;
import stillturning.parts.Part;

/** What the engine cannot do without, where several loads can do it. */
class FunctionWaysTest {

    private static EngineLogic one(String load) {
        return new One(load);
    }

    /** Two batteries with a computer and coils each, and one pump of two on either. */
    private static Rig twoLanes() {
        EngineLogic a = EngineLogic.allOf(List.of(one("computer-a"), one("coils-a")));
        EngineLogic b = EngineLogic.allOf(List.of(one("computer-b"), one("coils-b")));
        EngineLogic pumps = EngineLogic.anyOf(List.of(one("pump-1"), one("pump-2")));
        EngineLogic lanes = EngineLogic.anyOf(List.of(a, b));
        return new Rig()
                .battery("battery-a")
                .battery("battery-b")
                .ground("ground")
                .wire("feed-a")
                .wire("feed-b")
                .connector("j1", 2)
                .load("computer-a", "plus")
                .load("coils-a", "plus")
                .load("computer-b", "plus")
                .load("coils-b", "plus")
                .load("pump-1", "plus")
                .load("pump-2", "plus")
                .needs(EngineLogic.allOf(List.of(lanes, pumps)))
                .join("battery-a.plus", "feed-a.a", "j1.1a")
                .join("battery-b.plus", "feed-b.a", "j1.2a")
                .join("feed-a.b", "computer-a.plus", "coils-a.plus")
                .join("feed-b.b", "computer-b.plus", "coils-b.plus")
                .join("j1.1b", "pump-1.plus")
                .join("j1.2b", "pump-2.plus")
                .join(
                        "battery-a.minus",
                        "battery-b.minus",
                        "ground.stud",
                        "computer-a.minus",
                        "coils-a.minus",
                        "computer-b.minus",
                        "coils-b.minus",
                        "pump-1.minus",
                        "pump-2.minus");
    }

    private static List<FunctionWays> functions(Rig rig) {
        return Structure.functions(rig.aircraft(), rig.candidate());
    }

    @Test
    void aFunctionHasTheWaysOfAnyOfItsLoads() {
        FunctionWays pumps = functions(twoLanes()).get(1);
        assertEquals("pump-1 or pump-2", pumps.function());
        assertEquals(List.of("j1"), pumps.feed().orElseThrow().shared());
        assertEquals(List.of("j1"), pumps.singles());
        assertEquals(List.of(List.of("j1"), List.of("battery-a", "battery-b")), pumps.cuts());
        assertEquals(
                "pump-1 or pump-2 is not supplied without j1; every way from a source to"
                        + " pump-1 or pump-2 passes j1; from pump-1 or pump-2 to a source there is"
                        + " no part between",
                pumps.words());
    }

    @Test
    void lanesAreLostByTwosOfWhichEachTakesOne() {
        FunctionWays lanes = functions(twoLanes()).get(0);
        assertTrue(lanes.feed().isEmpty() && lanes.back().isEmpty() && lanes.supplied());
        assertEquals(List.of(), lanes.singles());
        assertEquals(
                List.of(
                        List.of("battery-a", "battery-b"),
                        List.of("battery-a", "feed-b"),
                        List.of("battery-b", "feed-a"),
                        List.of("feed-a", "feed-b")),
                lanes.cuts());
        assertTrue(
                lanes.words()
                        .endsWith(
                                "outlasts the loss of any one part, but not of battery-a and"
                                        + " battery-b, or of battery-a and feed-b, or of battery-b"
                                        + " and feed-a, or of 1 more"),
                lanes.words());
    }

    @Test
    void whatIsJoinedByAndIsAFunctionEach() {
        Rig rig = new Rig().battery("battery").ground("ground").load("coils", "plus");
        rig.load("pump", "plus").allOf("coils", "pump");
        rig.join("battery.plus", "coils.plus").join("battery.minus", "coils.minus", "ground.stud");
        List<FunctionWays> found = functions(rig);
        assertEquals(List.of("coils", "pump"), found.stream().map(f -> f.function()).toList());
        assertEquals("pump is not supplied at all", found.get(1).words().split(";", -1)[0]);
    }

    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void cutsAreThoseOfTryingEveryPair(int seed) {
        Rig rig = RandomCandidatesTest.randomRig(new SplittableRandom(seed));
        PlainLook plain = new PlainLook(rig.candidate());
        for (FunctionWays found : functions(rig)) {
            EngineLogic logic = function(rig, found);
            assertEquals(found.supplied(), plain.canRun(Set.of(), logic::runsOn), "seed " + seed);
            if (found.supplied()) {
                assertEquals(cuts(rig, plain, logic), new TreeSet<>(names(found)), "seed " + seed);
            }
        }
    }

    private static EngineLogic function(Rig rig, FunctionWays found) {
        return rig.aircraft().engine().logic().needed().stream()
                .filter(term -> term.inWords().equals(found.function()))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> names(FunctionWays found) {
        return found.cuts().stream().map(cut -> String.join("+", cut)).toList();
    }

    private static Set<String> cuts(Rig rig, PlainLook plain, EngineLogic logic) {
        List<String> parts = new ArrayList<>();
        rig.candidate().parts().stream()
                .map(Part::id)
                .filter(id -> !logic.loads().contains(id))
                .forEach(parts::add);
        Set<String> cuts = new TreeSet<>();
        parts.stream().filter(p -> !plain.canRun(Set.of(p), logic::runsOn)).forEach(cuts::add);
        parts.removeAll(cuts);
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                if (!plain.canRun(Set.of(parts.get(i), parts.get(j)), logic::runsOn)) {
                    cuts.add(parts.get(i) + "+" + parts.get(j));
                }
            }
        }
        return cuts;
    }
}
