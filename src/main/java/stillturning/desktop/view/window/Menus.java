package stillturning.desktop.view.window;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import stillturning.desktop.draft.DraftState;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Settings;
import stillturning.desktop.viewmodel.Settings.Paper;
import stillturning.desktop.viewmodel.Settings.Units;

/** The menus; each command has a key. */
final class Menus extends MenuBar {

    private final ObjectProperty<Settings> settings;
    private final WindowCommands commands;
    private final Menu recent = new Menu("Open again");
    private final MenuItem save;
    private final MenuItem close;
    private final MenuItem undo;
    private final MenuItem redo;

    Menus(ObjectProperty<Settings> settings, WindowCommands commands) {
        this.settings = settings;
        this.commands = commands;
        save = item("Save", control(KeyCode.S), commands::save);
        close = item("Close study", control(KeyCode.W), commands::closeStudy);
        undo = item("Undo", control(KeyCode.Z), commands::undo);
        redo =
                item(
                        "Redo",
                        new KeyCodeCombination(
                                KeyCode.Z, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN),
                        commands::redo);
        getMenus().addAll(study(), new Menu("Edit", null, undo, redo), view(), help());
        settings.addListener((of, before, now) -> listRecent());
        listRecent();
    }

    private Menu study() {
        return new Menu(
                "Study",
                null,
                item("New \u2026", control(KeyCode.N), () -> commands.show(AreaName.START)),
                item("Open a folder \u2026", control(KeyCode.O), commands::chooseStudy),
                recent,
                new SeparatorMenuItem(),
                save,
                close,
                new SeparatorMenuItem(),
                item("Quit", control(KeyCode.Q), commands::quit));
    }

    private Menu view() {
        Menu view = new Menu("View");
        for (AreaName area : AreaName.values()) {
            KeyCode digit = KeyCode.getKeyCode(String.valueOf(area.number()));
            view.getItems().add(item(area.words(), control(digit), () -> commands.show(area)));
        }
        view.getItems()
                .addAll(
                        new SeparatorMenuItem(),
                        chosen(
                                "Dark",
                                settings.get().paper() == Paper.DARK,
                                on -> settings.get().with(on ? Paper.DARK : Paper.LIGHT)),
                        chosen(
                                "Feet, pounds and degrees Fahrenheit",
                                settings.get().units() == Units.US,
                                on -> settings.get().with(on ? Units.US : Units.METRIC)),
                        new SeparatorMenuItem(),
                        item(
                                "Larger letters",
                                combination(KeyCode.PERIOD),
                                () -> commands.scale(1)),
                        item(
                                "Smaller letters",
                                combination(KeyCode.COMMA),
                                () -> commands.scale(-1)),
                        item(
                                "Usual letters",
                                combination(KeyCode.DIGIT0),
                                () -> commands.scale(0)));
        return view;
    }

    private Menu help() {
        return new Menu(
                "Help",
                null,
                item("About, and cautions", new KeyCodeCombination(KeyCode.F1), commands::about));
    }

    /** How the settings become by a choice. */
    private interface Choosing {
        Settings with(boolean chosen);
    }

    private CheckMenuItem chosen(String words, boolean now, Choosing choosing) {
        CheckMenuItem item = new CheckMenuItem(words);
        item.setSelected(now);
        item.setOnAction(event -> settings.set(choosing.with(item.isSelected())));
        return item;
    }

    private void listRecent() {
        recent.getItems()
                .setAll(
                        settings.get().recent().stream()
                                .map(
                                        folder ->
                                                item(
                                                        String.valueOf(
                                                                Path.of(folder).getFileName()),
                                                        () -> commands.open(folder)))
                                .toList());
        recent.setDisable(recent.getItems().isEmpty());
    }

    /** Nothing is open. */
    void clear() {
        Arrays.asList(save, close, undo, redo).forEach(item -> item.setDisable(true));
    }

    /** Follows an open study. */
    void follow(Desk desk) {
        close.setDisable(false);
        desk.texts().addListener((of, before, now) -> tell(now));
        tell(desk.texts().get());
    }

    private void tell(DraftState state) {
        save.setDisable(state.isSaved());
        name(undo, "Undo", state.undo());
        name(redo, "Redo", state.redo());
    }

    private static void name(MenuItem item, String word, Optional<String> what) {
        item.setText(what.map(w -> word + ": " + w).orElse(word));
        item.setDisable(what.isEmpty());
    }

    private static MenuItem item(String words, KeyCombination key, Runnable act) {
        MenuItem item = item(words, act);
        item.setAccelerator(key);
        return item;
    }

    private static MenuItem item(String words, Runnable act) {
        MenuItem item = new MenuItem(words);
        item.setOnAction(event -> act.run());
        return item;
    }

    private static KeyCombination control(KeyCode code) {
        return new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN);
    }

    private static KeyCombination combination(KeyCode code) {
        return new KeyCodeCombination(
                code, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);
    }
}
