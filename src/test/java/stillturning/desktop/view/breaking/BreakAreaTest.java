package stillturning.desktop.view.breaking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;
import stillturning.bench.Thorough;
import stillturning.desktop.draft.Draft;
import stillturning.desktop.view.Theme;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.BackgroundWork;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.Settings;
import stillturning.files.Samples;
import stillturning.report.EventLines;

/** The Break area on a screen that nobody sees. */
@Timeout(300)
class BreakAreaTest {

    private static final String SHORT = "main-bus: short to ground";
    private static final long PATIENCE_SECONDS = 200;

    private final List<Destination> gone = new ArrayList<>();
    @TempDir private Path folder;
    private Draft draft;
    private BackgroundWork work;
    private Desk desk;
    private BreakArea area;
    private Stage stage;

    @BeforeEach
    @SuppressWarnings("NullAway.Init") // made before each test
    void open() throws Exception {
        FxToolkit.registerPrimaryStage();
        Path study = folder.resolve("study");
        Samples.copy("first-steps", study);
        draft = Draft.open(study);
        on(
                () -> {
                    Theme.loadFonts();
                    work = new BackgroundWork(Platform::runLater);
                    desk =
                            new Desk(
                                    draft,
                                    Desk.reading(draft),
                                    work,
                                    new SimpleObjectProperty<>(Settings.USUAL));
                    desk.open("one-bus");
                    desk.guide(gone::add);
                    area = new BreakArea(desk);
                    stage = new Stage();
                    Scene scene = new Scene(area.view(), 1130, 700);
                    Theme.apply(scene, Settings.USUAL);
                    stage.setScene(scene);
                    stage.show();
                    return true;
                });
        settle();
    }

    @AfterEach
    void close() {
        on(
                () -> {
                    stage.close();
                    work.close();
                    return true;
                });
        draft.leave();
    }

    private static <T> T on(Callable<T> work) {
        CompletableFuture<T> done = new CompletableFuture<>();
        Platform.runLater(
                () -> {
                    try {
                        done.complete(work.call());
                    } catch (Exception | AssertionError e) {
                        done.completeExceptionally(e);
                    }
                });
        return done.orTimeout(PATIENCE_SECONDS, TimeUnit.SECONDS).join();
    }

    private void settle() throws InterruptedException {
        while (!on(() -> work.running().isEmpty())) {
            Thread.sleep(20);
        }
        on(
                () -> {
                    area.view().applyCss();
                    area.view().layout();
                    return true;
                });
    }

    private <N extends Node> N find(String id, Class<N> kind) {
        return kind.cast(area.view().lookup("#" + id));
    }

    private String words(String id) {
        return on(() -> find(id, Label.class).getText());
    }

    private int lines() {
        return on(() -> find("story-lines", ListView.class).getItems().size());
    }

    private void press(String id, KeyCode key) {
        on(
                () -> {
                    Node node = find(id, Node.class);
                    node.fireEvent(
                            new KeyEvent(
                                    KeyEvent.KEY_PRESSED, "", "", key, false, false, false, false));
                    return true;
                });
    }

    private void pickShort() throws InterruptedException {
        on(
                () -> {
                    find("failure-search", TextField.class).setText("main bus short");
                    return true;
                });
        press("failure-search", KeyCode.ENTER);
        settle();
    }

    @Test
    void aFailureFoundByItsNameIsPlayedAndTold() throws InterruptedException {
        assertEquals("Nothing fails", words("break-outcome"));
        assertEquals(0, lines());
        pickShort();
        assertTrue(words("break-outcome").endsWith("engine lost"), words("break-outcome"));
        assertTrue(lines() > 4, lines() + " lines");
        assertTrue(on(() -> find("story-plot", Node.class).isVisible()));
        assertEquals("", words("break-notice"));
    }

    @Test
    void timeGoesFromEventToEventByButtonsKeysAndLines() throws InterruptedException {
        pickShort();
        assertEquals("0 ms", words("time-now"));
        on(
                () -> {
                    find("time-on", Button.class).fire();
                    return true;
                });
        String first = words("time-now");
        assertNotEquals("0 ms", first);
        press("time-track", KeyCode.RIGHT);
        assertNotEquals(first, words("time-now"));
        press("time-track", KeyCode.LEFT);
        assertEquals(first, words("time-now"));
        press("time-track", KeyCode.HOME);
        assertEquals("0 ms", words("time-now"));
        EventLines.EventLine last =
                on(
                        () -> {
                            ListView<?> lines = find("story-lines", ListView.class);
                            lines.getSelectionModel().selectLast();
                            return (EventLines.EventLine)
                                    lines.getItems().get(lines.getItems().size() - 1);
                        });
        assertEquals(EventLines.time(last.seconds()), words("time-now"));
    }

    @Test
    void playingRunsByItselfAndCanBeHeld() throws InterruptedException {
        pickShort();
        Button play = find("time-play", Button.class);
        on(
                () -> {
                    play.fire();
                    return true;
                });
        while (words("time-now").equals("0 ms")) {
            Thread.sleep(20);
        }
        on(
                () -> {
                    play.fire();
                    return true;
                });
        String held = words("time-now");
        Thread.sleep(200);
        assertEquals(held, words("time-now"));
    }

    @Test
    void aPilotWhoDoesNothingIsAnotherStory() throws InterruptedException {
        on(
                () -> {
                    area.show(Destination.of(AreaName.BREAK, "one-bus", "alternator: no output"));
                    return true;
                });
        settle();
        int planned = lines();
        on(
                () -> {
                    find("pilot-never", ToggleButton.class).fire();
                    return true;
                });
        assertNotEquals(planned, lines());
    }

    @Test
    void aPartOfTheDiagramOffersItsFailures() throws InterruptedException {
        List<String> offered =
                on(
                        () ->
                                area.diagram().offers(Optional.of("main-bus")).stream()
                                        .map(MenuItem::getText)
                                        .toList());
        assertTrue(offered.contains("short to ground"), offered.toString());
        on(
                () -> {
                    area.diagram().offers(Optional.of("main-bus")).stream()
                            .filter(item -> "short to ground".equals(item.getText()))
                            .forEach(MenuItem::fire);
                    return true;
                });
        settle();
        assertTrue(words("break-outcome").endsWith("engine lost"), words("break-outcome"));
        assertEquals(List.of(), on(() -> area.diagram().offers(Optional.empty())));
    }

    @Test
    void aCellOfTheMatrixOpensItsStory() throws InterruptedException {
        on(
                () -> {
                    find("break-tabs", TabPane.class).getSelectionModel().select(1);
                    area.view().applyCss();
                    area.view().layout();
                    return true;
                });
        on(
                () -> {
                    find("matrix-search", TextField.class).setText("main bus short");
                    TableView<?> table = find("failure-matrix", TableView.class);
                    select(table, 1, 1);
                    return true;
                });
        press("failure-matrix", KeyCode.ENTER);
        String first = desk.study().orElseThrow().candidates().get(0).id();
        assertEquals(List.of(Destination.of(AreaName.BREAK, first, SHORT)), gone);
    }

    @Test
    void whatEachLoadHasIsListedForThePresentTime() throws InterruptedException {
        pickShort();
        on(
                () -> {
                    find("story-tabs", TabPane.class).getSelectionModel().select(1);
                    area.view().applyCss();
                    area.view().layout();
                    return true;
                });
        String first = loads();
        assertTrue(first.contains("rides through, stops in"), first);
        press("time-track", KeyCode.END);
        assertFalse(loads().contains("rides through"), loads());
        assertTrue(loads().contains("has stopped"), loads());
    }

    private String loads() {
        return on(() -> find("loads-now", ListView.class).getItems().toString());
    }

    @Thorough
    @Test
    void pairsLatentFailuresAndTheRunUpHaveAPlaceOfTheirOwn() throws InterruptedException {
        on(
                () -> {
                    find("break-tabs", TabPane.class).getSelectionModel().select(2);
                    area.view().applyCss();
                    area.view().layout();
                    return true;
                });
        assertTrue(words("together-words").contains("Every two failures"), words("together-words"));
        on(
                () -> {
                    find("together-start", Button.class).fire();
                    return true;
                });
        assertTrue(on(() -> find("together-cancel", Button.class).isVisible()));
        settle();
        List<String> heads =
                on(
                        () ->
                                find("together-found", Node.class)
                                        .lookupAll(".running-head")
                                        .stream()
                                        .map(n -> ((Label) n).getText())
                                        .toList());
        assertTrue(
                heads.containsAll(
                        List.of(
                                "Failures together, and how likely",
                                "Latent failures",
                                "Run-up card")),
                heads.toString());
        assertTrue(words("together-words").contains("One bus"), words("together-words"));
        List<String> cells = cells();
        assertTrue(cells.contains("of the sum (%)"), cells.toString());
        assertEquals(
                List.of(),
                cells.stream().filter(cell -> cell.matches("[<0-9., ]+ ?%")).toList(),
                "units stand in the heads");
    }

    private List<String> cells() {
        return on(
                () ->
                        find("together-found", Node.class)
                                .lookupAll(".running-table > .label")
                                .stream()
                                .map(n -> ((Label) n).getText())
                                .toList());
    }

    private static <T> void select(TableView<T> table, int row, int column) {
        table.getSelectionModel().select(row, table.getColumns().get(column));
    }
}
