package stillturning.model.failure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stillturning.bench.Shelf;
import stillturning.parts.Damage;
import stillturning.parts.Part;

/** Which modes an event causes: common practice, no published source. */
class DamageTest {

    private static Set<String> damaged(Damage damage) {
        return Shelf.everyKind().stream()
                .flatMap(p -> JointEvent.hits(damage, p))
                .map(hit -> hit.part() + ": " + hit.mode().name())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Whatever a kind is made of: torn off its terminals, it no longer does its job. */
    @Test
    void everyKindOfPartFailsWhenItIsTornOff() {
        for (Part part : Shelf.everyKind()) {
            assertTrue(JointEvent.hits(Damage.TORN, part).findAny().isPresent(), part.id());
        }
    }

    @Test
    void rubbingHarmsWiresOnly() {
        assertEquals(Set.of("wire: open"), damaged(Damage.WORN_APART));
        assertEquals(Set.of("wire: chafed to ground"), damaged(Damage.WORN_BARE));
    }

    @Test
    void waterLeavesWiresStoresAndDiodesAlone() {
        Set<String> dry =
                Shelf.everyKind().stream()
                        .filter(p -> JointEvent.hits(Damage.SOAKED, p).findAny().isEmpty())
                        .map(Part::id)
                        .collect(Collectors.toCollection(TreeSet::new));
        assertTrue(
                dry.containsAll(Set.of("battery", "capacitor-bank", "diode", "lithium", "wire")));
        for (String wet :
                List.of("alternator", "breaker", "bus", "connector", "controller", "switch")) {
            assertFalse(dry.contains(wet), wet);
        }
    }

    @Test
    void whatIsTornOffLosesEveryWayThroughIt() {
        Set<String> torn = damaged(Damage.TORN);
        for (String mode :
                List.of(
                        "bus: feed open",
                        "bus: tie open",
                        "connector: comes apart",
                        "controller: channel 1 off",
                        "controller: channel 2 off",
                        "diode-isolator: input open",
                        "switch: stuck open",
                        "wire: open")) {
            assertEquals(true, torn.contains(mode), mode);
        }
        assertFalse(torn.contains("connector: pin 1 open"));
    }

    @Test
    void onlyWhatRunsAProgramHangs() {
        assertEquals(
                Set.of(
                        "battery: disconnects itself",
                        "computer: stops working",
                        "controller: logic dead",
                        "electronic-protector: logic dead",
                        "lithium: disconnects itself",
                        "pump: stops working"),
                damaged(Damage.HUNG));
    }
}
