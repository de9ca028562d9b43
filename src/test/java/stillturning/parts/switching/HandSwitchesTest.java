package stillturning.parts.switching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.parts.FailureMode;
import stillturning.parts.Lever;
import stillturning.parts.Part;
import stillturning.parts.element.Element;

/** Switches that a hand moves: which contacts are closed where, whole and failed. */
class HandSwitchesTest {

    private static final Part CHANGEOVER = new ChangeoverSwitch(Bench.tag("source"), 1, 0.005);
    private static final Part SELECTOR = new SelectorSwitch(Bench.tag("selector"), 0.0005);
    private static final Part KEY = new KeySwitch(Bench.tag("key"), 0.005);

    private static Set<String> closed(List<Element> elements, String position) {
        return elements.stream()
                .filter(e -> e.commandedBy().map(c -> c.closes(position, false)).orElse(true))
                .map(Element::name)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> closed(Part part, String position) {
        return closed(part.elements(), position);
    }

    private static Set<String> failed(Part part, String mode, String position) {
        return closed(mode(part, mode).on(part.elements()), position);
    }

    private static FailureMode mode(Part part, String name) {
        return part.failureModes().stream()
                .filter(m -> m.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + name));
    }

    private static Set<String> modes(Part part) {
        return part.failureModes().stream().map(FailureMode::name).collect(Collectors.toSet());
    }

    private static Lever lever(Part part) {
        return part.levers().get(0);
    }

    @Test
    void theirLeversMustBeStatedWithTheirPositionsInOrder() {
        assertEquals(List.of("a", "b"), lever(CHANGEOVER).positions());
        assertEquals(List.of("off", "1", "both", "2"), lever(SELECTOR).positions());
        assertEquals(List.of("off", "on", "start"), lever(KEY).positions());
        for (Part part : List.of(CHANGEOVER, SELECTOR, KEY)) {
            assertTrue(lever(part).stated(), part.id());
        }
    }

    @Test
    void aChangeoverSwitchIsAlwaysOnOneSideAndNeverOnBoth() {
        assertEquals(Set.of("a"), closed(CHANGEOVER, "a"));
        assertEquals(Set.of("b"), closed(CHANGEOVER, "b"));
        Part twoPoles = new ChangeoverSwitch(Bench.tag("source"), 2, 0.005);
        assertEquals(
                List.of("common-1", "a-1", "b-1", "common-2", "a-2", "b-2"), twoPoles.terminals());
        assertEquals(Set.of("b-1", "b-2"), closed(twoPoles, "b"));
        assertEquals(Optional.of("common-2"), twoPoles.across("b-2"));
        assertEquals(Optional.empty(), twoPoles.across("common-1"));
    }

    @Test
    void aChangeoverSwitchThatIsStuckOnOneSideNeverReachesTheOther() {
        assertEquals(
                Set.of("stuck open", "stuck closed a", "stuck closed b", "short to ground"),
                modes(CHANGEOVER));
        assertEquals(Set.of("a"), failed(CHANGEOVER, "stuck closed a", "b"));
        assertEquals(Set.of("b"), failed(CHANGEOVER, "stuck closed b", "a"));
        assertEquals(Set.of(), failed(CHANGEOVER, "stuck open", "a"));
    }

    /** Make before break: the positions next to both share a contact with it. */
    @Test
    void aSelectorPassesBothOnItsWayFromOneToTwo() {
        assertEquals(Set.of(), closed(SELECTOR, "off"));
        assertEquals(Set.of("1"), closed(SELECTOR, "1"));
        assertEquals(Set.of("1", "2"), closed(SELECTOR, "both"));
        assertEquals(Set.of("2"), closed(SELECTOR, "2"));
    }

    @Test
    void oneWiperTakesBothWaysOfASelectorAndOneContactOneOfThem() {
        assertEquals(
                Set.of(
                        "wiper open",
                        "contact 1 open",
                        "contact 2 open",
                        "stuck closed 1",
                        "stuck closed 2",
                        "short to ground"),
                modes(SELECTOR));
        assertEquals(Set.of(), failed(SELECTOR, "wiper open", "both"));
        assertEquals(Set.of("2"), failed(SELECTOR, "contact 1 open", "both"));
        assertEquals(Set.of("1"), failed(SELECTOR, "stuck closed 1", "off"));
        assertEquals(Set.of("1", "2"), failed(SELECTOR, "stuck closed 1", "2"));
        assertTrue(SELECTOR.carriesSeveral());
    }

    @Test
    void aKeySwitchFeedsItsStartTerminalAtStartOnlyAndSpringsBackFromThere() {
        assertEquals(Set.of(), closed(KEY, "off"));
        assertEquals(Set.of("on"), closed(KEY, "on"));
        assertEquals(Set.of("on", "start"), closed(KEY, "start"));
        assertEquals(List.of("off", "on"), lever(KEY).restingPositions());
        assertEquals(List.of("a", "b"), lever(CHANGEOVER).restingPositions());
    }

    @Test
    void theContactsOfAKeySwitchStickOneByOneAndOpenTogether() {
        Map<String, Set<String>> whenOff =
                Map.of(
                        "stuck open", Set.of(),
                        "stuck closed on", Set.of("on"),
                        "start stuck closed", Set.of("start"));
        whenOff.forEach((mode, left) -> assertEquals(left, failed(KEY, mode, "off"), mode));
        assertEquals(Set.of(), failed(KEY, "stuck open", "start"));
        assertTrue(mode(KEY, "short to ground").shortsToStructure());
        assertEquals(4, modes(KEY).size());
    }
}
