package stillturning.desktop.viewmodel.draw;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.desktop.draft.Draft;
import stillturning.desktop.viewmodel.BackgroundWork;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Settings;
import stillturning.files.Samples;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Point;

class BoardTest {

    @TempDir Path folder;

    private final BlockingQueue<Runnable> screen = new LinkedBlockingQueue<>();
    private final BackgroundWork work = new BackgroundWork(screen::add);
    private Draft draft;
    private Desk desk;
    private Board board;

    @BeforeEach
    void open() throws IOException {
        Samples.copy("first-steps", folder);
        draft = Draft.open(folder);
        desk =
                new Desk(
                        draft,
                        Desk.reading(draft),
                        work,
                        new SimpleObjectProperty<>(Settings.USUAL));
        desk.open("one-bus");
        board = new Board(desk, new SimpleDoubleProperty(1.3));
        settle();
    }

    @AfterEach
    void close() {
        work.close();
        draft.leave();
    }

    private void settle() {
        while (!work.running().isEmpty()) {
            try {
                Runnable told = screen.poll(60, TimeUnit.SECONDS);
                assertTrue(told != null, () -> "nothing came of " + work.running());
                told.run();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    private String text() {
        return new SideText(desk).text();
    }

    private void add(String search) {
        board.add(board.palette(search).get(0));
        settle();
    }

    @Test
    void partsAreAddedJoinedDoubledDeletedAndAllIsUndone() {
        SortedMap<String, String> before = draft.state().texts();
        add("battery lifepo4");
        assertEquals(List.of("battery-2"), board.chosen());
        board.join("battery-2", "plus", "main-bus", "in");
        settle();
        assertEquals("", board.said().get());
        assertTrue(text().contains("from battery-2 to main-bus"), text());
        board.join("battery-2", "minus", "computer-minus-ground", "in");
        settle();
        assertTrue(text().contains("from battery-2.minus to panel-ground"), text());
        mendGauge("battery-2-to-main-bus");
        mendGauge("battery-2-minus");
        assertTrue(
                board.findings().all().stream().noneMatch(f -> f.mistake()),
                "" + board.findings().all());
        board.choose(List.of("battery-2"));
        board.duplicate();
        settle();
        assertEquals(1, board.chosen().size());
        board.delete();
        settle();
        assertEquals(List.of(), board.chosen());
        while (desk.texts().get().undo().isPresent()) {
            desk.undo();
        }
        settle();
        assertEquals(before, draft.state().texts());
    }

    /** Follows the finding about a run whose gauge nothing tells, and writes one. */
    private void mendGauge(String run) {
        board.follow(
                board.findings().all().stream()
                        .filter(f -> f.path().equals("links." + run))
                        .findFirst()
                        .orElseThrow());
        FormRow row = row(board.sheet(), run.replace('-', ' '));
        board.sheet().take(row, row.text().replace(", wire", ", wire AWG 4"));
        settle();
    }

    @Test
    void aFaultStaysBesideItsFieldUntilItIsMended() {
        board.choose(List.of("battery"));
        PropertySheet sheet = board.sheet();
        String whole = text();
        FormRow capacity = row(sheet, "capacity");
        sheet.take(capacity, "18");
        assertEquals("18", row(sheet, "capacity").text());
        assertTrue(row(sheet, "capacity").fault().orElseThrow().wrong().contains("no unit"));
        assertEquals(whole, text());
        sheet.take(row(sheet, "capacity"), "19 Ah");
        assertTrue(row(sheet, "capacity").fault().isEmpty());
        assertTrue(text().contains("capacity: 19 Ah"));
        assertEquals("Set capacity of battery", desk.texts().get().undo().orElseThrow());
        sheet.take(row(sheet, "capacity"), "");
        assertFalse(text().contains("capacity: 19 Ah"));
        assertEquals("18 Ah (guess)", row(sheet, "capacity").otherwise());
    }

    @Test
    void aLoadIsAddedOnThePaperAndFedThere() {
        board.addLoad("heated-seat");
        settle();
        assertEquals(List.of("heated-seat"), board.chosen());
        assertFalse(board.chosenKeys().isEmpty());
        assertTrue(board.said().get().contains("guesses"), board.said().get());
        String other =
                draft.state().texts().entrySet().stream()
                        .filter(
                                e ->
                                        !e.getKey().equals("study.yaml")
                                                && !e.getKey().equals("one-bus.yaml"))
                        .map(java.util.Map.Entry::getValue)
                        .findFirst()
                        .orElseThrow();
        assertTrue(other.contains("heated-seat"), other);
        board.join("heated-seat", "plus", "main-bus", "in");
        settle();
        assertTrue(text().contains("heated-seat: from main-bus"), text());
        board.addLoad("two words");
        assertTrue(board.said().get().contains("two words"), board.said().get());
    }

    @Test
    void aLoadShowsItsFeedsAndTheStudysValues() {
        board.choose(List.of("radio"));
        assertEquals("from main-bus, breaker 5 A", row(board.sheet(), "radio").text());
        board.sheet().take(row(board.sheet(), "draws"), "2 A (measured)");
        settle();
        assertTrue(draft.state().texts().getOrDefault("study.yaml", "").contains("2 A (measured)"));
    }

    @Test
    void groupsOpenAndEntriesAreAdded() {
        board.choose(List.of());
        PropertySheet sheet = board.sheet();
        sheet.open(row(sheet, "sees"));
        assertTrue(sheet.inside().get());
        assertTrue(sheet.adding().get().orElseThrow().kinds().contains("engine"));
        sheet.add("silence", Optional.of("engine"));
        settle();
        assertTrue(text().contains("silence: {watches: engine}"), text());
        sheet.back();
        assertFalse(sheet.inside().get());
    }

    @Test
    void anotherCandidateIsComputedWhileThisOneIsBroken() {
        new SideText(desk).type(text().replace("is: alternator", "is: alternater"));
        settle();
        assertTrue(board.findings().all().get(0).mistake());
        assertEquals(List.of("one-bus"), desk.reading().get().broken());
        assertTrue(desk.study().orElseThrow().candidate("bus-and-battery").isPresent());
        assertTrue(board.laid().get().isPresent());
    }

    private static FormRow row(PropertySheet sheet, String label) {
        return sheet.rows().stream()
                .filter(r -> r.label().equals(label))
                .findFirst()
                .orElseThrow(() -> new AssertionError(label + " among " + sheet.rows()));
    }

    @Test
    void aLoadGetsAnotherNameInEveryCandidate() {
        board.choose(List.of("radio"));
        board.rename("com-radio");
        settle();
        assertEquals(List.of("com-radio"), board.chosen());
        draft.state()
                .texts()
                .values()
                .forEach(file -> assertFalse(file.matches("(?s).*[ {]radio[:.].*"), file));
        board.choose(List.of("computer"));
        board.rename("com-radio");
        assertEquals(
                "the load \"com-radio\" is there already; take another name", board.said().get());
    }

    @Test
    void aLoadIsDeletedFromTheStudyUnlessTheEngineNeedsIt() {
        board.choose(List.of("radio"));
        board.delete();
        assertEquals(Optional.of("radio"), board.loadToDelete().asked().get());
        board.loadToDelete().deleteEverywhere();
        settle();
        assertEquals(Optional.empty(), board.loadToDelete().asked().get());
        draft.state().texts().values().forEach(file -> assertFalse(file.contains("radio:"), file));
        board.choose(List.of("computer"));
        board.delete();
        board.loadToDelete().deleteEverywhere();
        assertTrue(board.said().get().contains("the engine needs"), board.said().get());
    }

    @Test
    void aPartLiesWhereItWasDroppedUntilItIsJoined() {
        Point at = new Point(board.laid().get().orElseThrow().picture().width() + 200, 300);
        board.add(board.palette("breaker").get(0), at);
        settle();
        String key = board.chosenKeys().get(0);
        Box there = lies(key);
        assertEquals(at.x(), there.x() + there.width() / 2, 12);
        assertEquals(at.y(), there.y() + there.height() / 2, 12);
        add("fuse");
        Box still = lies(key);
        assertEquals(there, still, "another part does not move it");
    }

    private Box lies(String key) {
        return requireNonNull(board.laid().get().orElseThrow().sheet().spots().get(key)).box();
    }
}
