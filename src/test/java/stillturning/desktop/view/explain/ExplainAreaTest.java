package stillturning.desktop.view.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.concurrent.Worker;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.web.WebView;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import stillturning.bench.Thorough;
import stillturning.desktop.view.Theme;
import stillturning.desktop.viewmodel.Settings;
import stillturning.desktop.viewmodel.explain.OpenStudy;

@ExtendWith(ApplicationExtension.class)
class ExplainAreaTest {

    private static final int PATIENCE_SECONDS = 60;

    @TempDir private static Path here;
    private final List<URI> opened = new ArrayList<>();

    @SuppressWarnings("NullAway.Init") // made before each test
    private OpenStudy study;

    private Path chosen = here;

    @Start
    void start(Stage stage) throws IOException {
        Path folder = Files.createTempDirectory(here, "study");
        chosen = folder.resolve("page.html");
        study = new OpenStudy("first-steps", folder, Platform::runLater);
        ExplainArea area =
                new ExplainArea(study.explaining(), opened::add, name -> Optional.of(chosen));
        Scene scene = new Scene(area.view(), 1280, 760);
        Theme.loadFonts();
        Theme.apply(scene, Settings.USUAL);
        stage.setScene(scene);
        stage.show();
    }

    @AfterEach
    void close() {
        Platform.runLater(study::close);
    }

    private static void until(BooleanSupplier reached) throws TimeoutException {
        WaitForAsyncUtils.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS, reached::getAsBoolean);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void press(FxRobot robot, String id) {
        robot.clickOn(id);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static String words(FxRobot robot, String id) {
        return robot.lookup(id).queryAs(Label.class).getText();
    }

    @Thorough
    @Test
    void aTypedRationaleStandsOnThePageWhichIsShownAndKept(FxRobot robot)
            throws TimeoutException, IOException {
        assertTrue(words(robot, "#explain-empty").contains("then write the page"));
        assertTrue(robot.lookup("#explain-save").query().isDisabled());
        press(robot, "#explain-rationale");
        robot.write("Light and plain.");
        robot.type(KeyCode.ENTER, 2);
        robot.write("We land soon.");
        assertEquals("2 paragraphs, 6 words", words(robot, "#explain-count"));

        press(robot, "#explain-write");
        until(() -> robot.lookup("#explain-page").tryQuery().isPresent());
        WebView web = robot.lookup("#explain-page").queryAs(WebView.class);
        until(() -> onScreen(() -> loaded(web)));

        assertEquals("Change the rationale", study.lastChange());
        assertTrue(shown(web).contains("We land soon."), shown(web));
        assertEquals(
                false,
                onScreen(
                        () ->
                                web.getEngine()
                                        .executeScript(
                                                "document.getElementById('explore').hidden")));
        assertFalse(robot.lookup("#explain-empty").query().isVisible());
        press(robot, "#explain-open");
        assertEquals(List.of(study.explaining().page().get().orElseThrow().at()), opened);
        press(robot, "#explain-save");
        assertEquals("Written: " + chosen, words(robot, "#explain-notice"));
        assertEquals(Files.readString(Path.of(opened.get(0))), Files.readString(chosen));
    }

    @Thorough
    @Test
    void aStrangersFileIsAskedForInTheAreaItselfAndWithoutAPrinterAWayIsTold(FxRobot robot)
            throws TimeoutException, IOException {
        Files.writeString(chosen, "my own words");
        press(robot, "#explain-write");
        until(() -> !robot.lookup("#explain-save").query().isDisabled());
        press(robot, "#explain-save");
        assertTrue(words(robot, "#explain-notice").contains("Replace it?"));
        press(robot, "#explain-keep");
        assertEquals("my own words", Files.readString(chosen));
        assertFalse(robot.lookup("#explain-replace").query().isVisible());
        press(robot, "#explain-save");
        press(robot, "#explain-replace");
        assertTrue(Files.readString(chosen).contains("First steps"));
        press(robot, "#explain-print");
        assertTrue(words(robot, "#explain-notice").contains("No printer is set up"));
    }

    @Thorough
    @Test
    void whatWasMeasuredIsEnteredComparedAndAddedToTheRecordBesideTheGroundTest(FxRobot robot)
            throws TimeoutException, IOException {
        study.desk().open("one-bus");
        press(robot, "#explain-record");
        until(() -> robot.lookup("#record-groups").queryListView().getItems().size() > 3);
        robot.interact(
                () -> robot.lookup("#record-groups").queryListView().getSelectionModel().select(1));
        WaitForAsyncUtils.waitForFxEvents();
        TextField radio = field(robot, "entry-loads.radio");
        robot.interact(radio::requestFocus);
        robot.write("2.9 A at 12.4 V");
        assertTrue(robot.lookup("#record-add").query().isDisabled());
        press(robot, "#record-compare");
        until(() -> !robot.lookup("#record-add").query().isDisabled());
        assertTrue(words(robot, "#record-advice").startsWith("Compared."));
        press(robot, "#record-add");
        String advice = words(robot, "#record-advice");
        assertTrue(advice.startsWith("Added to the record: "), advice);
        Path record = chosen.resolveSibling("copy").resolve("measured").resolve("one-bus.yaml");
        String day = field(robot, "record-day").getText();
        assertTrue(Files.readString(record).contains("date: \"" + day + "\""));
        press(robot, "#record-back");
        assertTrue(robot.lookup("#explain-empty").query().isVisible());
    }

    /** A place in a form has points in it, which a selector would take for classes. */
    private static TextField field(FxRobot robot, String id) {
        return robot.lookup((Node node) -> id.equals(node.getId())).queryAs(TextField.class);
    }

    private static boolean loaded(WebView web) {
        return web.getEngine().getLoadWorker().getState() == Worker.State.SUCCEEDED;
    }

    private static String shown(WebView web) {
        return onScreen(() -> web.getEngine().getDocument().getDocumentElement().getTextContent());
    }

    private static <T> T onScreen(Callable<T> asked) {
        return WaitForAsyncUtils.waitForAsyncFx(1000L * PATIENCE_SECONDS, asked);
    }
}
