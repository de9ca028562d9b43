package stillturning.desktop.view.window;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Predicate;
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
import stillturning.desktop.view.Controls;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Settings;
import stillturning.desktop.viewmodel.Settings.SidePanels;
import stillturning.quantity.UnitSystem;
import stillturning.report.drawing.Paper;

/** The menus; each command has a key. */
final class Menus extends MenuBar {

    private final ObjectProperty<Settings> settings;
    private final Window window;
    private final Menu recent = new Menu("Open again");
    private final MenuItem save;
    private final MenuItem close;
    private final MenuItem undo;
    private final MenuItem redo;

    Menus(ObjectProperty<Settings> settings, Window window) {
        this.settings = settings;
        this.window = window;
        save = item("Save", Controls.control(KeyCode.S), window::save);
        close = item("Close study", Controls.control(KeyCode.W), window::closeStudy);
        undo = item("Undo", Controls.control(KeyCode.Z), window::undo);
        redo = item("Redo", combination(KeyCode.Z), window::redo);
        getMenus().addAll(study(), new Menu("Edit", null, undo, redo), view(), help());
        settings.addListener((of, before, now) -> listRecent());
        listRecent();
    }

    private Menu study() {
        return new Menu(
                "Study",
                null,
                item("New \u2026", Controls.control(KeyCode.N), () -> window.show(AreaName.START)),
                item("Open a folder \u2026", Controls.control(KeyCode.O), window::chooseStudy),
                recent,
                new SeparatorMenuItem(),
                save,
                close,
                new SeparatorMenuItem(),
                item("Quit", Controls.control(KeyCode.Q), window::quit));
    }

    private Menu view() {
        Menu view = new Menu("View");
        for (AreaName area : AreaName.values()) {
            KeyCode digit = KeyCode.getKeyCode(String.valueOf(area.number()));
            view.getItems()
                    .add(item(area.words(), Controls.control(digit), () -> window.show(area)));
        }
        view.getItems()
                .addAll(
                        new SeparatorMenuItem(),
                        chosen(
                                "Dark",
                                now -> now.paper() == Paper.DARK,
                                (now, on) -> now.with(on ? Paper.DARK : Paper.LIGHT)),
                        chosen(
                                "Feet, pounds and degrees Fahrenheit",
                                now -> now.units() == UnitSystem.US,
                                (now, on) -> now.with(on ? UnitSystem.US : UnitSystem.METRIC)),
                        new SeparatorMenuItem(),
                        key(
                                KeyCode.F7,
                                chosen(
                                        "What can be added, in Draw",
                                        now -> now.beside().additions(),
                                        (now, on) ->
                                                now.with(
                                                        new SidePanels(
                                                                on, now.beside().values())))),
                        key(
                                KeyCode.F8,
                                chosen(
                                        "Values and findings, in Draw",
                                        now -> now.beside().values(),
                                        (now, on) ->
                                                now.with(
                                                        new SidePanels(
                                                                now.beside().additions(), on)))),
                        new SeparatorMenuItem(),
                        item("Larger letters", combination(KeyCode.PERIOD), () -> window.scale(1)),
                        item("Smaller letters", combination(KeyCode.COMMA), () -> window.scale(-1)),
                        item("Usual letters", combination(KeyCode.DIGIT0), () -> window.scale(0)));
        return view;
    }

    private Menu help() {
        return new Menu(
                "Help",
                null,
                item("Questions and answers", new KeyCodeCombination(KeyCode.F1), window::guide),
                item(
                        "About, and cautions",
                        new KeyCodeCombination(KeyCode.F1, KeyCombination.SHIFT_DOWN),
                        window::about));
    }

    private static MenuItem key(KeyCode code, MenuItem item) {
        item.setAccelerator(new KeyCodeCombination(code));
        return item;
    }

    private CheckMenuItem chosen(
            String words, Predicate<Settings> now, BiFunction<Settings, Boolean, Settings> choose) {
        CheckMenuItem item = new CheckMenuItem(words);
        item.setSelected(now.test(settings.get()));
        settings.addListener((of, before, after) -> item.setSelected(now.test(after)));
        item.setOnAction(event -> settings.set(choose.apply(settings.get(), item.isSelected())));
        return item;
    }

    private void listRecent() {
        recent.getItems()
                .setAll(settings.get().recent().stream().map(Path::of).map(this::again).toList());
        recent.setDisable(recent.getItems().isEmpty());
    }

    private MenuItem again(Path folder) {
        return Controls.item(String.valueOf(folder.getFileName()), () -> window.open(folder));
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
        MenuItem item = Controls.item(words, act);
        item.setAccelerator(key);
        return item;
    }

    private static KeyCombination combination(KeyCode code) {
        return new KeyCodeCombination(
                code, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);
    }
}
