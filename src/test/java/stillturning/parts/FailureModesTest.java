package stillturning.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Shelf;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Element;
import stillturning.parts.element.Guard;

class FailureModesTest {

    static List<Part> everyKind() {
        return Shelf.everyKind();
    }

    @Test
    void theListNamesEveryKindOfPart() {
        Set<PartKind> kinds = everyKind().stream().map(Part::kind).collect(Collectors.toSet());
        assertEquals(Set.copyOf(PartKinds.all()), kinds);
    }

    /** What the design asks of each kind's catalogue. */
    /** Magnets have no winding to lose; their regulator is fed instead. */
    @Test
    void onlyAWoundMachineLosesItsField() {
        Part wound = Shelf.alternator("alternator", 14.2, 45, 14.2, Shelf.STEADY);
        assertTrue(named(wound).containsAll(List.of("field open", "field shorted")));
        Part magnets = Shelf.alternator("alternator", 14.2, 45, 0, Shelf.STEADY);
        assertTrue(named(magnets).containsAll(List.of("regulator open", "regulator shorted")));
        assertTrue(named(magnets).stream().noneMatch(name -> name.startsWith("field")));
    }

    private static Set<String> named(Part part) {
        return part.failureModes().stream().map(FailureMode::name).collect(Collectors.toSet());
    }

    @Test
    void everyKindHasTheFailureModesThatTheTradeKnows() {
        Map<String, Set<String>> asked =
                Map.ofEntries(
                        Map.entry(
                                "battery",
                                Set.of(
                                        "disconnects itself",
                                        "one cell shorted",
                                        "half shorted inside",
                                        "capacity lost")),
                        Map.entry(
                                "alternator",
                                Set.of(
                                        "no output",
                                        "part output",
                                        "over-voltage",
                                        "regulates high",
                                        "regulator open",
                                        "regulator shorted",
                                        "output short")),
                        Map.entry("bus", Set.of("short to ground", "feed open", "tie open")),
                        Map.entry("wire", Set.of("open", "chafed to ground")),
                        Map.entry(
                                "connector",
                                Set.of("comes apart", "pin 1 open", "pin 1 high resistance")),
                        Map.entry(
                                "fuse",
                                Set.of("opens for no reason", "does not open when it should")),
                        Map.entry(
                                "breaker",
                                Set.of("opens for no reason", "does not open when it should")),
                        Map.entry(
                                "switch", Set.of("stuck open", "stuck closed", "short to ground")),
                        Map.entry("contactor", Set.of("drops out", "coil shorted", "welded")),
                        Map.entry("diode", Set.of("open", "shorted")),
                        Map.entry(
                                "controller",
                                Set.of(
                                        "logic dead",
                                        "command path lost",
                                        "channel 1 off",
                                        "channel 1 stuck on",
                                        "channel 1 trips for no reason")),
                        Map.entry("capacitor-bank", Set.of("open", "shorted", "capacitance lost")),
                        Map.entry(
                                "self-powered-ignition",
                                Set.of("stops working", "kill short", "kill open")),
                        Map.entry("ground", Set.of("open", "high resistance")),
                        Map.entry("converter", Set.of("no output", "over-voltage")),
                        Map.entry(
                                "guard",
                                Set.of("opens for no reason", "does not open when it should")),
                        Map.entry(
                                "crowbar",
                                Set.of("shorts for no reason", "does not short when it should")),
                        Map.entry(
                                "diode-isolator",
                                Set.of(
                                        "input open",
                                        "short to ground",
                                        "diode 1 open",
                                        "diode 1 shorted",
                                        "diode 2 open",
                                        "diode 2 shorted")),
                        Map.entry("shunt", Set.of("open", "high resistance")),
                        Map.entry("charge-resistor", Set.of("open")),
                        Map.entry(
                                "low-voltage-disconnect",
                                Set.of(
                                        "opens for no reason",
                                        "sensor shorted",
                                        "does not open when it should")),
                        Map.entry(
                                "charge-relay", Set.of("does not close", "coil shorted", "welded")),
                        Map.entry(
                                "changeover-relay",
                                Set.of("common open", "coil open", "coil shorted")),
                        Map.entry(
                                "current-limiter",
                                Set.of("opens for no reason", "does not open when it should")),
                        Map.entry(
                                "electronic-protector",
                                Set.of(
                                        "off",
                                        "stuck on",
                                        "logic dead",
                                        "trips for no reason",
                                        "does not trip when it should")),
                        Map.entry("computer", Set.of("stops working", "input a short")),
                        Map.entry("pump", Set.of("stops working", "input short")));
        for (Part part : everyKind()) {
            Set<String> names = named(part);
            Set<String> missing = new TreeSet<>(asked.getOrDefault(part.id(), Set.of()));
            missing.removeAll(names);
            assertTrue(missing.isEmpty(), part.id() + " lacks " + missing);
            assertEquals(part.failureModes().size(), names.size(), part.id() + ": twice one name");
        }
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void aFailureInjectedTwiceIsTheFailureOnce(Part part) {
        for (FailureMode mode : part.failureModes()) {
            List<Element> once = mode.on(part.elements());
            assertEquals(once, mode.on(once), part.id() + ": " + mode.name());
        }
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void everyFailureChangesSomethingAndLeavesNamesUnique(Part part) {
        for (FailureMode mode : part.failureModes()) {
            List<Element> after = mode.on(part.elements());
            assertTrue(!after.equals(part.elements()), part.id() + ": " + mode.name());
            assertEquals(
                    after.size(), after.stream().map(Element::name).distinct().count(), part.id());
        }
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void whatIsOpenStaysOpenWhenTheSameThingFailsAgainInAnotherWay(Part part) {
        for (FailureMode opened : part.failureModes()) {
            Set<String> gone = names(part.elements());
            gone.removeAll(names(opened.on(part.elements())));
            for (FailureMode other : part.failureModes()) {
                Set<String> left = names(other.on(opened.on(part.elements())));
                left.retainAll(gone);
                assertTrue(left.isEmpty(), part.id() + ": " + opened.name() + ", " + other.name());
            }
        }
    }

    @Test
    void bothInputsOfALoadCanBeShortedTogether() {
        Load computer = Shelf.twoInputs("computer", Demand.DemandKind.CONSTANT_POWER, 1.2);
        List<Element> after = computer.elements();
        for (FailureMode mode : computer.failureModes()) {
            after = mode.name().endsWith(" short") ? mode.on(after) : after;
        }
        assertEquals(computer.elements().size() + 2, after.size());
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void elementsOnlyTouchTerminalsHiddenNetsAndTheStructure(Part part) {
        Set<String> known = new HashSet<>(part.terminals());
        known.addAll(Set.of(Element.STRUCTURE, "inside", "chafe"));
        assertTrue(known.contains(part.entry()) && known.contains(part.exit()));
        for (FailureMode mode : part.failureModes()) {
            mode.on(part.elements()).forEach(e -> assertKnown(known, e));
        }
        part.elements().forEach(e -> assertKnown(known, e));
    }

    private static void assertKnown(Set<String> known, Element element) {
        assertTrue(known.contains(element.from()), element.name() + " at " + element.from());
        assertTrue(known.contains(element.to()), element.name() + " at " + element.to());
        if (element instanceof Conversion conversion) {
            assertTrue(known.contains(conversion.output().plus()));
            assertTrue(known.contains(conversion.output().minus()));
        } else if (element instanceof Guard guard) {
            assertTrue(known.contains(guard.sense()) && known.contains(guard.senseReturn()));
        }
    }

    private static Set<String> names(List<Element> elements) {
        return elements.stream().map(Element::name).collect(Collectors.toCollection(HashSet::new));
    }

    /** A rate for each is held by {@code ChancesTest}. */
    @ParameterizedTest
    @MethodSource("everyKind")
    void everyModeHasWordsAndAWayToLookForIt(Part part) {
        for (FailureMode mode : part.failureModes()) {
            String where = part.id() + ": " + mode.key();
            assertTrue(mode.key().matches("[a-z]+(-[a-z]+)*"), where);
            assertTrue(mode.name().matches("[a-z0-9][a-z0-9 -]*"), where + " " + mode.name());
            assertTrue(
                    mode.traits().inspection().orElse(part.kind().inspection()).length() > 10,
                    where);
        }
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void justTheModesThatSaySoJoinAPartToTheAircraftsMetal(Part part) {
        for (FailureMode mode : part.failureModes()) {
            assertEquals(
                    mode.key().endsWith("to-ground"),
                    mode.shortsToStructure(),
                    part.id() + ": " + mode.name());
        }
    }
}
