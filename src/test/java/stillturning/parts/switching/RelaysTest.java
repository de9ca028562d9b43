package stillturning.parts.switching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.parts.FailureMode;
import stillturning.parts.Part;
import stillturning.parts.PartValues;
import stillturning.parts.element.Coil;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Element;

/** Relays: which contacts are closed with the coil off and on, whole and failed. */
class RelaysTest {

    private static final PartValues.PartSurroundings SITE =
            new PartValues.PartSurroundings(14, List.of());

    private static final Part CHANGEOVER = Shelf.changeoverRelay("changeover");

    private static Part charge(double closesAt, double opensAt) {
        return new ChargeRelay.Values(closesAt, opensAt, 5, 0.1, 0.001, Optional.empty())
                .part(Bench.tag("charge"), SITE);
    }

    private static Set<String> closed(Part part, boolean pulled, String... failed) {
        Set<String> names = Set.copyOf(Arrays.asList(failed));
        List<Element> elements = part.elements();
        for (FailureMode mode : part.failureModes()) {
            elements = names.contains(mode.name()) ? mode.on(elements) : elements;
        }
        return elements.stream()
                .filter(e -> !(e instanceof Coil))
                .filter(e -> e.commandedBy().map(c -> c.closes("", pulled)).orElse(true))
                .map(Element::name)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> modes(Part part) {
        return part.failureModes().stream().map(FailureMode::name).collect(Collectors.toSet());
    }

    @Test
    void aChargeRelayMeasuresItsInputAndDrawsWhatItsClassSays() {
        Coil sensing = (Coil) charge(13.3, 12.8).elements().get(1);
        assertEquals("in", sensing.from());
        assertEquals("minus", sensing.to());
        assertEquals(0.1, 14 / sensing.ohms(), 1e-12);
        assertEquals(5, sensing.pullInSeconds());
        assertEquals(5, sensing.dropOutSeconds());
        assertThrows(IllegalArgumentException.class, () -> charge(12.8, 13.3).elements());
    }

    @Test
    void aChargeRelayLosesItsSensingOrWelds() {
        Part relay = charge(13.3, 12.8);
        assertEquals(Set.of("does not close", "coil shorted", "welded"), modes(relay));
        assertEquals(Set.of("contact"), closed(relay, false, "welded"));
        FailureMode blind = relay.failureModes().get(0);
        assertTrue(blind.on(relay.elements()).stream().allMatch(e -> e instanceof Contact));
    }

    @Test
    void aChangeoverRelayIsOnOneSideAndNeverOnBoth() {
        assertEquals(Set.of("normally closed"), closed(CHANGEOVER, false));
        assertEquals(Set.of("normally open"), closed(CHANGEOVER, true));
    }

    @Test
    void aBladeThatIsWeldedOnOneSideNeverReachesTheOther() {
        assertEquals(
                Set.of(
                        "common open",
                        "coil open",
                        "coil shorted",
                        "welded normally closed",
                        "welded normally open"),
                modes(CHANGEOVER));
        for (boolean pulled : new boolean[] {false, true}) {
            for (String side : List.of("normally closed", "normally open")) {
                assertEquals(Set.of(side), closed(CHANGEOVER, pulled, "welded " + side));
            }
            assertEquals(Set.of(), closed(CHANGEOVER, pulled, "common open"));
        }
    }
}
