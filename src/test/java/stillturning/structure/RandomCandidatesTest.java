package stillturning.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Effort;
import stillturning.model.Candidate;
import stillturning.model.EngineLogic;
import stillturning.parts.Part;
import stillturning.parts.switching.Switch.Throw;
import stillturning.structure.StructureFindings.LoadWays;
import stillturning.structure.StructureFindings.SupplyWays;

/** Findings on random small candidates against a slow and plain look at the same. */
class RandomCandidatesTest {

    static IntStream seeds() {
        return IntStream.range(0, 500);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void singlePointsAreThePartsWithoutWhichAPlainLookFindsTooLittleFed(int seed) {
        Rig rig = randomRig(new SplittableRandom(seed));
        Candidate candidate = rig.candidate();
        EngineLogic logic = rig.aircraft().engine().logic();
        PlainLook plain = new PlainLook(candidate);
        StructureFindings found = rig.findings();

        boolean supplied = plain.canRun(Set.of(), logic::runsOn);
        assertEquals(supplied, found.engineSupplied(), "seed " + seed);
        Set<String> expected = new LinkedHashSet<>();
        for (Part part : candidate.parts()) {
            if (supplied && !plain.canRun(Set.of(part.id()), logic::runsOn)) {
                expected.add(part.id());
            }
        }
        assertEquals(List.copyOf(expected), List.copyOf(Rig.singlePoints(found)), "seed " + seed);
        found.singlePoints().forEach(p -> assertFalse(p.reason().isBlank(), "seed " + seed));
    }

    /** Trying every set takes long. */
    static IntStream few() {
        return IntStream.range(0, Effort.cases(120, 500));
    }

    @ParameterizedTest
    @MethodSource("few")
    void smallestCutsAreThoseOfTryingEverySetOfParts(int seed) {
        Rig rig = randomRig(new SplittableRandom(seed));
        PlainLook plain = new PlainLook(rig.candidate());
        List<String> parts =
                rig.candidate().parts().stream()
                        .map(Part::id)
                        .filter(id -> !id.startsWith("load"))
                        .toList();
        for (LoadWays load : rig.findings().loads()) {
            String at = "seed " + seed + ", " + load;
            assertCut(load.back(), parts, gone -> plain.returns(gone, load.load()), at);
            assertCut(
                    load.feed(),
                    parts,
                    gone ->
                            load.inputs().stream()
                                    .anyMatch(i -> plain.comes(gone, load.load(), i.input())),
                    at);
            load.inputs()
                    .forEach(
                            input ->
                                    assertCut(
                                            input.feed(),
                                            parts,
                                            gone -> plain.comes(gone, load.load(), input.input()),
                                            at));
        }
    }

    /** Otherwise the comparisons above would compare nothing. */
    @Test
    void theRandomCandidatesAreOfEveryKind() {
        int supplied = 0;
        int withSingles = 0;
        int withTwoWays = 0;
        int dependent = 0;
        for (int seed : seeds().toArray()) {
            StructureFindings found = randomRig(new SplittableRandom(seed)).findings();
            supplied += found.engineSupplied() ? 1 : 0;
            withSingles += found.singlePoints().size() > 1 ? 1 : 0;
            withTwoWays += found.loads().stream().anyMatch(l -> l.feed().cut().size() > 1) ? 1 : 0;
            dependent +=
                    found.singlePoints().stream().anyMatch(p -> p.reason().contains(" on "))
                            ? 1
                            : 0;
        }
        String counts = supplied + " " + withSingles + " " + withTwoWays + " " + dependent;
        assertTrue(supplied > 100 && withSingles > 50 && withTwoWays > 50 && dependent > 5, counts);
    }

    private static void assertCut(
            SupplyWays ways, List<String> parts, Predicate<Set<String>> joined, String at) {
        boolean joinedAtAll = joined.test(Set.of());
        boolean cuttable = !joined.test(Set.copyOf(parts));
        assertTrue(ways.proven(), at);
        assertEquals(joinedAtAll, !ways.independent().isEmpty(), at);
        if (!joinedAtAll || !cuttable) {
            assertEquals(List.of(), ways.cut(), at);
            return;
        }
        assertFalse(joined.test(Set.copyOf(ways.cut())), at);
        assertFalse(
                smallerCutExists(ways.cut().size() - 1, 0, parts, new ArrayList<>(), joined), at);
        assertTrue(ways.independent().size() <= ways.cut().size(), at);
        List<String> shared =
                parts.stream().filter(part -> !joined.test(Set.of(part))).sorted().toList();
        assertEquals(shared, ways.shared().stream().sorted().toList(), at);
        Set<String> used = new LinkedHashSet<>();
        for (List<String> way : ways.independent()) {
            assertTrue(way.stream().allMatch(used::add), at);
            List<String> others = parts.stream().filter(p -> !way.contains(p)).toList();
            assertTrue(joined.test(Set.copyOf(others)), at);
        }
    }

    private static boolean smallerCutExists(
            int size,
            int start,
            List<String> parts,
            List<String> chosen,
            Predicate<Set<String>> joined) {
        if (!joined.test(Set.copyOf(chosen))) {
            return true;
        }
        for (int i = start; size > 0 && i < parts.size(); i++) {
            chosen.add(parts.get(i));
            boolean exists = smallerCutExists(size - 1, i + 1, parts, chosen, joined);
            chosen.remove(chosen.size() - 1);
            if (exists) {
                return true;
            }
        }
        return false;
    }

    /** Parts between a few joints on the supply side and a few on the return side. */
    static Rig randomRig(SplittableRandom random) {
        Joints joints = new Joints(random);
        Rig rig = new Rig().battery("battery-a").ground("ground-1");
        joints.at("battery-a.plus", "p").at("battery-a.minus", "m").at("ground-1.stud", "m");
        if (random.nextBoolean()) {
            rig.alternator("alternator", random.nextBoolean());
            joints.at("alternator.output", "p").at("alternator.field", "p");
            joints.at("alternator.case", "m");
        }
        if (random.nextInt(3) > 0) {
            rig.battery("battery-b").ground("ground-2");
            joints.at("battery-b.plus", "p").at("battery-b.minus", "m").at("ground-2.stud", "m");
        }
        int more = 3 + random.nextInt(5);
        for (int i = 0; i < more; i++) {
            addPart(rig, joints, i, random);
        }
        int loads = 1 + random.nextInt(3);
        List<String> ids = new ArrayList<>();
        for (int i = 0; i < loads; i++) {
            String id = "load-" + i;
            ids.add(id);
            if (random.nextBoolean()) {
                rig.load(id, "plus");
                joints.at(id + ".plus", "p");
            } else {
                rig.load(id, "a", "b");
                joints.at(id + ".a", "p").at(id + ".b", "p");
            }
            joints.at(id + ".minus", "m");
        }
        List<EngineLogic> terms = ids.stream().<EngineLogic>map(EngineLogic.One::new).toList();
        rig.needs(new EngineLogic.AtLeast(1 + random.nextInt(loads), terms));
        joints.byJoint().values().forEach(all -> rig.join(all.toArray(String[]::new)));
        return rig;
    }

    private static void addPart(Rig rig, Joints joints, int i, SplittableRandom random) {
        String id = "part-" + i;
        switch (random.nextInt(10)) {
            case 0 -> {
                rig.wire(id);
                joints.all(id, "a:p b:p");
            }
            case 1 -> {
                rig.diode(id);
                joints.all(id, "in:p out:p");
            }
            case 2, 3 -> {
                rig.connector(id, 3);
                joints.all(id, "1a:p 1b:p 2a:p 2b:p 3a:m 3b:m");
            }
            case 4 -> {
                rig.contactor(id);
                joints.all(id, "in:p out:p coil-plus:p coil-minus:m");
            }
            case 5 -> {
                rig.bus(id, "one", "two");
                joints.all(id, "one:p two:p bar:p");
            }
            case 6 -> {
                rig.controller(id, random.nextBoolean(), random.nextBoolean());
                joints.all(id, "supply:p ground:m out-1:p out-2:p");
            }
            case 7 -> {
                rig.converter(id);
                joints.all(id, "in:p out:p minus:m");
            }
            case 8 -> {
                rig.lever(id, Throw.DOUBLE, 2, random.nextBoolean() ? "up" : "off");
                rig.procedure(id, Map.of(id, random.nextInt(3) == 0 ? "up" : "down"));
                joints.all(id, "common-1:p up-1:p down-1:p common-2:p up-2:p down-2:p");
            }
            default -> {
                rig.lever(id, Throw.SINGLE, 2, random.nextInt(3) == 0 ? "off" : "on");
                joints.all(id, "in-1:p out-1:p in-2:p out-2:p");
            }
        }
    }

    /** Random joints, some of the supply side ("p") and some of the return side ("m"). */
    private static final class Joints {
        private final SplittableRandom random;
        private final Map<String, List<String>> byJoint = new TreeMap<>();

        Joints(SplittableRandom random) {
            this.random = random;
        }

        Map<String, List<String>> byJoint() {
            return byJoint;
        }

        Joints at(String terminal, String side) {
            String joint = side + random.nextInt(side.equals("p") ? 6 : 2);
            byJoint.computeIfAbsent(joint, j -> new ArrayList<>()).add(terminal);
            return this;
        }

        void all(String part, String terminals) {
            for (String terminal : terminals.split(" ", -1)) {
                String[] halves = terminal.split(":", -1);
                at(part + "." + halves[0], halves[1]);
            }
        }
    }
}
