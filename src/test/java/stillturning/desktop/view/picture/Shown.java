package stillturning.desktop.view.picture;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeoutException;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.testfx.api.FxToolkit;
import stillturning.desktop.view.Theme;
import stillturning.files.StudyReader;
import stillturning.model.Study;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.oneline.CandidateDrawing;

/** A stage for one view, and diagrams to show on it. */
final class Shown {

    private Shown() {}

    static Diagram sandpiper(String candidate) {
        return candidate(Path.of("architectures/sandpiper"), candidate);
    }

    static Diagram candidate(Path folder, String candidate) {
        Study study = StudyReader.read(folder).study().orElseThrow();
        return CandidateDrawing.of(study.candidate(candidate).orElseThrow(), study);
    }

    static Stage stage(Parent root, double width, double height) {
        try {
            FxToolkit.registerPrimaryStage();
        } catch (TimeoutException slow) {
            throw new IllegalStateException(slow);
        }
        return on(
                () -> {
                    Theme.loadFonts();
                    theme(false);
                    Stage stage = new Stage();
                    stage.setScene(new Scene(root, width, height));
                    stage.show();
                    return stage;
                });
    }

    static void theme(boolean dark) {
        Application.setUserAgentStylesheet(
                dark
                        ? new PrimerDark().getUserAgentStylesheet()
                        : new PrimerLight().getUserAgentStylesheet());
    }

    static void run(Runnable action) {
        on(
                () -> {
                    action.run();
                    return true;
                });
    }

    static <T> T on(Callable<T> action) {
        FutureTask<T> task = new FutureTask<>(action);
        Platform.runLater(task);
        try {
            return task.get();
        } catch (InterruptedException | ExecutionException e) {
            throw new IllegalStateException(e);
        }
    }

    static void write(Scene scene, Path file) {
        WritableImage image = on(() -> scene.snapshot(null));
        BufferedImage copy =
                new BufferedImage(
                        (int) image.getWidth(),
                        (int) image.getHeight(),
                        BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < copy.getHeight(); y++) {
            for (int x = 0; x < copy.getWidth(); x++) {
                copy.setRGB(x, y, image.getPixelReader().getArgb(x, y));
            }
        }
        try {
            ImageIO.write(copy, "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
