package stillturning.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Installation;
import stillturning.model.wiring.Ampacity;
import stillturning.parts.Cable;
import stillturning.parts.Load;
import stillturning.parts.Wire;
import stillturning.parts.element.Demand;
import stillturning.sizing.LowBatteries.Greedy;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.sizing.result.WireSize;
import stillturning.story.UntoldStory;

/** Wires that burn before what guards them opens, by their sizes alone. */
class WireAndGuardTest {

    private static Wire wire(String id, String awg) {
        Cable cable = Cable.awg(awg).orElseThrow();
        return new Wire(Bench.tag(id), cable, 2, cable.ohmsPerMetre() * 2);
    }

    /** A lamp behind a fuse and a wire, with a return of its own. */
    private static Bench lamp(double fuseAmps, String awg, String returnAwg) {
        return new Bench()
                .battery("battery", 20, 0.01, 1)
                .part(Shelf.fuse("fuse", fuseAmps))
                .part(wire("feed", awg))
                .part(wire("return", returnAwg))
                .loadWithoutReturn(
                        new Load(
                                Bench.tag("lamp"),
                                new Demand(Demand.DemandKind.CONSTANT_CURRENT, 2, 12),
                                Bench.HARDY,
                                List.of("plus")))
                .join("battery", "plus", "fuse", "in")
                .join("fuse", "out", "feed", "a")
                .join("feed", "b", "lamp", "plus")
                .join("lamp", "minus", "return", "a")
                .join("return", "b", "ground", "stud");
    }

    /** AWG 22 carries some 21 A in free air where it may become hottest. */
    @ParameterizedTest
    @CsvSource({"15, 22, 22, 0, 0", "40, 22, 8, 1, 0", "40, 8, 22, 0, 1", "40, 22, 22, 1, 1"})
    void aWireThatBurnsFirstIsToldOnItsWayThereAndBack(
            double fuseAmps, String awg, String returnAwg, int feeds, int returns) {
        List<SizeFinding> found = Unguarded.of(lamp(fuseAmps, awg, returnAwg).candidate());
        assertEquals(feeds + returns, found.size());
        assertEquals(feeds, found.stream().filter(f -> f.part().equals("feed")).count());
        assertEquals(returns, found.stream().filter(f -> f.part().equals("return")).count());
        for (SizeFinding one : found) {
            assertEquals(Rule.PROTECTS_NOTHING, one.rule());
            assertEquals("fuse", one.other());
            assertEquals(fuseAmps, one.found());
            assertEquals(Ampacity.inBestPlace(Cable.awg("22").orElseThrow()), one.allowed());
        }
    }

    /** Of two fuses in a line the smaller one opens first. */
    @Test
    void theSmallestFuseInALineGuardsIt() {
        Bench two =
                new Bench()
                        .battery("battery", 20, 0.01, 1)
                        .part(Shelf.fuse("large", 40))
                        .part(Shelf.fuse("small", 10))
                        .part(wire("feed", "22"))
                        .load("lamp", Demand.DemandKind.CONSTANT_CURRENT, 2, Bench.HARDY)
                        .join("battery", "plus", "large", "in")
                        .join("large", "out", "feed", "a")
                        .join("feed", "b", "small", "in")
                        .join("small", "out", "lamp", "plus");
        assertEquals(List.of(), Unguarded.of(two.candidate()));
    }

    /** The phase in which most would flow is told. */
    @Test
    void theGreediestPhaseOfABatteryIsTold() {
        Greedy climb = new Greedy("battery", 30, 20, "climb");
        Greedy cruise = new Greedy("battery", 35, 20, "cruise");
        assertEquals(cruise, Greedy.orMore(climb, cruise));
        assertEquals(cruise, Greedy.orMore(cruise, climb));
    }

    /** A wire that carries nothing has room without end. */
    @Test
    void whatCarriesNothingHasAllTheRoom() throws UntoldStory {
        Bench bench =
                lamp(10, "18", "18").part(wire("stub", "18")).join("stub", "a", "fuse", "out");
        List<WireSize> wires =
                Sizing.of(bench.study(), bench.candidate(), Installation.USUAL).wires().wires();
        for (WireSize size : wires) {
            assertTrue(size.slack() > 1, size.wire().id());
            assertEquals(size.wire().id().equals("stub"), Double.isInfinite(size.slack()));
            assertEquals(size.ends().from().part(), size.ends().fromPart());
        }
    }
}
