package stillturning.cli.breaking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Bench;
import stillturning.cli.terminal.Refusal;
import stillturning.model.Candidate;
import stillturning.model.Cockpit;
import stillturning.model.failure.Failure;

class FailureNamesTest {

    private static final Candidate ONE =
            named(
                    "one",
                    new Bench()
                            .battery("battery", 20, 0.01, 1.2)
                            .alternator("alternator-1", 40)
                            .alternator("alternator-2", 20)
                            .bus("main-bus", "feed-1", "feed-2")
                            .wire("main-bus-feed-wire", 1, 0.01)
                            .breaker("main-bus-breaker", 10)
                            .candidate());

    private static final Candidate OTHER =
            named("other", new Bench().bus("main-bus", "feed").bus("engine-bus").candidate());

    private static Candidate named(String id, Candidate bench) {
        return new Candidate(
                id, "Title of " + id, "", bench.parts(), bench.joins(), bench.cockpit());
    }

    private static FailureNames of(Candidate... candidates) {
        return new FailureNames(List.of(candidates), Map.of());
    }

    private static List<String> names(List<Failure> failures) {
        return failures.stream().map(Failure::name).toList();
    }

    private static List<String> found(String said) {
        return names(of(ONE).find(said).getOrDefault("one", List.of()));
    }

    @ParameterizedTest
    @CsvSource({
        "main bus short, main-bus: short to ground",
        "short main bus, main-bus: short to ground",
        "main-bus: short to ground, main-bus: short to ground",
        "Main_Bus SHORTED to ground, main-bus: short to ground",
        "mian bus short, main-bus: short to ground",
        "main bus feed wire open, main-bus-feed-wire: open",
        "feed wire chafed, main-bus-feed-wire: chafed to ground",
        "chafed, main-bus-feed-wire: chafed to ground",
        "batt capacity, battery: capacity lost",
        "alternator 2 regulator op, alternator-2: regulator open",
        "charging lost, charging lost",
        "Charging-Lost, charging lost",
        "no charging, charging lost",
        "what if the alternator-2 regulator goes open?, alternator-2: regulator open",
        "What happens if the main bus is short to ground?, main-bus: short to ground"
    })
    void wordsOfAPartAndItsModeMeanThatFailure(String said, String failure) {
        assertEquals(List.of(failure), found(said));
    }

    @Test
    void aPartsNameMeansAllItsModes() {
        assertEquals(
                ONE.part("main-bus").orElseThrow().failureModes().stream()
                        .map(mode -> "main-bus: " + mode.name())
                        .toList(),
                found("main bus"));
    }

    @Test
    void aQuestionIsUnderstood() {
        assertEquals(found("main bus"), found("what happens if the main bus fails?"));
        assertEquals(found("main bus"), found("What would happen when our main-bus dies"));
    }

    @Test
    void aContactorThatDropsOutIsStuckOpen() {
        Candidate candidate =
                new Bench()
                        .battery("battery", 20, 0.01, 1.2)
                        .contactor("main-contactor")
                        .candidate();
        Map<String, List<Failure>> found = of(candidate).find("stuck open");
        assertEquals(
                List.of("main-contactor: drops out"),
                names(found.getOrDefault(candidate.id(), List.of())));
    }

    /** The battery itself, the wires and the fuse to the bus, the wire back: not what is beyond. */
    @Test
    void aBatteryIsOpenInEveryWayInWhichItIsLost() {
        Candidate candidate =
                new Bench()
                        .battery("spare-battery", 20, 0.01, 1.2)
                        .wire("lead", 1, 0.01)
                        .breaker("lead-breaker", 10)
                        .bus("bus", "feed")
                        .wire("beyond", 1, 0.01)
                        .join("spare-battery", "plus", "lead", "a")
                        .join("lead", "b", "lead-breaker", "in")
                        .join("lead-breaker", "out", "bus", "feed")
                        .wire("beyond-2", 1, 0.01)
                        .join("bus", "bar", "beyond", "a")
                        .join("bus", "bar", "beyond-2", "a")
                        .candidate();
        Refusal refusal =
                assertThrows(Refusal.class, () -> of(candidate).find("spare battery open"));
        assertEquals(
                List.of(
                        "spare-battery: disconnects itself",
                        "lead: open",
                        "lead-breaker: opens for no reason"),
                refusal.getMessage().lines().skip(1).map(String::strip).toList());
    }

    @Test
    void whatAPartDoesNotDoIsAnsweredWithWhatItDoes() {
        Refusal refusal = assertThrows(Refusal.class, () -> found("main bus explodes"));
        assertEquals(
                "nothing here fails by the name \"main bus explodes\"; what is named there fails in"
                        + " these ways:"
                        + String.join("", found("main bus").stream().map(f -> "\n  " + f).toList()),
                refusal.getMessage());
    }

    /** Words beyond those of any name are not looked at, so that the work has an end. */
    @Test
    void aVeryLongQuestionIsRefusedWithItsStart() {
        String said = "main bus " + "and so on and on ".repeat(100_000);
        Refusal refusal = assertThrows(Refusal.class, () -> found(said));
        assertTrue(refusal.getMessage().length() < 1000);
        assertTrue(
                refusal.getMessage().startsWith("nothing here fails by the name \"main bus and"));
    }

    @Test
    void severalModesOfOnePartAreNoAmbiguity() {
        assertEquals(
                List.of(
                        "alternator-1: no output",
                        "alternator-1: part output",
                        "alternator-1: output short"),
                found("alternator 1 output"));
    }

    @Test
    void partsThatFitEquallyWellAreListed() {
        Refusal refusal = assertThrows(Refusal.class, () -> found("alternator"));
        assertEquals(
                "\"alternator\" may mean any of these; say more:\n  alternator-1\n  alternator-2",
                refusal.getMessage());
    }

    @Test
    void aLongListOfChoicesIsCutShort() {
        Bench bench = new Bench();
        for (int i = 1; i <= 30; i++) {
            bench.wire("lead-" + i, 1, 0.01);
        }
        FailureNames names = of(bench.candidate());
        Refusal refusal = assertThrows(Refusal.class, () -> names.find("lead"));
        assertTrue(refusal.getMessage().endsWith("\n  lead-12\n  and 18 more"));
    }

    @Test
    void whatIsNotThereIsAnsweredWithTheNearest() {
        Refusal refusal = assertThrows(Refusal.class, () -> found("alternator 3"));
        assertTrue(
                refusal.getMessage()
                        .startsWith(
                                "nothing here fails by the name \"alternator 3\"; nearest:\n"
                                        + "  alternator-1\n  alternator-2"),
                refusal.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "gearbox", "!?", "master off"})
    void nonsenseIsRefused(String said) {
        Refusal refusal = assertThrows(Refusal.class, () -> found(said));
        assertEquals(
                "nothing here fails by the name \""
                        + said
                        + "\"; name a part, or leave --failure out to see them all",
                refusal.getMessage());
    }

    @Test
    void masterOffIsKnownWhereACandidateHasTheDrill() {
        Candidate drilled =
                new Candidate(
                        "drilled",
                        "",
                        "",
                        ONE.parts(),
                        ONE.joins(),
                        new Cockpit(Map.of(), Map.of("master", "off"), List.of(), List.of()));
        Map<String, List<Failure>> found = of(ONE, drilled).find("master off");
        assertEquals(List.of("drilled"), List.copyOf(found.keySet()));
        assertEquals(
                List.of("master off in flight"), names(found.getOrDefault("drilled", List.of())));
    }

    @Test
    void theSameFailureIsFoundInEveryCandidateThatHasIt() {
        FailureNames both = of(ONE, OTHER);
        assertEquals(List.of("one", "other"), List.copyOf(both.find("main bus short").keySet()));
        assertEquals(List.of("other"), List.copyOf(both.find("engine bus").keySet()));
        assertEquals(List.of("one", "other"), List.copyOf(both.find("charging lost").keySet()));
    }
}
