package stillturning.desktop.view.draw;

import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.TextInputDialog;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import stillturning.desktop.view.Controls;
import stillturning.desktop.viewmodel.draw.Board;
import stillturning.desktop.viewmodel.draw.PaletteEntry;

/** What can be done to what is chosen, by menu and by key. */
final class DrawCommands {

    private static final KeyCombination DUPLICATE = Controls.control(KeyCode.D);
    private static final KeyCombination COPY = Controls.control(KeyCode.C);
    private static final KeyCombination CUT = Controls.control(KeyCode.X);
    private static final KeyCombination PASTE = Controls.control(KeyCode.V);
    private static final KeyCombination RENAME = new KeyCodeCombination(KeyCode.F2);
    private static final KeyCombination DELETE = new KeyCodeCombination(KeyCode.DELETE);

    private final Board board;
    private final Runnable showText;

    DrawCommands(Board board, Runnable showText) {
        this.board = board;
        this.showText = showText;
    }

    /** Does what a key stands for. */
    void key(KeyEvent event, Window owner) {
        if (DUPLICATE.match(event)) {
            board.duplicate();
        } else if (COPY.match(event)) {
            copy();
        } else if (CUT.match(event)) {
            copy();
            board.delete();
        } else if (PASTE.match(event)) {
            paste();
        } else if (RENAME.match(event)) {
            rename(owner);
        } else if (DELETE.match(event)) {
            board.delete();
        } else {
            return;
        }
        event.consume();
    }

    void copy() {
        board.copy()
                .ifPresent(
                        text -> {
                            ClipboardContent content = new ClipboardContent();
                            content.putString(text);
                            Clipboard.getSystemClipboard().setContent(content);
                        });
    }

    void paste() {
        Optional.ofNullable(Clipboard.getSystemClipboard().getString()).ifPresent(board::paste);
    }

    void rename(Window owner) {
        if (board.chosen().size() == 1) {
            String part = board.chosen().get(0);
            ask(owner, "Rename " + part, "New name", part).ifPresent(board::rename);
        }
    }

    void copyCandidate(Window owner) {
        ask(owner, "A new candidate like this one", "Title", "Another candidate")
                .filter(title -> !title.isBlank())
                .ifPresent(title -> board.copyCandidate(idOf(title), title.strip()));
    }

    private static String idOf(String title) {
        return title.toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
    }

    private static Optional<String> ask(Window owner, String title, String what, String now) {
        TextInputDialog dialog = new TextInputDialog(now);
        dialog.initOwner(owner);
        dialog.setTitle(title);
        dialog.setHeaderText(title);
        dialog.setContentText(what);
        dialog.getDialogPane().getStylesheets().setAll(owner.getScene().getStylesheets());
        return dialog.showAndWait();
    }

    /** The menu at what is chosen. */
    ContextMenu menu(Window owner) {
        boolean any = !board.chosen().isEmpty();
        boolean one = board.chosen().size() == 1;
        return new ContextMenu(
                add(owner),
                new SeparatorMenuItem(),
                item("Duplicate", DUPLICATE, any, board::duplicate),
                item("Copy", COPY, any, this::copy),
                item("Paste", PASTE, true, this::paste),
                item("Rename \u2026", RENAME, one, () -> rename(owner)),
                item("Delete", DELETE, any, board::delete),
                new SeparatorMenuItem(),
                item("Show in the text", null, one, showText),
                item("Break this part \u2026", null, one, board::breakIt));
    }

    private Menu add(Window owner) {
        Menu add = new Menu("Add");
        add.getItems()
                .addAll(
                        Controls.item(
                                "load of the study \u2026",
                                () ->
                                        ask(owner, "A new load", "Name, such as heated-seat", "")
                                                .ifPresent(board::addLoad)),
                        new SeparatorMenuItem());
        String before = "";
        for (PaletteEntry entry : board.palette("")) {
            if (!entry.kind().equals(before)) {
                String words = entry.kind().replace('-', ' ');
                add.getItems().add(Controls.item(words, () -> board.add(entry)));
            }
            before = entry.kind();
        }
        return add;
    }

    private static MenuItem item(
            String words, @Nullable KeyCombination key, boolean able, Runnable act) {
        MenuItem item = Controls.item(words, act);
        item.setAccelerator(key);
        item.setDisable(!able);
        return item;
    }
}
