package stillturning.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.files.candidate.Expanded;
import stillturning.files.value.Assumption;
import stillturning.files.value.Variation;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Cue;
import stillturning.model.LoadNeed;
import stillturning.model.Study;
import stillturning.model.Terminal;
import stillturning.model.goal.CriterionName;
import stillturning.parts.Part;
import stillturning.parts.Wire;
import stillturning.parts.element.Demand;
import stillturning.parts.element.curve.TimeCurrentCurve;
import stillturning.parts.joining.Bus;
import stillturning.parts.joining.Diode;
import stillturning.parts.protection.Breaker;
import stillturning.parts.protection.Fuse;
import stillturning.parts.protection.ProtectorCurves;
import stillturning.parts.source.Alternator;
import stillturning.parts.source.Battery;
import stillturning.yaml.notation.Origin;

class StudyReaderTest {

    @TempDir Path folder;

    private ReadStudy read() throws IOException {
        return SampleStudy.read(folder, SampleStudy.STUDY, SampleStudy.ONE);
    }

    private <P extends Part> P part(Class<P> kind, String id) throws IOException {
        return assertInstanceOf(kind, SampleStudy.one(read()).part(id).orElseThrow());
    }

    @Test
    void theStudyHoldsWhatIsWritten() throws IOException {
        Study study = read().study().orElseThrow();
        assertEquals("Bench", study.heading().title());
        assertEquals("EUR", study.heading().currency());
        assertEquals(14, study.aircraft().nominalVolts());
        LoadNeed radio = study.aircraft().load("radio").orElseThrow();
        assertEquals(new Demand(Demand.DemandKind.CONSTANT_POWER, 1.5, 14), radio.demand());
        assertEquals(OptionalInt.of(1), radio.shedOrder());
        assertEquals(List.of("a", "b"), study.aircraft().load("computer").orElseThrow().inputs());
        assertEquals("computer and pump", study.aircraft().engine().logic().inWords());
        assertEquals(0.5, study.aircraft().engine().toleratedSeconds());
        assertEquals(100, study.goals().failurePhase().alternatorRevsPerSecond());
        assertEquals(1800, study.goals().enoughSeconds());
        assertEquals(
                List.of(new Study.Weight(CriterionName.ENDURANCE, 2)), study.goals().weights());
    }

    @Test
    void aStudyWithoutWeightsCountsEveryCriterion() throws IOException {
        String study = SampleStudy.STUDY.replace("weights: {endurance: 2}\n", "");
        Study read = SampleStudy.read(folder, study, SampleStudy.ONE).study().orElseThrow();
        assertEquals(
                List.of(CriterionName.values()),
                read.goals().weights().stream().map(Study.Weight::criterion).toList());
    }

    @Test
    void sketchLinesBecomePartsWithNamesOfTheirOwn() throws IOException {
        List<String> ids = SampleStudy.one(read()).parts().stream().map(Part::id).toList();
        assertEquals(
                List.of(
                        "computer",
                        "pump",
                        "radio",
                        "battery",
                        "alternator",
                        "contactor",
                        "master",
                        "selector",
                        "j1",
                        "main-bus",
                        "panel-ground",
                        "engine-ground",
                        "battery-minus-wire",
                        "strap-wire",
                        "battery-lead-wire",
                        "main-lead-fuse",
                        "main-lead-wire",
                        "coil-ground-wire",
                        "alternator-lead-wire",
                        "field-breaker",
                        "field-wire",
                        "computer-a-breaker",
                        "computer-a-wire",
                        "computer-b-fuse",
                        "computer-b-wire",
                        "computer-return",
                        "pump-breaker",
                        "pump-wire",
                        "pump-return",
                        "radio-breaker",
                        "radio-wire",
                        "radio-return"),
                ids);
    }

    @Test
    void runsThatEndAtABusGetStudsOfTheirOwn() throws IOException {
        assertEquals(List.of("feed-1", "feed-2"), part(Bus.class, "main-bus").studs());
    }

    @Test
    void theCircuitJoinsWhatTheLinesSay() throws IOException {
        Circuit circuit = SampleStudy.one(read()).circuit();
        sameNet(circuit, "battery.plus", "battery-lead-wire.a", "computer-b-fuse.in");
        sameNet(circuit, "battery-lead-wire.b", "contactor.in", "contactor.coil-plus");
        sameNet(circuit, "contactor.coil-minus", "master.in");
        sameNet(circuit, "master.out", "coil-ground-wire.a");
        sameNet(circuit, "contactor.out", "main-lead-fuse.in");
        sameNet(circuit, "main-lead-wire.b", "main-bus.feed-1");
        sameNet(circuit, "alternator-lead-wire.b", "main-bus.feed-2");
        sameNet(
                circuit,
                "main-bus.bar",
                "computer-a-breaker.in",
                "pump-breaker.in",
                "field-breaker.in");
        sameNet(circuit, "field-wire.b", "alternator.field");
        sameNet(circuit, "computer-b-fuse.out", "selector.up");
        sameNet(circuit, "selector.common", "computer-b-wire.a");
        sameNet(circuit, "computer-b-wire.b", "computer.b");
        sameNet(circuit, "pump-breaker.out", "j1.2a");
        sameNet(circuit, "j1.2b", "pump-wire.a");
        sameNet(circuit, "computer-return.a", "computer.minus");
        sameNet(circuit, "computer-return.b", "panel-ground.stud", "coil-ground-wire.b");
        sameNet(circuit, "panel-ground.lead", "strap-wire.a");
        sameNet(
                circuit,
                "engine-ground.stud",
                "radio-return.b",
                "pump-return.b",
                "alternator.case");
    }

    private static void sameNet(Circuit circuit, String... terminals) {
        List<Optional<Integer>> nets =
                Arrays.stream(terminals).map(t -> circuit.find(part(t), terminal(t))).toList();
        assertTrue(nets.get(0).isPresent());
        assertEquals(1, nets.stream().distinct().count(), List.of(terminals) + " are " + nets);
    }

    private static String part(String written) {
        return written.substring(0, written.indexOf('.'));
    }

    private static String terminal(String written) {
        return written.substring(written.indexOf('.') + 1);
    }

    @Test
    void lengthsComeFromZonesByTheShortestWay() throws IOException {
        assertEquals(4, part(Wire.class, "battery-minus-wire").metres(), 1e-12);
        assertEquals(0.4, part(Wire.class, "computer-a-wire").metres(), 1e-12);
        assertEquals(0.5, part(Wire.class, "battery-lead-wire").metres(), 1e-12);
    }

    @Test
    void gaugesComeFromProtectorCurrentAndDrop() throws IOException {
        // AC 43.13-1B table 11-3 (read): 5 A breaker and 5 A fuse protect No. 22; but an ordinary
        // breaker as slow as its class allows lets a short spoil No. 22 before it opens
        assertEquals("20", part(Wire.class, "computer-a-wire").cable().awg());
        assertEquals("22", part(Wire.class, "computer-b-wire").cable().awg());
        // 60 A fuse: No. 6 (70 A); No. 8 has 50 A. But No. 6 of 3 m, behind 0.5 m of No. 4, drops
        // 60 x (3 x 1.444 + 0.5 x 0.919) mohm = 0.287 V, over 2 % of 14 V (and the 1 % for
        // rounding)
        assertEquals("4", part(Wire.class, "main-lead-wire").cable().awg());
        // table 11-9 (read): a 40 A alternator needs No. 8 (57 A); but when its lead is chafed, the
        // 60 A fuse of the battery's lead has to open, and that suits No. 6 and not No. 8 (50 A)
        assertEquals("6", part(Wire.class, "alternator-lead-wire").cable().awg());
        // 5 A at 14 V are 6.4 A at 11 V; 7 m of No. 16, 30 °C, bundle of 8: 6.4 x 0.110 x 1.2 = 0.9
        // V,
        // No. 12: 6.4 x 0.0464 x 1.1 = 0.33 V, No. 14 0.51 V. It does not make up for the feed.
        assertEquals("12", part(Wire.class, "pump-return").cable().awg());
    }

    @Test
    void theCatalogueFillsInWhatIsNotWritten() throws IOException {
        Battery battery = part(Battery.class, "battery");
        assertEquals(18 * 3600 * 0.8, battery.capacity().coulombs(), 1e-6);
        assertEquals(6, battery.cells());
        Alternator alternator = part(Alternator.class, "alternator");
        assertEquals(32, alternator.output().ampsAt(50), 1e-9);
        assertEquals(0.03, part(Breaker.class, "radio-breaker").ohms(), 1e-12);
        // class sheet, read in a second source: 75 mV at the rating
        assertEquals(0.075 / 60, part(Fuse.class, "main-lead-fuse").ohms(), 1e-12);
    }

    @Test
    void aDiodeDropsItsForwardVoltageAtItsCurrent() throws IOException {
        String one =
                SampleStudy.ONE
                        .replace(
                                "  j1:",
                                "  d: {is: diode, zone: panel, drop: 475 mV, at: 3 A,"
                                        + " resistance: 10 mohm}\n  j1:")
                        .replace("via selector.up", "via selector.up, via d");
        Candidate candidate = SampleStudy.one(SampleStudy.read(folder, SampleStudy.STUDY, one));
        Diode diode = assertInstanceOf(Diode.class, candidate.part("d").orElseThrow());
        // 1N5820 class, data sheets of two makers alike (read): 0.475 V at 3.0 A
        double volts =
                diode.emissionVolts() * Math.log1p(3 / diode.saturationAmps()) + 3 * diode.ohms();
        assertEquals(0.475, volts, 1e-9);
    }

    @Test
    void theCockpitHoldsLeversCuesAndProcedures() throws IOException {
        var cockpit = SampleStudy.one(read()).cockpit();
        assertEquals(Map.of("master", "on", "selector", "up"), cockpit.flight());
        assertEquals(Map.of("master", "off"), cockpit.masterOff());
        Cue lamp = cockpit.cues().get(0);
        assertEquals(new Cue.LowVolts(new Terminal("main-bus", "bar"), 13, 2), lamp.sign());
        assertEquals(Map.of("pump-breaker", "pulled"), cockpit.procedures().get(0).moves());
    }

    @Test
    void everyValueKnowsWhereItComesFrom() throws IOException {
        ReadStudy read = read();
        assertEquals(
                List.of(
                        new Assumption(
                                "study.yaml", "loads.computer.draws", "2 A", Origin.MEASURED, "")),
                about(read, "study.yaml", "loads.computer.draws"));
        assertEquals(
                List.of(
                        new Assumption(
                                "one.yaml",
                                "parts.battery.resistance",
                                "12 mohm",
                                Origin.CATALOGUE,
                                "battery agm: guess")),
                about(read, "one.yaml", "parts.battery.resistance"));
        assertEquals(
                List.of(
                        new Assumption(
                                "one.yaml",
                                "parts.pump-wire.length",
                                "3 m",
                                Origin.AUTOMATIC,
                                "panel to tail")),
                about(read, "one.yaml", "parts.pump-wire.length"));
        assertTrue(about(read, "study.yaml", "loads.radio.draws").get(0).isGuess());
        assertTrue(about(read, "one.yaml", "parts.battery.resistance").get(0).isGuess());
        assertEquals(
                read.assumptions().size(),
                read.assumptions().stream().map(a -> a.file() + a.path()).distinct().count());
    }

    @Test
    void aClassThatNobodyStatesIsAGuessOfTheStudyUntilItIsStated() throws IOException {
        ReadStudy read = read();
        Assumption breaker =
                new Assumption(
                        "study.yaml",
                        "classes.breaker",
                        "ordinary",
                        Origin.GUESSED,
                        "nothing says the class of each breaker");
        assertEquals(List.of(breaker), about(read, "study.yaml", "classes.breaker"));
        assertEquals(1, about(read, "study.yaml", "classes.fuse").size(), "computer-b-fuse");
        assertEquals(ProtectorCurves.ORDINARY_BREAKER, curveOf(read, "radio-breaker"));
        ReadStudy stated =
                SampleStudy.read(
                        folder,
                        SampleStudy.STUDY + "classes: {breaker: fast, fuse: blade}\n",
                        SampleStudy.ONE);
        assertEquals(List.of(), about(stated, "study.yaml", "classes.breaker"));
        assertEquals(List.of(), about(stated, "study.yaml", "classes.fuse"));
        assertEquals(ProtectorCurves.FAST_BREAKER, curveOf(stated, "radio-breaker"));
        assertEquals(ProtectorCurves.HIGH_CURRENT_FUSE, curveOf(stated, "main-lead-fuse"));
    }

    @Test
    void aPartThatNamesItsClassNeedsNoUsualOne() throws IOException {
        String each =
                SampleStudy.ONE
                        .replace("breaker 5 A", "breaker 5 A class fast")
                        .replace("breaker 10 A", "breaker 10 A class ordinary");
        ReadStudy read = SampleStudy.read(folder, SampleStudy.STUDY, each);
        assertEquals(List.of(), about(read, "study.yaml", "classes.breaker"));
        assertEquals(ProtectorCurves.FAST_BREAKER, curveOf(read, "radio-breaker"));
        assertEquals(ProtectorCurves.ORDINARY_BREAKER, curveOf(read, "pump-breaker"));
    }

    private static TimeCurrentCurve curveOf(ReadStudy read, String part) {
        return SampleStudy.one(read).part(part).orElseThrow().elements().stream()
                .flatMap(element -> element.overload().stream())
                .findFirst()
                .orElseThrow()
                .curve();
    }

    private static List<Assumption> about(ReadStudy read, String file, String path) {
        return read.assumptions().stream()
                .filter(a -> a.file().equals(file) && a.path().equals(path))
                .toList();
    }

    @Test
    void aVariationChangesOneValueAndWhatFollowsFromIt() throws IOException {
        ReadStudy plain = read();
        ReadStudy varied =
                StudyReader.read(
                        folder, new Variation("one.yaml", "parts.battery.resistance", 1.5));
        Battery battery =
                assertInstanceOf(
                        Battery.class, SampleStudy.one(varied).part("battery").orElseThrow());
        // one and a half times the catalogue's 12 mohm, of a battery with 80 % of its health
        assertEquals(0.018 / 0.8, battery.ohms(), 1e-12);
        assertEquals(plain.assumptions(), varied.assumptions());
        StudyReader opened = StudyReader.open(folder);
        ReadStudy farther = opened.study(new Variation("study.yaml", "distances[1].length", 2));
        Wire wire =
                assertInstanceOf(
                        Wire.class, SampleStudy.one(farther).part("pump-wire").orElseThrow());
        assertEquals(6, wire.metres(), 1e-12);
        assertEquals(plain.study(), opened.study(Variation.NONE).study());
    }

    @Test
    void sketchLinesCanBeShownExpanded() throws IOException {
        List<Expanded> shown = read().expanded().getOrDefault("one", List.of());
        Expanded pump =
                shown.stream().filter(e -> e.path().equals("feeds.pump")).findFirst().orElseThrow();
        assertEquals(
                List.of("pump-breaker", "pump-wire", "pump-return"),
                pump.parts().stream().map(Expanded.ExpandedPart::id).toList());
        assertEquals(
                List.of("gauge AWG 16", "length 3 m (automatic, panel to tail)"),
                pump.parts().get(1).values());
        assertEquals(
                List.of("gauge AWG 12 (automatic)", "length 4 m (automatic, tail to engine)"),
                pump.parts().get(2).values());
    }

    @Test
    void theFingerprintChangesWithAnyFile() throws IOException {
        String before = read().fingerprint();
        assertEquals(64, before.length());
        assertEquals(before, StudyReader.read(folder).fingerprint());
        Files.writeString(folder.resolve("one.yaml"), SampleStudy.ONE + "# a comment\n");
        assertNotEquals(before, StudyReader.read(folder).fingerprint());
    }
}
