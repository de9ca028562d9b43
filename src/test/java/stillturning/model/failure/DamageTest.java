package stillturning.model.failure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stillturning.bench.Shelf;
import stillturning.parts.Part;

/** Which modes an event causes: common practice, no published source. */
class DamageTest {

    private static Set<String> harmed(Damage harm) {
        return Shelf.everyKind().stream()
                .flatMap(p -> harm.to(p).stream())
                .map(hit -> hit.part() + ": " + hit.mode().name())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest
    @EnumSource
    void everyKindOfPartIsThoughtOfAndHasTheModesThatAreNamed(Damage harm) {
        Set<Class<?>> kinds = new HashSet<>();
        for (Part part : Shelf.everyKind()) {
            kinds.add(part.getClass());
            boolean named = Damage.modes(harm, part.getClass()).isPresent();
            assertEquals(named, !harm.to(part).isEmpty(), harm + " to " + part.id());
        }
        assertEquals(Set.of(Part.class.getPermittedSubclasses()), kinds);
    }

    @Test
    void rubbingHarmsWiresOnly() {
        assertEquals(Set.of("wire: open"), harmed(Damage.WORN_APART));
        assertEquals(Set.of("wire: chafed to ground"), harmed(Damage.WORN_BARE));
    }

    @Test
    void waterLeavesWiresBatteriesAndDiodesAlone() {
        Set<String> dry =
                Shelf.everyKind().stream()
                        .filter(p -> Damage.SOAKED.to(p).isEmpty())
                        .map(Part::id)
                        .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of("battery", "diode", "lithium", "wire"), dry);
    }

    @Test
    void whatIsTornOffLosesEveryWayThroughIt() {
        Set<String> torn = harmed(Damage.TORN);
        for (String mode :
                List.of(
                        "bus: feed open",
                        "bus: tie open",
                        "connector: comes apart",
                        "controller: channel 1 off",
                        "controller: channel 2 off",
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
                        "lithium: disconnects itself",
                        "pump: stops working"),
                harmed(Damage.HUNG));
    }

    @Test
    void aKindOfWhichNothingIsSaidIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Damage.modes(Damage.TORN, Part.class));
    }
}
