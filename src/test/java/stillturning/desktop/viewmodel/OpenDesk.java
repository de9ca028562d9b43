package stillturning.desktop.viewmodel;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Executor;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import stillturning.desktop.draft.Draft;

/** A desk over a copy of a shipped study, whose screen's thread is the test's. */
public final class OpenDesk {

    private static final int PATIENCE_SECONDS = 120;

    private final BlockingQueue<Runnable> screen = new LinkedBlockingQueue<>();
    private final List<Destination> visited = new ArrayList<>();
    private final ObjectProperty<Settings> settings = new SimpleObjectProperty<>(Settings.USUAL);
    private final Desk desk;

    private OpenDesk(Path folder) throws IOException {
        desk = open(folder, screen::add, settings);
        desk.guide(visited::add);
    }

    /** A desk over a study, on another screen's thread. */
    public static Desk at(Executor screen, Path folder) throws IOException {
        return open(folder, screen, new SimpleObjectProperty<>(Settings.USUAL));
    }

    private static Desk open(Path folder, Executor screen, ObjectProperty<Settings> settings)
            throws IOException {
        Draft draft = Draft.open(folder);
        return new Desk(draft, Desk.reading(draft), new BackgroundWork(screen), settings);
    }

    /** Copies a study into a folder and opens it. */
    public static OpenDesk over(String study, Path folder) throws IOException {
        copy(study, folder);
        return new OpenDesk(folder);
    }

    /** Copies the files of a shipped study. */
    public static void copy(String study, Path folder) throws IOException {
        try (DirectoryStream<Path> files =
                Files.newDirectoryStream(Path.of("architectures", study), "*.yaml")) {
            for (Path file : files) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
    }

    public Desk desk() {
        return desk;
    }

    /** Where the desk was asked to go, in order. */
    public List<Destination> visited() {
        return visited;
    }

    /** Does what arrives on the screen's thread until something holds. */
    public void until(BooleanSupplier holds) {
        try {
            while (!holds.getAsBoolean()) {
                Runnable next = screen.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
                if (next == null) {
                    fail("nothing more arrives on the screen's thread");
                }
                next.run();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            fail("interrupted");
        }
    }

    /** Does what arrives until everything is found out anew. */
    public void untilAssessed() {
        until(() -> desk.results().get().assessment().isPresent() && !desk.stale());
    }
}
