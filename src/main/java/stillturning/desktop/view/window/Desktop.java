package stillturning.desktop.view.window;

import java.nio.file.Path;
import java.util.List;
import javafx.application.Application;
import javafx.stage.Stage;
import stillturning.desktop.view.Theme;
import stillturning.desktop.viewmodel.SettingsFile;

/** The desktop program. */
public final class Desktop extends Application {

    /**
     * Opens the window and returns when it is closed.
     *
     * @param studies folders of studies, of which the first is opened; may be empty
     * @throws RuntimeException if no window can be opened here
     */
    public static void open(List<Path> studies) {
        launch(
                Desktop.class,
                studies.stream().map(p -> p.toAbsolutePath().toString()).toArray(String[]::new));
    }

    @Override
    public void start(Stage stage) {
        Theme.loadFonts();
        Window window =
                new Window(
                        stage,
                        SettingsFile.usual(),
                        address -> getHostServices().showDocument(address.toString()));
        window.show();
        getParameters().getRaw().stream().findFirst().map(Path::of).ifPresent(window::open);
    }
}
