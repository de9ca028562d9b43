package stillturning.files.entry;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import stillturning.files.entry.PartEntry.BatteryEntry;
import stillturning.files.entry.PartEntry.BreakerEntry;
import stillturning.quantity.Quantity;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.Key;
import stillturning.yaml.notation.Origin;

class CatalogueTest {

    private final Catalogue catalogue = Catalogue.shipped();

    private static List<String> kinds() {
        return Arrays.stream(PartEntry.class.getPermittedSubclasses())
                .map(kind -> kind.getAnnotation(Key.class).value())
                .toList();
    }

    @Test
    void everyKindHasClassesOfItsOwnKind() {
        for (String kind : kinds()) {
            Map<String, PartEntry> classes = catalogue.classesOf(kind);
            assertTrue(classes.size() >= 1, kind);
            classes.values().forEach(entry -> assertEquals(kind, Catalogue.kindOf(entry)));
        }
    }

    /** What depends on the aircraft and nothing else must be written by the builder. */
    @Test
    void aClassLeavesOpenOnlyWhatDependsOnTheAircraft() {
        Set<String> allowed = Set.of("label", "zone", "class", "management");
        Map<String, Set<String>> own =
                Map.of(
                        "fuse", Set.of("rating"),
                        "breaker", Set.of("rating"),
                        "controller", Set.of("channels"),
                        "wire", Set.of("gauge", "length", "mass", "price"));
        for (String kind : kinds()) {
            catalogue
                    .classesOf(kind)
                    .forEach(
                            (name, entry) -> {
                                Set<String> open = new TreeSet<>(Values.open(entry));
                                open.removeAll(allowed);
                                assertEquals(
                                        new TreeSet<>(own.getOrDefault(kind, Set.of())),
                                        open,
                                        kind + " " + name);
                            });
        }
    }

    @Test
    void everyValueOfTheCatalogueSaysWhereItComesFrom() {
        List<String> silent = new ArrayList<>();
        for (String kind : kinds()) {
            catalogue
                    .classesOf(kind)
                    .forEach(
                            (name, entry) ->
                                    Values.mapped(entry, kind + "." + name, noting(silent)));
        }
        silent.removeIf(path -> path.startsWith("alternator.") && path.contains(".output["));
        assertEquals(List.of(), silent);
    }

    private static Values.Change noting(List<String> silent) {
        return new Values.Change() {
            @Override
            public Given given(String path, Given value) {
                if (value.origin() == Origin.STATED) {
                    silent.add(path);
                }
                return value;
            }

            @Override
            public Price price(String path, Price value) {
                if (value.source().origin() == Origin.STATED) {
                    silent.add(path);
                }
                return value;
            }
        };
    }

    @Test
    void ownValuesWinAndTheRestIsMarkedAsTheCatalogues() throws Exception {
        PartEntry written = breaker(Optional.empty(), Optional.of(Quantity.parse("7.5 A")));
        BreakerEntry complete = (BreakerEntry) catalogue.completed(written).orElseThrow();
        assertEquals("7.5 A", complete.rating().orElseThrow().written());
        assertEquals(
                "150 mV (catalogue, breaker thermal: guess)",
                complete.drop().orElseThrow().written());
        assertEquals(
                "30 EUR (catalogue, breaker thermal: guess)",
                complete.price().orElseThrow().written());
        assertEquals(
                Optional.empty(),
                catalogue.completed(breaker(Optional.of("magnetic"), Optional.empty())));
    }

    private static BreakerEntry breaker(Optional<String> ofClass, Optional<Quantity> rating) {
        return new BreakerEntry(
                Optional.empty(),
                Optional.empty(),
                ofClass,
                Optional.empty(),
                Optional.empty(),
                rating.map(r -> new Given(r, Origin.STATED, "")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    @Test
    void onlyPartsOfOneKindCompleteEachOther() {
        PartEntry bus = catalogue.classesOf("bus").values().iterator().next();
        PartEntry fuse = catalogue.classesOf("fuse").values().iterator().next();
        assertThrows(IllegalArgumentException.class, () -> Values.filled(bus, fuse));
    }

    @Test
    void theLithiumClassLetsGoBeforeItsCellsAreHarmed() {
        BatteryEntry lithium =
                (BatteryEntry) requireNonNull(catalogue.classesOf("battery").get("lifepo4"));
        ManagementEntry management = lithium.management().orElseThrow();
        // 12.8 V pack sheet of the class (read): cut-off 10 V; four cells of 3.65 V (computed):
        // 14.6 V
        assertEquals(10, management.underVoltage().quantity().si());
        assertTrue(management.overVoltage().quantity().si() > 14.6);
    }
}
