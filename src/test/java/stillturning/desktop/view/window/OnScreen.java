package stillturning.desktop.view.window;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.testfx.api.FxToolkit;
import stillturning.desktop.viewmodel.Settings;
import stillturning.desktop.viewmodel.SettingsFile;

/** The real window on a screen that nobody sees. */
final class OnScreen {

    private static final long PATIENCE_SECONDS = 300;

    final Stage stage;
    final Window window;

    private OnScreen(Stage stage, Window window) {
        this.stage = stage;
        this.window = window;
    }

    /** Opens the window with these settings, kept in a folder of the test's. */
    static OnScreen open(Path folder, Settings settings, double width, double height) {
        try {
            FxToolkit.registerPrimaryStage();
            SettingsFile file = new SettingsFile(folder.resolve("settings.properties"));
            file.write(settings);
            return on(
                    () -> {
                        stillturning.desktop.view.Theme.loadFonts();
                        Stage stage = new Stage();
                        Window window = new Window(stage, file, address -> {});
                        stage.setWidth(width);
                        stage.setHeight(height);
                        window.show();
                        return new OnScreen(stage, window);
                    });
        } catch (IOException | TimeoutException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Opens a study and waits until it is there and nothing is computed any more. */
    void study(Path folder) {
        on(
                () -> {
                    window.open(folder);
                    return true;
                });
        until(
                () ->
                        window.study()
                                .filter(s -> s.desk().draft().folder().equals(folder))
                                .isPresent());
        settle();
    }

    /** Waits until nothing is computed any more. */
    void settle() {
        until(() -> window.study().map(s -> s.desk().work().running().isEmpty()).orElse(true));
    }

    /** Waits until something is so, looked at on the screen's thread. */
    static void until(BooleanSupplier so) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!on(so::getAsBoolean)) {
            if (System.nanoTime() > end) {
                throw new AssertionError("it did not come about");
            }
            pause(20);
        }
    }

    static void pause(long milliseconds) {
        try {
            Thread.sleep(milliseconds);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Does something on the screen's thread. */
    static <T> T on(Callable<T> work) {
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

    /** What the window shows, as a PNG. */
    void picture(Path file) {
        BufferedImage image =
                on(
                        () -> {
                            WritableImage seen = stage.getScene().snapshot(null);
                            PixelReader pixels = seen.getPixelReader();
                            BufferedImage copy =
                                    new BufferedImage(
                                            (int) seen.getWidth(),
                                            (int) seen.getHeight(),
                                            BufferedImage.TYPE_INT_RGB);
                            for (int y = 0; y < copy.getHeight(); y++) {
                                for (int x = 0; x < copy.getWidth(); x++) {
                                    copy.setRGB(x, y, pixels.getArgb(x, y));
                                }
                            }
                            return copy;
                        });
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            ImageIO.write(image, "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void close() {
        on(
                () -> {
                    window.close();
                    stage.close();
                    return true;
                });
    }
}
