package stillturning.desktop.view.window;

import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.WindowEvent;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Settings;

/** What menus and keys can ask of the window. */
final class WindowCommands {

    private final Window window;

    WindowCommands(Window window) {
        this.window = window;
    }

    void show(AreaName area) {
        if (area == AreaName.START || window.study().isPresent()) {
            window.show(area);
        }
    }

    void chooseStudy() {
        window.chooseStudy();
    }

    void open(String folder) {
        window.open(Path.of(folder));
    }

    void closeStudy() {
        window.closeStudy();
    }

    void save() {
        window.study().ifPresent(study -> study.upkeep().save());
    }

    void undo() {
        desk().ifPresent(Desk::undo);
    }

    void redo() {
        desk().ifPresent(Desk::redo);
    }

    private Optional<Desk> desk() {
        return window.study().map(OpenStudy::desk);
    }

    /** Letters and symbols larger or smaller by a step; the usual size for 0. */
    void scale(int steps) {
        Settings now = window.settings().get();
        int percent = steps == 0 ? Settings.SMALLEST_PERCENT : now.scalePercent() + 25 * steps;
        window.settings().set(now.scaled(percent));
    }

    void about() {
        About.show(window.stage());
    }

    void quit() {
        window.stage().fireEvent(new WindowEvent(window.stage(), WindowEvent.WINDOW_CLOSE_REQUEST));
        window.stage().close();
    }
}
