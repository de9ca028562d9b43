package stillturning.report.explorer;

import com.sun.javafx.webkit.WebConsoleListener;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import javafx.concurrent.Worker;
import javafx.scene.Scene;
import javafx.scene.web.WebView;
import javafx.stage.Stage;
import stillturning.desktop.view.OnStage;

/** A page in a web view that nobody sees. */
final class AskedPage {

    private final WebView web;
    private final List<String> console;

    private AskedPage(WebView web, List<String> console) {
        this.web = web;
        this.console = console;
    }

    /** Loads a page from a file. */
    static AskedPage load(Path file) {
        OnStage.start();
        List<String> console = new CopyOnWriteArrayList<>();
        WebView web =
                OnStage.on(
                        () -> {
                            WebConsoleListener.setDefaultListener(
                                    (view, message, line, source) -> console.add(message));
                            WebView made = new WebView();
                            Stage stage = new Stage();
                            stage.setScene(new Scene(made, 1280, 800));
                            stage.show();
                            made.getEngine().load(file.toUri().toString());
                            return made;
                        });
        OnStage.until(() -> web.getEngine().getLoadWorker().getState() == Worker.State.SUCCEEDED);
        return new AskedPage(web, console);
    }

    static Path written(Path folder, String page) {
        try {
            return Files.writeString(folder.resolve("page.html"), page);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What an expression of the script's language gives, as text. */
    String ask(String expression) {
        return OnStage.on(() -> String.valueOf(web.getEngine().executeScript(expression)));
    }

    /** Puts a value into a field, as a hand would. */
    void enter(String id, String value, String event) {
        ask(
                "{const field = document.getElementById('"
                        + id
                        + "'); field.value = '"
                        + value
                        + "'; field.dispatchEvent(new Event('"
                        + event
                        + "', {bubbles: true}));}");
    }

    void click(String id) {
        ask("document.getElementById('" + id + "').click()");
    }

    void press(String selector, String key) {
        ask(
                "document.querySelector('"
                        + selector
                        + "').dispatchEvent(new KeyboardEvent('keydown', {key: '"
                        + key
                        + "', bubbles: true}))");
    }

    String text(String id) {
        return ask("document.getElementById('" + id + "').textContent");
    }

    /** What stood on the console since it was last asked. */
    List<String> console() {
        List<String> told = List.copyOf(console);
        console.clear();
        return told;
    }

    void close() {
        OnStage.on(
                () -> {
                    WebConsoleListener.setDefaultListener(null);
                    ((Stage) web.getScene().getWindow()).close();
                    return true;
                });
    }
}
