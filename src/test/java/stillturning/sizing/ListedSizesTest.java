package stillturning.sizing;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Bench;
import stillturning.model.Cue;
import stillturning.model.Installation;
import stillturning.model.Installation.Nature;
import stillturning.model.LoadNeed;
import stillturning.model.Terminal;
import stillturning.parts.Cable;
import stillturning.parts.Load;
import stillturning.parts.Tag;
import stillturning.parts.Wire;
import stillturning.parts.element.Demand;
import stillturning.parts.protection.Fuse;
import stillturning.parts.protection.ProtectorCurves;
import stillturning.sizing.result.BillRow;
import stillturning.sizing.result.ContactSize;
import stillturning.sizing.result.LoadAnalysis;
import stillturning.sizing.result.ProtectorSize;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.sizing.result.SizingReport;
import stillturning.sizing.result.WeightSheet;
import stillturning.sizing.result.WireSchedule.MainCircuit;
import stillturning.story.UntoldStory;

/** What is listed of contacts, main wires, purchases and weights, reckoned by hand. */
class ListedSizesTest {

    private static final double LAMP_AMPS = 2;

    private static Wire wire(String id, String zone, String awg, double metres) {
        Cable cable = Cable.awg(awg).orElseThrow();
        return new Wire(
                new Tag(id, id, zone, new Tag.Burden(0.2 * metres, 10 * metres)),
                cable,
                metres,
                cable.ohmsPerMetre() * metres);
    }

    /** A battery's lead to a bus; from there a fuse, a switch and a wire to a lamp. */
    private static Bench lamp(String leadAwg) {
        return new Bench()
                .battery("battery", 20, 0.01, 1)
                .bus("bus", "feed")
                .part(wire("lead", "nose", leadAwg, 2))
                .join("battery", "plus", "lead", "a")
                .join("lead", "b", "bus", "feed")
                .part(
                        new Fuse(
                                new Tag("lamp-fuse", "lamp fuse", "bench", new Tag.Burden(0.01, 3)),
                                5,
                                0.02,
                                ProtectorCurves.BLADE_FUSE))
                .closedSwitch("lamp-switch", "on")
                .part(wire("lamp-wire", "bench", "18", 3))
                .load("engine-needs", Demand.DemandKind.CONSTANT_CURRENT, LAMP_AMPS, Bench.HARDY)
                .join("bus", "bar", "lamp-fuse", "in")
                .join("lamp-fuse", "out", "lamp-switch", "in")
                .join("lamp-switch", "out", "lamp-wire", "a")
                .join("lamp-wire", "b", "engine-needs", "plus");
    }

    private static SizingReport size(Bench bench) throws UntoldStory {
        return Sizing.of(bench.study(), bench.candidate(), Installation.USUAL);
    }

    private static ContactSize contacts(SizingReport report, String name) {
        return report.devices().contacts().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    // AC 43.13-1B table 11-4, read: at 12 V a lamp takes a switch of 5 times its current, a motor
    // and a coil of twice, what only warms of once
    @ParameterizedTest
    @CsvSource({"LAMP, 5", "MOTOR, 2", "INDUCTIVE, 2", "RESISTIVE, 1"})
    void aSwitchNeedsWhatTheTableAsksForTheLoadBehindIt(Nature nature, double factor)
            throws UntoldStory {
        Bench bench = lamp("8");
        Installation told =
                new Installation(
                        Installation.USUAL.laying(),
                        Map.of(),
                        Map.of("engine-needs", nature),
                        Map.of());
        ContactSize size =
                contacts(Sizing.of(bench.study(), bench.candidate(), told), "lamp-switch");
        assertTrue(size.byHand());
        assertEquals(nature, size.nature());
        assertEquals(LAMP_AMPS, size.carried().amps(), 1e-6);
        assertEquals(factor * LAMP_AMPS, size.neededAmps(), 1e-5);
    }

    /** Its makers rate a contactor for what it switches: nothing is added to its current. */
    @Test
    void aContactorNeedsTheCurrentItCarries() throws UntoldStory {
        Bench bench =
                lamp("8")
                        .contactor("relay")
                        .load("radio", Demand.DemandKind.CONSTANT_CURRENT, 1, Bench.HARDY)
                        .join("bus", "bar", "relay", "in")
                        .join("relay", "coil-plus", "bus", "bar")
                        .join("relay", "coil-minus", "ground", "stud")
                        .join("relay", "out", "radio", "plus");
        ContactSize size = contacts(size(bench), "relay");
        assertFalse(size.byHand());
        assertEquals(1, size.carried().amps(), 1e-6);
        assertEquals(1, size.neededAmps(), 1e-6);
    }

    @Test
    void theMainWireDropsItsCurrentTimesItsOhms() throws UntoldStory {
        List<MainCircuit> mains = size(lamp("8")).wires().mains();
        assertEquals(1, mains.size());
        MainCircuit main = mains.get(0);
        assertEquals("battery", main.source());
        assertEquals("bus", main.bus());
        assertEquals(List.of("lead"), main.wires());
        double ohms = 2 * Cable.awg("8").orElseThrow().ohmsPerMetre();
        assertEquals(main.amps() * ohms, main.drop().volts(), 1e-9);
        // FAA-H-8083-31 chapter 9, read in a second source: 2 % of the voltage, here of 12 V
        assertEquals(0.02 * 12, main.drop().limitVolts(), 1e-9);
    }

    /** Nothing flows from a battery that its switch has cut off: no main wire of it is held. */
    @Test
    void aBatteryThatIsSwitchedOffHasNoMainWire() throws UntoldStory {
        Bench bench =
                lamp("8")
                        .battery("spare", 20, 0.01, 1)
                        .closedSwitch("spare-switch", "off")
                        .part(wire("spare-lead", "nose", "8", 1))
                        .join("spare", "plus", "spare-lead", "a")
                        .join("spare-lead", "b", "spare-switch", "in")
                        .join("spare-switch", "out", "bus", "bar");
        assertEquals(
                List.of("battery"),
                size(bench).wires().mains().stream().map(MainCircuit::source).toList());
    }

    @Test
    void theThickerMainWireThatIsNamedIsTheFirstThatDropsLittleEnough() throws UntoldStory {
        SizeFinding finding = mainPower("16").orElseThrow();
        String awg = ((SizeFinding.Mend.Gauge) finding.mend().orElseThrow()).awg();
        assertEquals(Optional.empty(), mainPower(awg));
        int index = Cable.SIZES.indexOf(Cable.awg(awg).orElseThrow());
        assertTrue(mainPower(Cable.SIZES.get(index - 1).awg()).isPresent());
    }

    private static Optional<SizeFinding> mainPower(String awg) throws UntoldStory {
        return size(lamp(awg)).findings().stream()
                .filter(f -> f.rule() == Rule.MAIN_POWER)
                .findFirst();
    }

    private static BillRow row(SizingReport report, String item, String detail) {
        return report.purchase().bill().stream()
                .filter(r -> r.item().equals(item) && r.detail().startsWith(detail))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void wireIsBoughtByItsSizeWithATenthForWhatIsCutOff() throws UntoldStory {
        BillRow row = row(size(lamp("8")), "wire", "AWG 18");
        assertEquals(3, row.quantity(), 1e-9);
        assertEquals(0.3, row.spares(), 1e-9);
        assertEquals(0.6, row.kilograms(), 1e-9);
        assertEquals(30 * 1.1, row.price(), 1e-9);
        BillRow ends = row(size(lamp("8")), "terminal", "AWG 18");
        assertEquals(2, ends.quantity(), 1e-9);
        assertEquals(1, ends.spares(), 1e-9);
    }

    @Test
    void sparesAreBoughtButNotCarriedInTheWeight() throws UntoldStory {
        BillRow row = row(size(lamp("8")), "fuse", "");
        assertEquals(1, row.quantity());
        // one of each rating or half of them: 14 CFR 23.1357, read in a second source
        assertEquals(1, row.spares());
        assertEquals(0.01, row.kilograms(), 1e-12);
        assertEquals(3 * (1 + row.spares()), row.price(), 1e-9);
    }

    // copper 8.9 kg/dm3; AWG 18 of 19 strands AWG 30 has 0.963 mm2 (from memory)
    @Test
    void whatACableWeighsIsCopperInsulationAndEnds() throws UntoldStory {
        WeightSheet sheet = size(lamp("8")).purchase().weight();
        WeightSheet.CableWeight cable =
                sheet.cable().stream().filter(c -> c.awg().equals("18")).findFirst().orElseThrow();
        assertEquals(3, cable.metres(), 1e-9);
        assertEquals(3 * 0.963e-6 * 8900, cable.conductorKilograms(), 0.001);
        assertTrue(cable.insulationKilograms() > 0);
        assertTrue(cable.insulationKilograms() < cable.conductorKilograms());
        assertEquals(0.6, cable.kilograms(), 1e-9);
    }

    /** What lies in one zone hangs there; a wire between two hangs in the middle. */
    @Test
    void theMomentIsWeightTimesArmOfWhatHasOne() throws UntoldStory {
        Bench bench = lamp("8");
        Installation arms =
                new Installation(
                        Installation.USUAL.laying(), Map.of("bench", 2.0), Map.of(), Map.of());
        WeightSheet sheet = Sizing.of(bench.study(), bench.candidate(), arms).purchase().weight();
        assertEquals(0.01 + 0.4 + 0.6, sheet.kilograms(), 1e-9);
        assertEquals(2 * sheet.kilograms(), sheet.momentKilogramMetres(), 1e-9);
        assertEquals(0, sheet.withoutArmKilograms(), 1e-9);
        WeightSheet unknown = size(bench).purchase().weight();
        assertEquals(0, unknown.momentKilogramMetres(), 1e-9);
        assertEquals(unknown.kilograms(), unknown.withoutArmKilograms(), 1e-9);
    }

    /** Power from the battery is what the lamp takes and what the way to it turns to heat. */
    @Test
    void powerThatIsLostIsTheSquareOfTheCurrentTimesTheOhmsOfTheWay() throws UntoldStory {
        LoadAnalysis.Sum sum = size(lamp("8")).loads().phases().get(0).average();
        assertEquals(LAMP_AMPS, sum.batteryAmps(), 1e-6);
        double way =
                2 * Cable.awg("8").orElseThrow().ohmsPerMetre()
                        + 3 * Cable.awg("18").orElseThrow().ohmsPerMetre()
                        + 0.02
                        + 0.005;
        double lost = LAMP_AMPS * LAMP_AMPS * way;
        // joints of bus and ground beside; wires are a little warmer than at rest
        assertEquals(lost, sum.watts().lost(), 0.1 * lost);
        assertEquals(sum.watts().sources(), sum.watts().loads() + sum.watts().lost(), 1e-9);
        assertEquals(0, sum.watts().equipment(), 1e-9);
    }

    /** A load is listed with what it takes while it runs, and its share of the phase. */
    @Test
    void aLoadIsListedWithItsCurrentItsVoltageAndItsTime() throws UntoldStory {
        LoadNeed.Use half = new LoadNeed.Use(Set.of("cruise"), 0.5);
        LoadAnalysis loads = size(lamp("8").use("engine-needs", half, 1)).loads();
        assertEquals(1, loads.loads().size());
        LoadAnalysis.LoadRow row = loads.loads().get(0);
        assertFalse(row.continuous());
        assertEquals(LAMP_AMPS, row.nominalAmps(), 1e-9);
        LoadAnalysis.Taken taken = requireNonNull(row.at().get("cruise"));
        // an hour of cruise
        assertEquals(1800, taken.seconds(), 1e-9);
        // a lead-acid battery of 12 V at rest
        assertEquals(12.5, taken.volts(), 0.5);
        assertFalse(loads.monitored(), "nothing here shows a discharge");
        Bench shown = lamp("8").cue("low", new Cue.LowVolts(new Terminal("bus", "bar"), 12.5, 1));
        assertTrue(size(shown).loads().monitored());
    }

    /** What its fast edge surely lets through is no finding. */
    @Test
    void anInrushThatTheFuseLetsThroughIsNotTold() throws UntoldStory {
        LoadNeed.Inrush inrush = new LoadNeed.Inrush(4.9, 0.1);
        LoadNeed.Use use = new LoadNeed.Use(Set.of("cruise"), 1, false, inrush);
        SizingReport report = size(lamp("8").use("engine-needs", use, 1));
        ProtectorSize fuse = report.devices().protectors().get(0);
        assertEquals(4.9, fuse.passes().inrush().amps(), 1e-12);
        assertFalse(fuse.passes().inrush().opens());
        assertTrue(report.findings().stream().noneMatch(f -> f.rule() == Rule.INRUSH));
    }

    /** Two feeds share 2 A; the one that is left carries all of it, and at 1.5 A soon opens. */
    @ParameterizedTest
    @ValueSource(doubles = {1.9, 1.5})
    void aFeedLeftAloneWithMoreThanItsRatingIsTold(double rating) throws UntoldStory {
        Bench bench = lamp("8");
        bench.load(
                new Load(
                        Bench.tag("computer"),
                        new Demand(Demand.DemandKind.CONSTANT_CURRENT, 2, 12),
                        Bench.HARDY,
                        List.of("a", "b")));
        for (String input : List.of("a", "b")) {
            bench.breaker("breaker-" + input, rating)
                    .part(wire("wire-" + input, "bench", "20", 1))
                    .join("bus", "bar", "breaker-" + input, "in")
                    .join("breaker-" + input, "out", "wire-" + input, "a")
                    .join("wire-" + input, "b", "computer", input);
        }
        List<SizeFinding> told =
                size(bench).findings().stream()
                        .filter(f -> f.rule() == Rule.DUTY_AFTER_FAILURE)
                        .toList();
        assertEquals(
                List.of("breaker-a", "breaker-b"), told.stream().map(SizeFinding::part).toList());
        assertEquals(2, told.get(0).found(), 0.01);
        assertEquals(rating, told.get(0).allowed(), 1e-12);
    }
}
