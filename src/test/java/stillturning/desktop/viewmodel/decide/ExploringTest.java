package stillturning.desktop.viewmodel.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.assess.front.SearchLimits;
import stillturning.bench.Thorough;
import stillturning.desktop.draft.Change;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.OpenDesk;
import stillturning.desktop.viewmodel.explain.Explaining;
import stillturning.desktop.viewmodel.offer.OfferedDrawing;
import stillturning.desktop.viewmodel.offer.OfferedDrawings;
import stillturning.dossier.NamedFailures;
import stillturning.model.goal.CriterionName;
import stillturning.yaml.YamlDocument;

class ExploringTest {

    @TempDir private Path folder = Path.of("");
    private OpenDesk open;
    private OfferedDrawings offers;
    private Exploring exploring;

    @BeforeEach
    void open() throws IOException {
        open = OpenDesk.over("first-steps", folder);
        offers = new OfferedDrawings(open.desk());
        exploring = new Exploring(open.desk(), offers, new SearchLimits(2, 24));
    }

    @Thorough
    @Test
    void theFrontIsPicturedAmongTheCandidatesAndItsPointsOpenDrawings() {
        assertTrue(exploring.words().get().contains("From every candidate"));
        open.until(() -> open.desk().results().get().assessment().isPresent());
        List<TradeOff> grown = new ArrayList<>();
        exploring
                .picture()
                .addListener(
                        (of, before, now) ->
                                now.filter(p -> exploring.working().get()).ifPresent(grown::add));
        exploring.start();
        assertTrue(exploring.working().get());
        open.until(() -> !exploring.working().get());

        TradeOff picture = exploring.picture().get().orElseThrow();
        holdGrown(grown.get(grown.size() - 1), picture);
        List<String> drawn =
                picture.points().stream().filter(p -> !p.found()).map(p -> p.id()).toList();
        List<String> found =
                picture.points().stream().filter(p -> p.found()).map(p -> p.id()).toList();
        assertEquals(open.desk().candidates(), drawn.stream().sorted().toList());
        assertFalse(found.isEmpty());
        assertEquals(CriterionName.WEIGHT, picture.across().criterion());
        exploring.across().set(CriterionName.COST);
        assertEquals(
                CriterionName.COST, exploring.picture().get().orElseThrow().across().criterion());

        exploring.open(found.get(0));
        assertEquals(AreaName.DRAW, open.visited().get(0).area());
        assertEquals(Optional.of(found.get(0)), offers.chosen().get().map(OfferedDrawing::name));
        assertEquals(found.size(), offers.offered().get().orElseThrow().offers().size());
        assertEquals(Optional.empty(), offers.save());
        assertEquals(found.get(0), open.desk().candidate().get());
        open.until(() -> !open.desk().work().busy("Reading the study"));
        assertEquals(List.of(), open.desk().read().get().problems());
        assertTrue(exploring.words().get().contains("before the last changes"));

        exploring.open("one-bus");
        assertEquals(Optional.of("one-bus"), open.visited().get(1).candidate());
    }

    /** What is shown by then is found in the end, too, and has no drawing before. */
    private void holdGrown(TradeOff last, TradeOff whole) {
        List<TradeOff.Plotted> found = last.points().stream().filter(p -> p.found()).toList();
        assertFalse(found.isEmpty());
        for (TradeOff.Plotted point : found) {
            double here = kilograms(point);
            assertTrue(
                    whole.points().stream()
                            .anyMatch(p -> p.found() && Math.abs(kilograms(p) - here) < 0.06),
                    () -> point + " is not among " + whole.points());
        }
        exploring.open(found.get(0).id());
        assertEquals(List.of(), open.visited());
    }

    private static double kilograms(TradeOff.Plotted point) {
        return Double.parseDouble(point.values().substring(0, point.values().indexOf(' ')));
    }

    @Thorough
    @Test
    void callingItOffLeavesWhatWasThereBefore() {
        open.until(() -> open.desk().results().get().assessment().isPresent());
        exploring.start();
        open.until(() -> exploring.picture().get().isPresent());
        exploring.cancel();
        open.until(() -> !exploring.working().get());
        assertEquals(Optional.empty(), exploring.picture().get());
    }

    @Test
    void aStudyWithAMistakeIsRefusedInWords() {
        Desk desk = open.desk();
        desk.attempt(Change.typing("one-bus.yaml", "candidate: [no"));
        exploring.start();
        open.until(() -> !exploring.working().get());
        assertTrue(exploring.words().get().contains("mistake"), exploring.words().get());
        assertEquals(Optional.empty(), exploring.picture().get());
    }

    @Thorough
    @Test
    void whatWasFoundGoesOntoThePageAsLongAsTheStudyStaysTheSame() {
        Desk desk = open.desk();
        Explaining explaining = new Explaining(desk, NamedFailures::cases);
        explaining.sizes().set(false);
        explaining.explored().set(true);
        assertFalse(explaining.searched().get());
        assertFalse(page(explaining).contains("id=\"explored\""));

        exploring.start();
        open.until(() -> !exploring.working().get());
        assertTrue(explaining.searched().get());
        assertTrue(explaining.stale());
        String page = page(explaining);
        assertTrue(page.contains("id=\"explored\""));
        assertTrue(page.contains("What else was looked at"));
        assertTrue(page.contains("Simpler on paper is not yet buildable"));

        desk.attempt(Change.typing("one-bus.yaml", text(desk).replace("One bus", "Our bus")));
        open.until(() -> !desk.work().busy("Reading the study"));
        assertFalse(explaining.searched().get());
    }

    /** Nothing is looked at twice in one study; another study is looked at from the beginning. */
    @Thorough
    @Test
    void lookingAgainGoesOnFromWhatWasLookedAt() {
        exploring.start();
        open.until(() -> !exploring.working().get());
        int looked = exploring.lookedAt();
        assertTrue(looked > 2, looked + " layouts");
        List<TradeOff.Plotted> before = exploring.picture().get().orElseThrow().points();
        exploring.start();
        open.until(() -> !exploring.working().get());
        assertEquals(looked, exploring.lookedAt());
        assertEquals(before, exploring.picture().get().orElseThrow().points());

        Desk desk = open.desk();
        desk.attempt(Change.typing("one-bus.yaml", text(desk).replace("One bus", "Our bus")));
        open.until(() -> !desk.work().busy("Reading the study"));
        exploring.start();
        exploring.stop();
        open.until(() -> !exploring.working().get());
        assertTrue(exploring.lookedAt() < looked, exploring.lookedAt() + " of " + looked);
    }

    private static String text(Desk desk) {
        return desk.draft().document("one-bus.yaml").map(YamlDocument::text).orElseThrow();
    }

    private String page(Explaining explaining) {
        explaining.write();
        open.until(() -> !explaining.working().get());
        return explaining.page().get().orElseThrow().html();
    }
}
