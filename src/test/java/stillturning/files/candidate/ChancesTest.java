package stillturning.files.candidate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Shelf;
import stillturning.files.ReadStudy;
import stillturning.files.SampleStudy;
import stillturning.files.StudyReader;
import stillturning.files.entry.RateText;
import stillturning.files.entry.ShippedRates;
import stillturning.model.Candidate;
import stillturning.model.Chances;
import stillturning.model.Chances.Beta;
import stillturning.model.Chances.Mode;
import stillturning.model.Chances.Odds;
import stillturning.model.Chances.Per;
import stillturning.model.Chances.Rate;
import stillturning.model.Chances.Shared;
import stillturning.model.Chances.Sharing;
import stillturning.model.LoadNeed;
import stillturning.model.Zone.Hazard;
import stillturning.model.failure.Failure;
import stillturning.parts.FailureMode;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.PartKinds;
import stillturning.yaml.notation.Origin;

class ChancesTest {

    private static final double PER_HOUR = 1 / 3600.0;

    @TempDir Path folder;

    private ReadStudy read(String study, String one) throws IOException {
        return SampleStudy.read(folder, SampleStudy.STUDY + study, SampleStudy.ONE + one);
    }

    private Odds odds(String study, String one) throws IOException {
        ReadStudy read = read(study, one);
        assertEquals("", SampleStudy.told(read));
        return read.chances().odds("one");
    }

    private static Rate rate(Odds odds, String part, String mode) {
        return Optional.ofNullable(odds.rates().get(new Mode(part, mode))).orElseThrow();
    }

    private static void assertPerHour(double median, double within, Rate rate) {
        assertEquals(median * PER_HOUR, rate.median(), median * PER_HOUR * 1e-12);
        assertEquals(within, rate.errorFactor());
        assertEquals(Per.SECOND, rate.per());
    }

    private static Set<Mode> modesOf(List<Part> parts) {
        Set<Mode> modes = new LinkedHashSet<>();
        for (Part part : parts) {
            for (FailureMode mode : part.failureModes()) {
                modes.add(new Mode(part.id(), mode.name()));
            }
        }
        return modes;
    }

    @Test
    void everyFailureModeOfEveryKindHasAShippedRate() {
        RateBook shipped = new RateBook(ShippedRates.shipped().failures(), Map.of());
        assertEquals(modesOf(Shelf.everyKind()), shipped.of(Shelf.everyKind()).keySet());
        Set<String> known =
                PartKinds.all().stream().map(PartKind::word).collect(Collectors.toSet());
        known.add("indicator"); // the lamp of a cue: no part, and fails nevertheless
        assertEquals(known, ShippedRates.shipped().failures().keySet());
    }

    static Stream<Path> studies() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("architectures"))) {
            return folders.filter(Files::isDirectory).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("studies")
    void everyFailureModeOfTheShippedStudiesHasARate(Path study) {
        ReadStudy read = StudyReader.read(study);
        assertTrue(read.study().isPresent(), SampleStudy.told(read));
        for (Candidate candidate : read.study().get().candidates()) {
            Odds odds = read.chances().odds(candidate.id());
            Set<Mode> modes = modesOf(candidate.parts());
            candidate
                    .cockpit()
                    .cues()
                    .forEach(cue -> modes.add(new Mode(cue.name(), Failure.DEAD_LAMP)));
            assertEquals(modes, odds.rates().keySet(), candidate.id());
        }
    }

    @Test
    void everyGuessIsWideAndEveryRecollectionSaysThatItIsOne() {
        ShippedRates shipped = ShippedRates.shipped();
        Stream<RateText> all =
                Stream.concat(
                        shipped.failures().values().stream().flatMap(m -> m.values().stream()),
                        Stream.of(shipped.events(), shipped.sharing())
                                .flatMap(m -> m.values().stream()));
        all.forEach(
                rate -> {
                    boolean guess = rate.source().origin() == Origin.GUESSED;
                    assertTrue(!guess || rate.within().orElseThrow() >= 10, rate.toString());
                    assertTrue(
                            guess || rate.source().note().endsWith(", recalled, unverified"),
                            rate.toString());
                });
    }

    /** WASH-1400 appendix III (1975), medians and error factors: recalled, unverified. */
    @Test
    void wiresFailAsOftenAsInTheReactorSafetyStudy() throws IOException {
        Odds odds = odds("", "");
        assertPerHour(3e-6, 3, rate(odds, "pump-wire", "open"));
        assertPerHour(3e-7, 10, rate(odds, "pump-wire", "chafed to ground"));
        assertPerHour(1e-6, 3, rate(odds, "pump-breaker", "opens for no reason"));
        assertEquals(
                "WASH-1400 wire open, recalled, unverified",
                rate(odds, "pump-wire", "open").source());
    }

    /**
     * MIL-HDBK-338B mode shares (recalled, unverified): breaker .51 opens, .49 does not open;
     * toggle .65 open, .19 sticking, .16 short of MIL-HDBK-217F's 1.478e-6 /h; computed here.
     */
    @Test
    void modesOfOneKindStandAsTheirShares() throws IOException {
        Odds odds = odds("", "");
        double breaker = rate(odds, "pump-breaker", "does not open when it should").median();
        assertEquals(1e-6 * 0.49 / 0.51, breaker / PER_HOUR, 2e-9);
        assertEquals(1.478e-6 * 0.65, rate(odds, "master", "stuck open").median() / PER_HOUR, 2e-9);
        assertEquals(
                1.478e-6 * 0.19, rate(odds, "master", "stuck closed").median() / PER_HOUR, 2e-9);
        assertEquals(
                1.478e-6 * 0.16, rate(odds, "master", "short to ground").median() / PER_HOUR, 4e-9);
    }

    @Test
    void aModeWithANumberOrANameHasTheRateOfAllOfThem() throws IOException {
        Odds odds = odds("chances: {rates: {connector: {pin-open: 5e-6 /h}}}\n", "");
        assertPerHour(5e-6, 10, rate(odds, "j1", "pin 2 open"));
        assertPerHour(5e-6, 10, rate(odds, "j1", "pin 3 open"));
        assertPerHour(8.8e-8, 10, rate(odds, "computer", "input diode a shorted"));
        assertPerHour(1e-7, 10, rate(odds, "main-bus", "feed-1 open"));
        assertPerHour(2.8e-7, 10, rate(odds, "selector", "stuck closed down"));
    }

    @Test
    void thePartGoesBeforeTheLoadBeforeTheKindBeforeTheTable() throws IOException {
        Odds odds =
                odds(
                        """
                        chances:
                          rates: {load: {stops-working: 1e-4 /h within 4 (guess)}}
                          fails: {pump: {stops-working: 2e-4 /h (data sheet)}, radio: {stops-working: 3e-4 per hour}}
                        """,
                        """
                        fails:
                          radio: {stops-working: "4e-4 /h within 2 (measured, two in ten years)"}
                          j1: {pin-high-resistance: 1e-5 /h, pin-2-high-resistance: 2e-5 /h}
                        """);
        assertPerHour(1e-4, 4, rate(odds, "computer", "stops working"));
        assertPerHour(2e-4, 3, rate(odds, "pump", "stops working"));
        assertPerHour(4e-4, 2, rate(odds, "radio", "stops working"));
        assertEquals("measured, two in ten years", rate(odds, "radio", "stops working").source());
        assertPerHour(1e-6, 10, rate(odds, "radio", "input short"));
        assertPerHour(1e-5, 10, rate(odds, "j1", "pin 1 high resistance"));
        assertPerHour(2e-5, 10, rate(odds, "j1", "pin 2 high resistance"));
    }

    @Test
    void whatAStudyLeavesOpenIsFilledIn() throws IOException {
        Chances usual = read("", "").chances();
        assertEquals(3600, usual.exposure().flightSeconds());
        assertEquals(50 * 3600, usual.exposure().inspectionSeconds());
        assertEquals(Set.of(Hazard.values()), usual.events().keySet());
        assertEquals(Set.of(Sharing.HOLE, Sharing.BUNDLE, Sharing.MOUNT), usual.sharing().keySet());
        assertEquals(new Rate(1e-3, 10, Per.FLIGHT, "guess"), usual.leftSwitch());
        assertEquals(new Rate(1e-2, 10, Per.NEED, "guess"), usual.idlePilot());
        Chances said =
                read(
                                """
                                chances:
                                  flight: 2 h
                                  inspected-every: 100 h (measured)
                                  events: {chafe: 2e-5 /flight}
                                  sharing: {hole: 1e-8 /h}
                                  left-switch: 1e-2 per flight within 5
                                """,
                                "")
                        .chances();
        assertEquals(7200, said.exposure().flightSeconds());
        assertEquals(360_000, said.exposure().inspectionSeconds());
        assertEquals(
                Optional.of(new Rate(2e-5, 10, Per.FLIGHT, "stated")),
                Optional.ofNullable(said.events().get(Hazard.CHAFE)));
        assertEquals(usual.events().get(Hazard.HEAT), said.events().get(Hazard.HEAT));
        assertEquals(new Rate(1e-2, 5, Per.FLIGHT, "stated"), said.leftSwitch());
    }

    @Test
    void anInspectionComesAtTheEarliestAfterAFlight() throws IOException {
        assertEquals(
                60 * 3600,
                read("chances: {flight: 60 h}\n", "").chances().exposure().inspectionSeconds());
    }

    @Test
    void aRunStandsForItsWiresAndAPartForItself() throws IOException {
        Odds odds =
                odds(
                        "shares: [{firmware: lanes, parts: [computer, radio]}]\n",
                        """
                        shares:
                          - {hole: firewall-left, parts: [alternator-lead, field]}
                          - {bundle: loom, parts: [computer.a, pump-wire, coil-ground]}
                          - {mount: shelf, parts: [battery, contactor]}
                          - {alike: toggles, parts: [master, selector], beta: 5 % (guess)}
                        """);
        String generic = "generic average of NUREG/CR-4780, recalled, unverified";
        assertEquals(
                List.of(
                        new Shared(
                                Sharing.FIRMWARE,
                                "lanes",
                                List.of("computer", "radio"),
                                Optional.of(new Beta(0.1, generic))),
                        new Shared(
                                Sharing.HOLE,
                                "firewall-left",
                                List.of("alternator-lead-wire", "field-wire"),
                                Optional.empty()),
                        new Shared(
                                Sharing.BUNDLE,
                                "loom",
                                List.of(
                                        "computer-a-wire",
                                        "computer-return",
                                        "pump-wire",
                                        "coil-ground-wire"),
                                Optional.empty()),
                        new Shared(
                                Sharing.MOUNT,
                                "shelf",
                                List.of("battery", "contactor"),
                                Optional.empty()),
                        new Shared(
                                Sharing.ALIKE,
                                "toggles",
                                List.of("master", "selector"),
                                Optional.of(new Beta(0.05, "guess")))),
                odds.shared());
    }

    @Test
    void whatLoadsShareCountsWhereACandidateHasThem() throws IOException {
        ReadStudy read =
                SampleStudy.read(
                        folder,
                        SampleStudy.STUDY + "shares: [{mount: rack, parts: [radio, computer]}]\n",
                        SampleStudy.ONE
                                        .replace(
                                                "  radio: from main-bus, breaker 5 A, return engine-ground\n",
                                                "")
                                        .replace(", shown-by: radio", "")
                                        .replace(", sheds: [radio]", "")
                                + "leaves-out: [radio]\n");
        assertEquals("", SampleStudy.told(read));
        assertEquals(List.of(), read.chances().odds("one").shared());
    }

    /** Tail to panel to engine: the zones of the sample, whose wires go the shortest way. */
    @Test
    void aWirePassesTheZonesBetweenItsEnds() throws IOException {
        Map<String, List<String>> routes = odds("", "").routes();
        assertEquals(List.of("tail", "panel", "engine"), routes.get("battery-minus-wire"));
        assertEquals(List.of("engine", "panel"), routes.get("alternator-lead-wire"));
        assertEquals(List.of("panel", "tail"), routes.get("pump-wire"));
        assertEquals(List.of("panel"), routes.get("radio-wire"));
    }

    @Test
    void ofTwoWaysAWireTakesTheShorterOne() throws IOException {
        ReadStudy read =
                SampleStudy.read(
                        folder,
                        SampleStudy.STUDY.replace(
                                "loads:\n",
                                """
                                  - {from: tail, to: attic, length: 0.5 m}
                                  - {from: attic, to: engine, length: 0.5 m}
                                loads:
                                """),
                        SampleStudy.ONE);
        assertEquals(
                List.of("tail", "attic", "engine"),
                read.chances().odds("one").routes().get("battery-minus-wire"));
    }

    @Test
    void noStoryRestsOnAnyOfIt() throws IOException {
        ReadStudy plain = read("", "");
        ReadStudy said =
                read(
                        "chances: {flight: 2 h (guess), beta: 5 % (guess)}\n",
                        "fails: {j1: {comes-apart: 1e-5 /h (guess)}}\n");
        assertEquals(plain.assumptions(), said.assumptions());
        assertEquals(plain.ranges(), said.ranges());
        assertEquals(plain.study(), said.study());
    }

    @Test
    void aDeadRadioIsNoticedIfTheStudySaysSo() throws IOException {
        ReadStudy read =
                SampleStudy.read(
                        folder,
                        SampleStudy.STUDY.replace("shed: 1}", "shed: 1, noticed: yes}"),
                        SampleStudy.ONE);
        List<String> noticed =
                read.study().orElseThrow().aircraft().loads().stream()
                        .filter(load -> load.use().noticed())
                        .map(LoadNeed::id)
                        .toList();
        assertEquals(List.of("radio"), noticed);
    }

    @Test
    void checksAreMadeInTheFirstPhaseWithoutAStarterUnlessTheStudySays() throws IOException {
        String flown =
                SampleStudy.STUDY
                        .replace(
                                "  - {name: cruise",
                                """
                                  - {name: start, lasts: 10 s, alternator: 400 rpm}
                                  - {name: warm-up, lasts: 5 min, alternator: 2000 rpm}
                                  - {name: run-up, lasts: 1 min, alternator: 4000 rpm}
                                  - {name: cruise\
                                """)
                        .replace(
                                "  radio:",
                                "  starter: {zone: tail, draws: 100 A, phases: [start]}\n  radio:")
                        .replace("  windmills: yes", "  windmills: yes\n  starter: starter");
        String fed =
                SampleStudy.ONE.replace(
                        "feeds:\n", "feeds:\n  starter: from contactor, wire AWG 2\n");
        assertEquals("warm-up", runUp(flown, fed));
        assertEquals("run-up", runUp(flown + "run-up-in: run-up\n", fed));
    }

    private String runUp(String study, String one) throws IOException {
        ReadStudy read = SampleStudy.read(folder, study, one);
        assertEquals("", SampleStudy.told(read));
        return read.study().orElseThrow().goals().runUp().name();
    }
}
