package stillturning.files.entry;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.parts.PartKind;
import stillturning.parts.PartKinds;
import stillturning.quantity.Quantity;
import stillturning.quantity.field.GoesWith;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.Origin;
import stillturning.yaml.notation.Written;

class CatalogueTest {

    private final Catalogue catalogue = Catalogue.shipped();

    private static List<String> kinds() {
        return PartKinds.all().stream()
                .filter(kind -> kind.values().isPresent())
                .map(PartKind::word)
                .toList();
    }

    @Test
    void everyKindHasClassesOfItsOwnKind() {
        for (String kind : kinds()) {
            Map<String, PartEntry> classes = catalogue.classesOf(kind);
            assertTrue(classes.size() >= 1, kind);
            classes.values().forEach(entry -> assertEquals(kind, entry.kind().word()));
        }
    }

    /** What depends on the aircraft and nothing else must be written by the builder. */
    @Test
    void aClassLeavesOpenOnlyWhatDependsOnTheAircraft() {
        for (String kind : kinds()) {
            Set<String> own = PartEntry.examples(PartKinds.called(kind).orElseThrow()).keySet();
            catalogue
                    .classesOf(kind)
                    .forEach(
                            (name, entry) -> {
                                assertEquals(own, Set.copyOf(entry.open()), kind + " " + name);
                                assertEquals(
                                        !kind.equals("wire"),
                                        entry.said().mass().isPresent()
                                                && entry.said().price().isPresent(),
                                        "mass and price of " + kind + " " + name);
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

    private static Values.ValueReplacement noting(List<String> silent) {
        return new Values.ValueReplacement() {
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
        PartEntry complete = catalogue.completed(written).orElseThrow();
        assertEquals("7.5 A", given(complete, "rating").written());
        assertEquals(
                "150 mV (catalogue, breaker ordinary: guess)", given(complete, "drop").written());
        assertEquals(
                "30 EUR (catalogue, breaker ordinary: guess)",
                complete.said().price().orElseThrow().written());
        assertEquals(
                Optional.empty(),
                catalogue.completed(breaker(Optional.of("magnetic"), Optional.empty())));
    }

    private static Given given(PartEntry entry, String key) {
        return (Given) entry.values().value(key).orElseThrow();
    }

    private static PartEntry breaker(Optional<String> ofClass, Optional<Quantity> rating) {
        Map<String, Object> values = new LinkedHashMap<>();
        rating.ifPresent(r -> values.put("rating", new Given(r, Origin.STATED, "")));
        return PartEntry.made(PartKinds.called("breaker").orElseThrow(), ofClass, values);
    }

    /** Twice the cells in series, each of half the plate: four times the resistance, as heavy. */
    @Test
    void aBatteryOfAnotherSizeHasTheResistanceAndTheMassOfItsSize() throws Exception {
        PartEntry half =
                catalogue
                        .completed(battery(Map.of("nominal", "24 V", "capacity", "9 Ah")))
                        .orElseThrow();
        assertEquals(
                "48 mohm (catalogue, battery agm: guess, scaled to its size)",
                given(half, "resistance").written());
        assertEquals(6, half.said().mass().orElseThrow().quantity().si(), 1e-9);
        assertEquals(150, half.said().price().orElseThrow().amount(), 1e-9);
        PartEntry large = catalogue.completed(battery(Map.of("capacity", "54 Ah"))).orElseThrow();
        assertEquals(0.004, given(large, "resistance").quantity().si(), 1e-12);
        assertEquals(18, large.said().mass().orElseThrow().quantity().si(), 1e-9);
        assertEquals(
                "450 EUR (catalogue, battery agm: guess, scaled to its size)",
                large.said().price().orElseThrow().written());
    }

    /** A word that no field has would scale nothing, and nobody would notice. */
    @Test
    void whatAValueGoesWithIsAnotherValueOfItsKind() {
        int marked = 0;
        for (String kind : kinds()) {
            Class<?> values = PartKinds.called(kind).orElseThrow().values().orElseThrow();
            for (RecordComponent field : values.getRecordComponents()) {
                for (GoesWith other : field.getAnnotationsByType(GoesWith.class)) {
                    PartEntry usual = catalogue.classesOf(kind).values().iterator().next();
                    assertTrue(usual.values().si(other.value()).isPresent(), kind);
                    marked++;
                }
            }
        }
        assertTrue(marked >= 2);
    }

    @Test
    void whatIsWrittenOfABatteryIsNotScaled() throws Exception {
        PartEntry own =
                catalogue
                        .completed(battery(Map.of("capacity", "9 Ah", "resistance", "15 mohm")))
                        .orElseThrow();
        assertEquals("15 mohm", given(own, "resistance").written());
        PartEntry usual = catalogue.completed(battery(Map.of())).orElseThrow();
        assertEquals(
                "12 mohm (catalogue, battery agm: guess)", given(usual, "resistance").written());
        assertEquals(6, usual.said().mass().orElseThrow().quantity().si());
    }

    private static PartEntry battery(Map<String, String> said) throws Exception {
        Map<String, Object> values = new LinkedHashMap<>();
        for (Map.Entry<String, String> one : said.entrySet()) {
            values.put(one.getKey(), new Given(Quantity.parse(one.getValue()), Origin.STATED, ""));
        }
        return PartEntry.made(PartKinds.called("battery").orElseThrow(), Optional.empty(), values);
    }

    @Test
    void onlyPartsOfOneKindCompleteEachOther() {
        PartEntry bus = catalogue.classesOf("bus").values().iterator().next();
        PartEntry fuse = catalogue.classesOf("fuse").values().iterator().next();
        assertThrows(IllegalArgumentException.class, () -> bus.filledFrom(fuse));
    }

    @Test
    void theLithiumClassLetsGoBeforeItsCellsAreHarmed() {
        PartEntry lithium = requireNonNull(catalogue.classesOf("battery").get("lifepo4"));
        Written management = (Written) lithium.values().value("management").orElseThrow();
        // 12.8 V pack sheet of the class (read): cut-off 10 V; four cells of 3.65 V (computed):
        // 14.6 V
        assertEquals(10, management.si("under-voltage").orElseThrow());
        assertTrue(management.si("over-voltage").orElseThrow() > 14.6);
    }
}
