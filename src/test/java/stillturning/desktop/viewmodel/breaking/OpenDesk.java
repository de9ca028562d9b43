package stillturning.desktop.viewmodel.breaking;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import javafx.beans.property.SimpleObjectProperty;
import stillturning.desktop.draft.Draft;
import stillturning.desktop.viewmodel.BackgroundWork;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Settings;
import stillturning.files.Samples;

/**
 * A sample study on a desk without a screen; what arrives in the background is taken when asked.
 */
final class OpenDesk implements AutoCloseable {

    /** The name of the smaller sample. */
    static final String SMALL = "first-steps";

    private final BlockingQueue<Runnable> screen = new LinkedBlockingQueue<>();
    private final BackgroundWork work = new BackgroundWork(screen::add);
    final Draft draft;
    final Desk desk;

    OpenDesk(String sample, Path folder) throws IOException {
        Samples.copy(sample, folder);
        draft = Draft.open(folder);
        desk =
                new Desk(
                        draft,
                        Desk.reading(draft),
                        work,
                        new SimpleObjectProperty<>(Settings.USUAL));
    }

    /** Takes answers until nothing is under way. */
    void settle() {
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

    @Override
    public void close() {
        work.close();
        draft.leave();
    }
}
