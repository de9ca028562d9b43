package stillturning.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.model.Candidate;
import stillturning.model.failure.CommonCauses;
import stillturning.parts.Part;
import stillturning.parts.Wire;

class ExpansionTest {

    @TempDir Path folder;

    private Candidate read(String... replacements) throws IOException {
        String one = SampleStudy.ONE;
        for (int i = 0; i < replacements.length; i += 2) {
            one = one.replace(replacements[i], replacements[i + 1]);
        }
        return SampleStudy.one(SampleStudy.read(folder, SampleStudy.STUDY, one));
    }

    /** Terminals by net, without the nets' numbers. */
    private static Set<Set<String>> nets(Candidate candidate) {
        return candidate.circuit().netOf().entrySet().stream()
                .collect(
                        Collectors.groupingBy(
                                Map.Entry::getValue,
                                Collectors.mapping(
                                        e -> e.getKey().toString(),
                                        Collectors.toCollection(TreeSet::new))))
                .values()
                .stream()
                .collect(Collectors.toCollection(HashSet::new));
    }

    private static List<Part> sorted(Candidate candidate) {
        return candidate.parts().stream().sorted(Comparator.comparing(Part::id)).toList();
    }

    private static void assertSame(Candidate sketched, Candidate detailed) {
        assertEquals(sorted(sketched), sorted(detailed));
        assertEquals(nets(sketched), nets(detailed));
    }

    @Test
    void aSketchAndItsDetailAreTheSameCircuit() throws IOException {
        Candidate detailed =
                read(
                        "  main-bus:",
                        """
                          radio-breaker: {is: breaker, rating: 5 A}
                          radio-wire: {is: wire, zone: panel, gauge: AWG 20, length: 0.4 m}
                          radio-return: {is: wire, zone: panel, gauge: AWG 20, length: 1 m}
                          main-bus:\
                        """,
                        "  radio: from main-bus, breaker 5 A, return engine-ground\n",
                        "",
                        "feeds:\n",
                        """
                          radio-in: from main-bus to radio, via radio-breaker, via radio-wire, direct
                          radio-out: from radio to engine-ground, via radio-return, direct
                        feeds:
                        """);
        assertSame(read(), detailed);
    }

    @Test
    void detailReplacesASketchPieceByPiece() throws IOException {
        Candidate detailed =
                read(
                        "radio: from main-bus, breaker 5 A",
                        "radio: from main-bus, breaker 5 A class ordinary, wire AWG 20 0.4 m");
        assertSame(read(), detailed);
    }

    @Test
    void aDoubleThrowSwitchIsEnteredFromEitherSide() throws IOException {
        Candidate turned =
                read(
                        "computer.b: from battery, fuse 5 A, via selector.up",
                        "computer.b: from selector.common, fuse 5 A",
                        "feeds:\n",
                        "  select: from battery to selector.up, wire AWG 10\nfeeds:\n");
        assertTrue(inOneNet(turned, "selector.common", "computer-b-fuse.in"));
        Candidate through =
                read(
                        "computer.b: from battery, fuse 5 A, via selector.up",
                        "computer.b: from selector.common, via selector.up, fuse 5 A",
                        "feeds:\n",
                        "  select: from battery to selector.common, wire AWG 10\nfeeds:\n");
        assertTrue(inOneNet(through, "selector.up", "computer-b-fuse.in"));
        assertTrue(inOneNet(through, "selector.common", "select-wire.b"));
    }

    private static boolean inOneNet(Candidate candidate, String one, String other) {
        return nets(candidate).stream().anyMatch(net -> net.containsAll(Set.of(one, other)));
    }

    @Test
    void aPartWithoutZoneSitsWhereTheRunComesFrom() throws IOException {
        Candidate candidate =
                read(
                        "selector: {is: switch, class: toggle-double, zone: panel}",
                        "selector: {is: switch, class: toggle-double}");
        assertEquals("tail", candidate.part("selector").orElseThrow().tag().zone());
        assertEquals("tail", candidate.part("computer-b-fuse").orElseThrow().tag().zone());
    }

    @Test
    void aSecondWireInARunGetsANumber() throws IOException {
        Candidate candidate =
                read("via j1 pin 2, wire AWG 16", "wire AWG 16 2 m, via j1 pin 2, wire AWG 18");
        assertTrue(inOneNet(candidate, "pump-wire.b", "j1.2a"));
        assertTrue(inOneNet(candidate, "pump-wire-2.b", "pump.plus"));
    }

    @Test
    void aControllersChannelProtectsItsFeed() throws IOException {
        Candidate candidate =
                read(
                        "  j1:",
                        "  unit: {is: controller, zone: panel, channels: [10 A, '5 A, default on']}\n  j1:",
                        "feeds:\n",
                        """
                          unit-supply: from main-bus to unit, fuse 30 A
                          unit-ground: from unit.ground to panel-ground, wire AWG 18
                        feeds:
                        """,
                        "radio: from main-bus, breaker 5 A",
                        "radio: from unit channel 1",
                        "{master: on,",
                        "{unit.1: on, master: on,");
        // AC 43.13-1B table 11-3 (read): a 10 A breaker protects No. 18
        Wire wire = (Wire) candidate.part("radio-wire").orElseThrow();
        assertEquals("18", wire.cable().awg());
        assertTrue(inOneNet(candidate, "unit.out-1", "radio-wire.a"));
    }

    /** The pump sits in the tail, 3 m from the main bus in the panel. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "breaker 10 A, wire AWG 16                       | panel",
                "breaker 10 A                                    | panel",
                "wire AWG 16, breaker 10 A                       | tail",
                "wire AWG 16 0.2 m, breaker 10 A, wire AWG 16 2.8 m | panel",
                "wire AWG 16 2.8 m, breaker 10 A, wire AWG 16 0.2 m | tail",
                "wire AWG 16 0.2 m, breaker 10 A, wire AWG 16    | panel",
                "wire AWG 16, breaker 10 A, wire AWG 16 0.2 m    | tail",
                "wire AWG 16, breaker 10 A, wire AWG 16          | tail",
                "via j1 pin 2, wire AWG 16, breaker 10 A         | tail",
                "wire AWG 16 1 m, via j1 pin 2, breaker 10 A, wire AWG 16 | panel",
            })
    void aProtectorSitsWhereItIsWritten(String items, String zone) throws IOException {
        Candidate candidate =
                read(
                        "pump: from main-bus, breaker 10 A, via j1 pin 2, wire AWG 16",
                        "pump: from main-bus, " + items);
        assertEquals(zone, candidate.part("pump-breaker").orElseThrow().tag().zone());
    }

    @Test
    void aWireReachesTheProtectorBehindIt() throws IOException {
        ReadStudy read =
                SampleStudy.read(
                        folder,
                        SampleStudy.STUDY.replace(
                                "tail: {across: 0.3 m}",
                                "tail: {across: 0.3 m, hazards: [impact]}"),
                        SampleStudy.ONE.replace(
                                "pump: from main-bus, breaker 10 A, via j1 pin 2, wire AWG 16",
                                "pump: from main-bus, wire AWG 16, breaker 10 A, wire AWG 16"));
        Candidate candidate = SampleStudy.one(read);
        Wire first = (Wire) candidate.part("pump-wire").orElseThrow();
        Wire second = (Wire) candidate.part("pump-wire-2").orElseThrow();
        assertEquals(3, first.metres(), 1e-9);
        assertEquals(0.3, second.metres(), 1e-9);
        assertEquals("tail", second.tag().zone());
        Set<String> torn =
                CommonCauses.of(read.study().orElseThrow().aircraft(), candidate, read.chances())
                        .stream()
                        .flatMap(c -> c.failure().hits().stream())
                        .map(Candidate.Hit::part)
                        .collect(Collectors.toSet());
        assertTrue(torn.containsAll(Set.of("pump-breaker", "pump-wire")), torn.toString());
    }
}
