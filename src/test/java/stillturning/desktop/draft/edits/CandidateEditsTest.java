package stillturning.desktop.draft.edits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.Studies;
import stillturning.files.PartCatalogue;
import stillturning.files.edit.CandidateEdits.LeverConfiguration;
import stillturning.files.edit.CandidateEdits.NewPart;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.edit.FileChange;
import stillturning.model.Terminal;

class CandidateEditsTest {

    private static final String ONE = "one-bus";

    @TempDir Path folder;
    private Bench bench;

    @BeforeEach
    void openAStudy() throws IOException {
        Studies.copy("first-steps", folder);
        bench = Bench.open(folder);
    }

    private void assertSays(String line) {
        assertTrue(bench.text(ONE).contains(line), bench.text(ONE));
    }

    private static String refusal(org.junit.jupiter.api.function.Executable change) {
        return assertThrows(ChangeRefused.class, change).why();
    }

    @Test
    void aPartIsAddedOnALineLikeItsNeighboursUnderAFreeName() throws Exception {
        FileChange first = bench.shaping(ONE).add(NewPart.of("breaker", "panel"));
        assertEquals(List.of("breaker"), first.parts());
        assertEquals("Add breaker", first.name());
        bench.make(first);
        assertSays("\n  breaker: {is: breaker, zone: panel, rating: 5 A (guess)}\n");
        assertEquals(
                List.of("breaker-2"),
                bench.shaping(ONE).add(NewPart.of("breaker", "panel")).parts());
        assertEquals(
                List.of("battery-2"),
                bench.shaping(ONE).add(NewPart.of("battery", "panel")).parts());
    }

    @Test
    void aNewSwitchStandsSomewhereInFlight() throws Exception {
        bench.make(bench.shaping(ONE).add(NewPart.of("switch", "panel")));
        assertEquals("on", bench.text(ONE).replaceAll("(?s).*switch: (on).*", "$1"));
        bench.make(bench.shaping(ONE).position(LeverConfiguration.MASTER_OFF, "switch", "off"));
        assertSays("master-off");
    }

    @Test
    void unknownKindsAndClassesAreRefusedWithTheChoice() {
        String kind = refusal(() -> bench.shaping(ONE).add(NewPart.of("gadget", "panel")));
        assertTrue(kind.contains("take one of"), kind);
        NewPart odd = new NewPart("battery", Optional.of("atomic"), "panel", Map.of());
        String ofClass = refusal(() -> bench.shaping(ONE).add(odd));
        assertTrue(ofClass.contains("lifepo4"), ofClass);
    }

    @Test
    void valuesAreSetAndCleared() throws Exception {
        bench.make(bench.shaping(ONE).set("battery", "capacity", "20 Ah (measured)"));
        assertSays("capacity: 20 Ah (measured)}");
        bench.make(bench.shaping(ONE).set("battery", "health", "80 %"));
        assertSays("health: 80 %");
        bench.make(bench.shaping(ONE).clear("battery", "health"));
        assertFalse(bench.text(ONE).contains("health"));
        bench.make(bench.shaping(ONE).title("Just one bus"));
        assertSays("candidate: Just one bus           # everything on one bar");
        assertEquals(List.of(), bench.problems());
    }

    @Test
    void aLoadsInputIsJoinedByAFeedThatFitsWhatItDraws() throws Exception {
        bench.make(bench.shaping(ONE).cut("feeds.lights"));
        assertTrue(bench.problems().contains("feeds: nothing feeds \"lights\""));
        FileChange join =
                bench.shaping(ONE)
                        .join(
                                new Terminal("lights", "plus"),
                                new Terminal("main-bus", "bar"),
                                Optional.empty());
        bench.make(join);
        assertSays("\n  lights: from main-bus, breaker 5 A\n");
        assertEquals(List.of(), bench.problems());
        String again =
                refusal(
                        () ->
                                bench.shaping(ONE)
                                        .join(
                                                new Terminal("battery", "plus"),
                                                new Terminal("lights", "plus"),
                                                Optional.empty()));
        assertTrue(again.startsWith("lights is fed already; cut that feed first"), again);
    }

    @ParameterizedTest
    @ValueSource(strings = {"fuse", "current-limiter", "breaker", "electronic-protector"})
    void aFeedFromAProtectorGetsNoSecondOne(String kind) throws Exception {
        bench.make(bench.shaping(ONE).cut("feeds.lights"));
        bench.make(bench.shaping(ONE).add(NewPart.of(kind, "panel")));
        Terminal out = new Terminal(kind, "out");
        Terminal lights = new Terminal("lights", "plus");
        bench.make(bench.shaping(ONE).join(out, lights, Optional.empty()));
        assertSays("\n  lights: from " + kind + "\n");
    }

    @Test
    void anIsolatorSaysWhichOutputARunStartsFrom() throws Exception {
        bench.make(bench.shaping(ONE).add(NewPart.of("diode-isolator", "panel")));
        Terminal plus = new Terminal("battery", "plus");
        Terminal out = new Terminal("diode-isolator", "out-2");
        bench.make(bench.shaping(ONE).join(out, plus, Optional.empty()));
        assertSays("from diode-isolator.out-2 to battery, wire");
    }

    @Test
    void whateverTheCatalogueOffersIsReadWithItsDefaults() throws Exception {
        for (PartCatalogue.CatalogueKind kind : PartCatalogue.shipped().kinds()) {
            if (!kind.word().equals("wire")) {
                bench.make(bench.shaping(ONE).add(NewPart.of(kind.word(), "panel")));
            }
        }
        List<String> other =
                bench.problems().stream()
                        .filter(problem -> !problem.contains("nothing is joined to"))
                        .toList();
        assertEquals(List.of(), other);
    }

    @Test
    void aLoadThatWasLeftOutIsTakenInByItsFeed() throws Exception {
        bench.make(bench.shaping(ONE).leaveOut("lights"));
        assertSays("leaves-out:");
        assertEquals(List.of(), bench.problems());
        Terminal lights = new Terminal("lights", "plus");
        Terminal battery = new Terminal("battery", "plus");
        bench.make(bench.shaping(ONE).join(battery, lights, Optional.empty()));
        assertSays("\n  lights: from battery, fuse 5 A\n");
        assertEquals(List.of(), bench.problems());
        assertTrue(bench.parts(ONE).contains("lights-fuse"));
    }

    @Test
    void otherTerminalsAreJoinedByALinkThatEndsAtTheGround() throws Exception {
        bench.make(bench.shaping(ONE).cut("links.battery-minus"));
        Terminal ground = new Terminal("panel-ground", "stud");
        Terminal minus = new Terminal("battery", "minus");
        bench.make(bench.shaping(ONE).join(ground, minus, Optional.of("wire AWG 8")));
        assertSays("\n  battery-minus: from battery.minus to panel-ground, wire AWG 8\n");
        assertEquals(List.of(), bench.problems());
    }

    @Test
    void joiningWhatIsNotThereOrToItselfIsRefused() {
        Terminal bar = new Terminal("main-bus", "bar");
        Terminal nowhere = new Terminal("aux-bus", "bar");
        String same = refusal(() -> bench.shaping(ONE).join(bar, bar, Optional.empty()));
        assertTrue(same.contains("join it to something else"), same);
        String none = refusal(() -> bench.shaping(ONE).join(bar, nowhere, Optional.empty()));
        assertTrue(none.contains("there is no part \"aux-bus\""), none);
    }

    @Test
    void aNewSwitchIsInsertedIntoAFeedAndTakenOutAgain() throws Exception {
        String before = bench.text(ONE);
        NewPart part = NewPart.of("switch", "panel");
        bench.make(bench.shaping(ONE).insert("feeds.radio", part, OptionalInt.empty()));
        assertSays("radio:      from main-bus, breaker 5 A, via switch\n");
        assertEquals(List.of(), bench.problems());
        FileChange delete = bench.shaping(ONE).delete(Set.of("switch"));
        assertEquals(List.of("leads radio past it"), delete.also());
        bench.make(delete);
        assertEquals(before, bench.text(ONE));
    }

    @Test
    void aRunsOwnProtectorIsDeletedOutOfItAndItsWireWithIt() throws Exception {
        bench.make(bench.shaping(ONE).delete(Set.of("lights-breaker")));
        assertSays("lights:     from main-bus\n");
        bench.make(bench.shaping(ONE).delete(Set.of("lights-wire")));
        assertFalse(bench.text(ONE).contains("  lights: "));
        String load = refusal(() -> bench.shaping(ONE).delete(Set.of("radio")));
        assertTrue(load.contains("leave it out of this candidate instead"), load);
    }

    @Test
    void deletingABusTakesEverythingAlongThatEndsAtIt() throws Exception {
        FileChange delete = bench.shaping(ONE).delete(Set.of("main-bus"));
        assertTrue(delete.also().contains("takes the feed of radio out"), delete.also().toString());
        assertTrue(delete.also().contains("takes the cue low-voltage out"));
        assertTrue(delete.also().contains("takes the procedure shed out"));
        bench.make(delete);
        assertTrue(
                bench.problems().stream().noneMatch(p -> p.contains("there is no")),
                bench.problems().toString());
    }

    @Test
    void aPartIsRenamedWhereverItIsNamed() throws Exception {
        bench.make(bench.shaping(ONE).rename("main-bus", "bar"));
        assertFalse(bench.text(ONE).contains("main-bus"));
        assertSays("at: bar.bar");
        assertEquals(List.of(), bench.problems());
        assertTrue(
                refusal(() -> bench.shaping(ONE).rename("bar", "radio"))
                        .contains("load of the study"));
        assertTrue(
                refusal(() -> bench.shaping(ONE).rename("bar", "battery"))
                        .contains("there already"));
        assertTrue(refusal(() -> bench.shaping(ONE).rename("bar", "A b")).contains("lower case"));
    }

    @Test
    void partsAreCopiedBetweenCandidatesWithTheLinksAmongThem() throws Exception {
        String copied = bench.shaping(ONE).copy(Set.of("battery", "panel-ground", "alternator"));
        FileChange paste = bench.shaping("bus-and-battery").paste(copied);
        assertEquals(List.of("battery-2", "alternator-2", "panel-ground-2"), paste.parts());
        bench.make(paste);
        assertTrue(
                bench.text("bus-and-battery")
                        .contains(
                                "battery-minus-2: from battery-2.minus to panel-ground-2, wire AWG"
                                        + " 8"));
        String nothing = refusal(() -> bench.shaping(ONE).paste("hello"));
        assertTrue(nothing.contains("copy them, then paste"), nothing);
        assertTrue(
                refusal(() -> bench.shaping(ONE).copy(Set.of("radio-wire"))).contains("not wires"));
    }

    @Test
    void aBrokenFileIsRefusedWithItsLine() throws Exception {
        String text = bench.text(ONE);
        bench.make(Change.typing(ONE + ".yaml", "x: [\n" + text));
        String broken = refusal(() -> bench.shaping(ONE).title("No"));
        assertTrue(broken.matches(".*correct line \\d+ in its text.*"), broken);
    }
}
