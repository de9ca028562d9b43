package stillturning.desktop.view;

import java.net.URI;
import java.util.function.Consumer;
import javafx.stage.Stage;

/**
 * What areas may ask of the window.
 *
 * @param stage the window, for choosers that belong to it
 * @param browser opens an address outside this program
 */
public record AreaHost(Stage stage, Consumer<URI> browser) {}
