package stillturning.desktop.viewmodel.offer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.assess.front.SearchLimits;
import stillturning.bench.Thorough;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.OpenDesk;

class OfferedDrawingsTest {

    @TempDir private Path folder = Path.of("");
    private OpenDesk open;
    private Desk desk;
    private OfferedDrawings offers;

    @BeforeEach
    void open() throws IOException {
        open = OpenDesk.over("first-steps", folder);
        desk = open.desk();
        offers = new OfferedDrawings(desk, new SearchLimits(1, 20));
        open.untilAssessed();
    }

    private Trouble busShort() {
        return Trouble.of(
                        desk.results().get().assessment().orElseThrow().of("one-bus").orElseThrow())
                .stream()
                .filter(t -> t.words().startsWith("main-bus: short to ground"))
                .findFirst()
                .orElseThrow();
    }

    private Offered found() {
        offers.ask(busShort());
        assertTrue(offers.working().get());
        open.until(() -> offers.offered().get().isPresent());
        return offers.offered().get().orElseThrow();
    }

    @Test
    void whatMendsATroubleIsOfferedInDrawAndKeptAsOneEdit() {
        SortedMap<String, String> before = desk.draft().state().texts();
        Offered found = found();
        assertEquals(AreaName.DRAW, open.visited().get(0).area());
        assertEquals("one-bus", desk.candidate().get());
        assertFalse(offers.working().get());
        assertTrue(offers.words().get().contains("main-bus: short to ground"));
        assertTrue(found.notes().stream().anyMatch(n -> n.contains("not yet buildable")));
        OfferedDrawing split =
                found.offers().stream()
                        .filter(o -> o.title().startsWith("Split the main bus in two"))
                        .findFirst()
                        .orElseThrow();
        assertTrue(split.about().contains("Mends it."), "" + split.about());

        offers.choose(split);
        assertEquals(Optional.empty(), offers.save());
        assertFalse(offers.open().get());
        assertEquals("one-bus-changed", desk.candidate().get());
        assertEquals(
                "New candidate one-bus-changed from what was offered",
                desk.texts().get().undo().orElseThrow());
        open.untilAssessed();
        assertEquals(List.of(), desk.read().get().problems());
        assertEquals("one-bus-changed-2", saved(split));

        desk.undo();
        desk.undo();
        assertEquals(before, desk.draft().state().texts());
    }

    private String saved(OfferedDrawing offer) {
        offers.show(new Offered("", List.of(offer), List.of()), offer, "");
        assertTrue(offers.words().get().contains("changed since"), offers.words().get());
        assertEquals(Optional.empty(), offers.save());
        return desk.candidate().get();
    }

    /** What is marked is in the drawing, and what the move names is marked. */
    @Test
    void theDifferenceIsMarkedInBothDrawings() {
        OfferedDrawing split = found().offers().get(0);
        offers.choose(split);
        open.until(() -> offers.sketch().get().isPresent());
        OfferSketch sketch = offers.sketch().get().orElseThrow();
        List<String> added =
                split.drawn().candidate().parts().stream()
                        .map(p -> p.id())
                        .filter(id -> split.before().part(id).isEmpty())
                        .toList();
        assertTrue(added.stream().anyMatch(id -> id.startsWith("main-bus-")), "" + added);
        assertTrue(sketch.then().own().stream().anyMatch(added::contains), "" + sketch.then());
        assertTrue(sketch.then().own().stream().noneMatch(k -> split.before().part(k).isPresent()));
        assertTrue(
                sketch.now().own().stream()
                        .noneMatch(k -> split.drawn().candidate().part(k).isPresent()));
    }

    @Test
    void anotherCandidateAndCallingOffLeaveNothingBehind() {
        offers.ask(busShort());
        desk.open("bus-and-battery");
        assertFalse(offers.open().get());
        assertFalse(desk.work().busy(OfferedDrawings.LOOKING));
        offers.ask(busShort());
        offers.dismiss();
        assertFalse(offers.working().get());
        assertEquals(Optional.empty(), offers.offered().get());
        assertEquals(Optional.of("Choose one first."), offers.save());
    }

    /** A search that is told to stop ends with what it has, and says what it left. */
    @Thorough
    @Test
    void aSearchThatIsStoppedSaysWhatWasNotTried() {
        offers.ask(busShort());
        offers.stop();
        open.until(() -> offers.offered().get().isPresent());
        assertTrue(
                offers.offered().get().orElseThrow().notes().stream()
                        .anyMatch(n -> n.contains("Not tried: ")));
    }
}
