package stillturning.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.yaml.LooseNames.LooseName;
import stillturning.yaml.LooseNames.Named;

class LooseNamesTest {

    private static final List<Named<String>> PARTS =
            Stream.of(
                            "main-bus",
                            "main-bus-feed",
                            "engine-bus",
                            "radio",
                            "radio-breaker",
                            "radio-wire",
                            "computer-a",
                            "computer-b",
                            "pump-1",
                            "pump-10",
                            "flyback-diode",
                            "alternator",
                            "alternator-lead-wire")
                    .map(LooseNamesTest::part)
                    .toList();

    private static Named<String> part(String id) {
        return new Named<>(id, List.of(LooseName.of(id)));
    }

    @ParameterizedTest
    @CsvSource({
        "main-bus, main-bus",
        "main bus, main-bus",
        "MAIN_BUS, main-bus",
        "Main.Bus, main-bus",
        "mainbus, main-bus",
        "bus main, main-bus",
        "the main bus, main-bus",
        "main bus feed, main-bus-feed",
        "mainbus feed, main-bus-feed",
        "eng bus, engine-bus",
        "engnie bus, engine-bus",
        "radio, radio",
        "radoi, radio",
        "radio breakers, radio-breaker",
        "computer b, computer-b",
        "b computer, computer-b",
        "comp a, computer-a",
        "computr a, computer-a",
        "pump 1, pump-1",
        "pump1, pump-1",
        "pump 10, pump-10",
        "fly back diode, flyback-diode",
        "alt, alternator",
        "radio b, radio-breaker",
        "e bus, engine-bus",
        "alternater, alternator",
        "radio wire fails, radio-wire"
    })
    void looseWordsFindTheirPart(String said, String meant) {
        assertEquals(List.of(meant), LooseNames.best(said, PARTS));
    }

    @Test
    void equallyGoodOnesAreAllGivenInTheirOrder() {
        assertEquals(List.of("computer-a", "computer-b"), LooseNames.best("computer", PARTS));
        assertEquals(List.of("main-bus", "engine-bus"), LooseNames.best("bus", PARTS));
    }

    @Test
    void wholeWordsGoBeforeCutOnesAndThoseBeforeMisspeltOnes() {
        List<Named<String>> names = List.of(part("lamp"), part("lamps-x-y"), part("lamp-x-y-z"));
        assertEquals(List.of("lamp"), LooseNames.best("lamp", names));
        assertEquals(List.of("lamps-x-y"), LooseNames.best("lamps", names));
        assertEquals(List.of("lamps-x-y"), LooseNames.best("lam y", names.subList(1, 2)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "---",
                "computer c",
                "main bus main bus",
                "pump 2",
                "z",
                "\u0000",
                "gearbox"
            })
    void whatFitsNothingFindsNothing(String said) {
        assertEquals(List.of(), LooseNames.best(said, PARTS));
    }

    @Test
    void shortWordsAreNotTakenForMisspeltOnes() {
        assertEquals(List.of(), LooseNames.best("bun", PARTS));
    }

    @Test
    void nearestNamesShareMostWords() {
        assertEquals(List.of("computer-a", "computer-b"), LooseNames.nearest("computer c", PARTS));
        assertEquals("main-bus-feed", LooseNames.nearest("main bus feed 9", PARTS).get(0));
        assertEquals(List.of(), LooseNames.nearest("gearbox", PARTS));
    }

    @Test
    void theTailNarrowsAndIsNotNeeded() {
        List<Named<String>> names =
                List.of(
                        part("main-bus"),
                        new Named<>("short", List.of(new LooseName("main-bus", "short to ground"))),
                        new Named<>(
                                "stud", List.of(new LooseName("main-bus", "feed-1 stud open"))));
        assertEquals(List.of("main-bus"), LooseNames.best("main bus", names));
        assertEquals(List.of("short"), LooseNames.best("main bus short", names));
        assertEquals(List.of("short"), LooseNames.best("short of the main bus to ground", names));
        assertEquals(List.of("stud"), LooseNames.best("main bus feed 1 open", names));
    }

    @Test
    void aLoneLetterDoesNotBeginAWordOfTheTail() {
        List<Named<String>> names =
                List.of(new Named<>("wire", List.of(new LooseName("computer-wire", "chafed"))));
        assertEquals(List.of(), LooseNames.best("computer c", names));
        assertEquals(List.of("wire"), LooseNames.best("computer ch", names));
    }

    @Test
    void anyOfSeveralNamesOfAThingWillDo() {
        List<Named<String>> names =
                List.of(
                        new Named<>(
                                "b1", List.of(LooseName.of("b1"), LooseName.of("Ship's battery"))));
        assertEquals(List.of("b1"), LooseNames.best("ships battery", names));
        assertEquals(List.of("b1"), LooseNames.best("B 1", names));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aNameIsFoundHoweverItsWordsAreShuffledAndCased(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (Named<String> named : PARTS) {
            List<String> words =
                    Stream.of(named.thing().split("-")).sorted(shuffled(random)).toList();
            String said =
                    String.join(random.nextBoolean() ? " " : "_", words).toUpperCase(Locale.ROOT);
            assertTrue(
                    LooseNames.best(said, PARTS).contains(named.thing()),
                    () -> "seed " + seed + ": " + said);
        }
    }

    private static Comparator<String> shuffled(SplittableRandom random) {
        Map<String, Integer> keys = new HashMap<>();
        return Comparator.comparingInt(
                (String word) -> keys.computeIfAbsent(word, w -> random.nextInt()));
    }

    @Test
    void longNonsenseIsRefusedQuickly() {
        assertEquals(List.of(), LooseNames.best("z".repeat(100_000), PARTS));
        assertEquals(List.of(), LooseNames.best("zz ".repeat(20_000), PARTS));
    }
}
