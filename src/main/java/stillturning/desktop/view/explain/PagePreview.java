package stillturning.desktop.view.explain;

import java.io.File;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.web.WebEngine;
import javafx.scene.web.WebView;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Showing;
import stillturning.desktop.viewmodel.explain.Explaining;
import stillturning.desktop.viewmodel.explain.WrittenPage;

/** The page as it was last written, on its paper, and above it what is to be known about it. */
final class PagePreview {

    private final Explaining explaining;
    private final Label empty = Labels.of("", "explain-empty");
    private final StackPane paper = new StackPane(empty);
    private final BorderPane view = new BorderPane(paper);

    /** Made when there is a page to show, since making it takes a second. */
    private Optional<WebView> web = Optional.empty();

    PagePreview(Explaining explaining) {
        this.explaining = explaining;
        empty.setId("explain-empty");

        empty.setWrapText(true);
        empty.textProperty().bind(explaining.advice());
        paper.getStyleClass().add("explain-frame");
        Label advice = new Label();
        advice.setId("explain-advice");
        advice.setWrapText(true);
        advice.textProperty().bind(explaining.advice().map(a -> "⚠ " + a));
        HBox bar = new HBox(advice);
        bar.getStyleClass().add("explain-advice");
        Showing.whileTrue(bar, explaining.advice().isNotEmpty().and(empty.visibleProperty().not()));
        view.setTop(bar);
        explaining.page().addListener((of, before, now) -> now.ifPresent(this::show));
        explaining.page().get().ifPresent(this::show);
    }

    Region view() {
        return view;
    }

    /** What shows the page, once there is one. */
    Optional<WebEngine> engine() {
        return web.map(WebView::getEngine);
    }

    private void show(WrittenPage page) {
        WebView shown = web.orElseGet(() -> made(page));
        web = Optional.of(shown);
        shown.getEngine().load(page.at().toString());
        empty.setVisible(false);
    }

    private WebView made(WrittenPage page) {
        WebView made = new WebView();
        made.setId("explain-page");
        made.setAccessibleText("The page");
        made.zoomProperty().bind(explaining.scalePercent().map(percent -> percent / 100.0));
        WebEngine engine = made.getEngine();
        engine.setUserDataDirectory(leftovers(Path.of(page.at())));
        engine.setCreatePopupHandler(wish -> null);
        engine.locationProperty().addListener((of, before, now) -> stay(engine, now));
        paper.getChildren().add(made);
        return made;
    }

    /** What the engine wants to keep goes when the page goes, and not into the user's folder. */
    private static File leftovers(Path page) {
        File folder = page.resolveSibling("engine").toFile();
        for (File left :
                List.of(folder, new File(folder, "localstorage"), new File(folder, ".lock"))) {
            left.deleteOnExit();
        }
        return folder;
    }

    /** Goes back to the page when a link leads away from it. */
    private void stay(WebEngine engine, String location) {
        Optional<String> page = explaining.page().get().map(WrittenPage::at).map(URI::toString);
        boolean elsewhere = !location.isEmpty() && page.filter(location::startsWith).isEmpty();
        if (elsewhere) {
            page.ifPresent(at -> Platform.runLater(() -> engine.load(at)));
        }
    }
}
