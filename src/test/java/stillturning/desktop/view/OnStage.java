package stillturning.desktop.view;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.testfx.api.FxToolkit;
import stillturning.desktop.viewmodel.Settings;

/** One area on a stage that nobody sees. */
public final class OnStage {

    private static final long PATIENCE_SECONDS = 120;

    private final Stage stage;

    private OnStage(Stage stage) {
        this.stage = stage;
    }

    /** Starts the toolkit. */
    public static void start() {
        try {
            FxToolkit.registerPrimaryStage();
        } catch (TimeoutException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Shows an area as large as a small screen. */
    public static OnStage show(Area area) {
        return on(
                () -> {
                    Theme.loadFonts();
                    Stage stage = new Stage();
                    Scene scene = new Scene(area.view(), 1110, 720);
                    Theme.apply(scene, Settings.USUAL);
                    stage.setScene(scene);
                    stage.show();
                    return new OnStage(stage);
                });
    }

    /** The control of this name. */
    public <T extends Node> T find(Class<T> kind, String name) {
        return on(() -> kind.cast(stage.getScene().lookup("#" + name)));
    }

    /** What is shown; to be used on the screen's thread. */
    public Scene scene() {
        return stage.getScene();
    }

    /** Presses a key while a control has the focus. */
    public void press(Node control, KeyCode key) {
        on(
                () -> {
                    control.requestFocus();
                    for (EventType<KeyEvent> type :
                            List.of(KeyEvent.KEY_PRESSED, KeyEvent.KEY_RELEASED)) {
                        KeyEvent event =
                                new KeyEvent(type, "", "", key, false, false, false, false);
                        Event.fireEvent(control, event);
                    }
                    return true;
                });
    }

    /** Takes the stage away. */
    public void close() {
        on(
                () -> {
                    stage.close();
                    return true;
                });
    }

    /** Waits until something is so, looked at on the screen's thread. */
    public static void until(BooleanSupplier so) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!on(so::getAsBoolean)) {
            if (System.nanoTime() > end) {
                throw new AssertionError("it did not come about");
            }
            pause();
        }
    }

    private static void pause() {
        try {
            Thread.sleep(20);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Does something on the screen's thread. */
    public static <T> T on(Callable<T> work) {
        CompletableFuture<T> done = new CompletableFuture<>();
        Platform.runLater(
                () -> {
                    try {
                        done.complete(work.call());
                    } catch (Throwable e) {
                        done.completeExceptionally(e);
                    }
                });
        return done.orTimeout(PATIENCE_SECONDS, TimeUnit.SECONDS).join();
    }
}
