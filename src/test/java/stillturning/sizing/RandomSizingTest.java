package stillturning.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Installation;
import stillturning.model.Installation.FittedParts;
import stillturning.parts.Cable;
import stillturning.parts.Part;
import stillturning.parts.Wire;
import stillturning.parts.element.Demand;
import stillturning.sizing.result.LoadAnalysis.PhaseBalance;
import stillturning.sizing.result.LoadAnalysis.Sum;
import stillturning.sizing.result.ProtectorSize.WorstShort;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.sizing.result.SizingReport;
import stillturning.sizing.result.WireSize;
import stillturning.story.UntoldStory;

/** Laws that hold in whatever somebody wires up. */
class RandomSizingTest {

    /** One or two batteries, an alternator, a bus, and loads behind breakers. */
    private static Bench random(SplittableRandom random) {
        Bench bench = new Bench().bus("bus", "feed-1", "feed-2", "feed-3");
        int batteries = random.nextInt(1, 3);
        for (int i = 1; i <= batteries; i++) {
            String name = "battery-" + i;
            bench.part(Shelf.lead(name, random.nextDouble(8, 30), 0.01, random.nextDouble(0.6, 1)))
                    .join(name, "minus", "ground", "stud")
                    .part(wire(name + "-lead", random))
                    .join(name, "plus", name + "-lead", "a")
                    .join(name + "-lead", "b", "bus", "feed-" + i);
        }
        bench.part(Shelf.alternator("alternator", 14.2, random.nextDouble(10, 60), false))
                .join("alternator", "case", "ground", "stud")
                .part(wire("alternator-lead", random))
                .join("alternator", "output", "alternator-lead", "a")
                .join("alternator-lead", "b", "bus", "feed-3")
                .join("alternator", "field", "bus", "bar");
        List<String> loads = new ArrayList<>(List.of("engine-needs"));
        int others = random.nextInt(0, 5);
        for (int i = 0; i < others; i++) {
            loads.add("load-" + i);
        }
        loads.forEach(load -> feed(bench, load, random));
        return bench;
    }

    private static void feed(Bench bench, String load, SplittableRandom random) {
        List<Demand.DemandKind> kinds = Shelf.DRAWING;
        bench.breaker(load + "-breaker", List.of(5.0, 7.5, 10.0, 20.0).get(random.nextInt(4)))
                .part(wire(load + "-wire", random))
                .load(
                        load,
                        kinds.get(random.nextInt(kinds.size())),
                        random.nextDouble(0.2, 6),
                        Bench.HARDY)
                .join("bus", "bar", load + "-breaker", "in")
                .join(load + "-breaker", "out", load + "-wire", "a")
                .join(load + "-wire", "b", load, "plus");
    }

    private static Wire wire(String id, SplittableRandom random) {
        Cable cable = Cable.SIZES.get(random.nextInt(1, 12));
        double metres = random.nextDouble(0.2, 4);
        return new Wire(Bench.tag(id), cable, metres, cable.ohmsPerMetre() * metres);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void powerAddsUpAndNothingIsBelowItsNormal(long seed) throws UntoldStory {
        Bench bench = random(new SplittableRandom(seed));
        SizingReport report = Sizing.of(bench.study(), bench.candidate(), Installation.USUAL);
        String shown = "seed " + seed;
        for (PhaseBalance balance : report.loads().phases()) {
            for (Sum sum : List.of(balance.average(), balance.full())) {
                assertTrue(sum.watts().lost() >= -1e-6, shown);
                // what leaves the sources runs through loads and the alternator's field
                assertTrue(sum.sourceAmps() >= sum.loadAmps() - 1e-4, shown);
                assertTrue(sum.generatedAmps() <= balance.alternatorAmps() + 1e-6, shown);
            }
        }
        for (WireSize size : report.wires().wires()) {
            assertTrue(size.worst().amps() >= size.normal().amps(), shown);
        }
        assertEquals(bench.candidate().wires().count(), report.wires().wires().size(), shown);
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28})
    void everyFindingCanBeReckonedAgain(long seed) throws UntoldStory {
        Bench bench = random(new SplittableRandom(seed));
        SizingReport report = Sizing.of(bench.study(), bench.candidate(), Installation.USUAL);
        String shown = "seed " + seed;
        for (WireSize size : report.wires().wires()) {
            boolean told =
                    report.findings().stream()
                            .anyMatch(
                                    f ->
                                            f.rule() == Rule.AMPACITY
                                                    && f.part().equals(size.wire().id()));
            // 25 °C, 150 °C, 3000 m, 8 wires at 60 %, but AWG 8 and thicker alone
            double area = size.wire().cable().circularMils();
            double free = 47 * Math.pow(area / 3831, 0.65) * Math.sqrt(125.0 / 150);
            double may = free * 0.95571 * (area >= 16_983 ? 1 : 0.60002);
            assertEquals(may, size.can().amps(), 0.001 * may, shown);
            assertEquals(size.worst().amps() > may * 1.001, told, shown);
        }
        List<Rule> rules = report.findings().stream().map(SizeFinding::rule).toList();
        assertEquals(rules.stream().sorted().toList(), rules, "gravest first, " + shown);
    }

    /** Where only broken limits are asked for, no short is left out that cannot be interrupted. */
    @ParameterizedTest
    @ValueSource(longs = {41, 42, 43, 44, 45, 46, 47, 48})
    void theQuickLookFindsEveryShortThatCannotBeInterrupted(long seed) throws UntoldStory {
        SplittableRandom random = new SplittableRandom(seed);
        Bench bench = random(random);
        Installation rated = rated(bench, random);
        SizingReport whole = Sizing.of(bench.study(), bench.candidate(), rated);
        SizingReport quick =
                Sizing.of(bench.study(), bench.candidate(), rated, SurveyDepth.NOTHING_WRONG);
        assertEquals(uninterrupted(whole), uninterrupted(quick), "seed " + seed);
        for (int i = 0; i < whole.devices().protectors().size(); i++) {
            WorstShort exact = whole.devices().protectors().get(i).fault();
            WorstShort asked = quick.devices().protectors().get(i).fault();
            assertTrue(asked.amps().isEmpty() || asked.equals(exact), "seed " + seed);
        }
    }

    /** Breakers of all qualities: of some anything is known, some interrupt next to nothing. */
    private static Installation rated(Bench bench, SplittableRandom random) {
        Map<String, Double> interrupts =
                bench.candidate().parts().stream()
                        .map(Part::id)
                        .filter(id -> id.endsWith("-breaker") && random.nextInt(5) > 0)
                        .collect(
                                Collectors.toMap(
                                        id -> id, id -> 20 * Math.pow(100, random.nextDouble())));
        FittedParts fitted = new FittedParts(Map.of(), Map.of(), Map.of(), interrupts);
        return new Installation(
                Installation.USUAL.laying(),
                Map.of(),
                Map.of(),
                Map.of(bench.candidate().id(), fitted));
    }

    private static List<SizeFinding> uninterrupted(SizingReport report) {
        return report.findings().stream().filter(f -> f.rule() == Rule.INTERRUPT).toList();
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33})
    void theSameAircraftGivesTheSameReport(long seed) throws UntoldStory {
        Bench one = random(new SplittableRandom(seed));
        Bench other = random(new SplittableRandom(seed));
        assertEquals(
                Sizing.of(one.study(), one.candidate(), Installation.USUAL),
                Sizing.of(other.study(), other.candidate(), Installation.USUAL),
                "seed " + seed);
    }
}
