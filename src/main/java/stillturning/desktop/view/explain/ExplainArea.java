package stillturning.desktop.view.explain;

import java.io.File;
import java.net.URI;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.Property;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import stillturning.desktop.view.Area;
import stillturning.desktop.view.AreaHost;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.explain.Explaining;

/** The page for the talk with a counsellor: its contents, the builder's words, its looks. */
public final class ExplainArea implements Area {

    private final BorderPane view = new BorderPane();

    /**
     * @param around the window, and the way to the user's browser
     */
    public ExplainArea(Explaining explaining, AreaHost around) {
        this(explaining, around::browse, name -> choose(name, around));
    }

    /**
     * @param browser opens an address outside this program
     * @param chosen asks for the file to save to, and proposes its name
     */
    ExplainArea(
            Explaining explaining, Consumer<URI> browser, Function<String, Optional<Path>> chosen) {
        PagePreview preview = new PagePreview(explaining);
        PageButtons buttons = new PageButtons(explaining, preview::engine, chosen, browser);
        VBox side =
                new VBox(
                        contents(explaining),
                        new RationaleEditor(explaining.rationale()).view(),
                        buttons.view());
        side.getStyleClass().add("explain-side");
        view.getStyleClass().add("explain");
        ScrollPane scrolled = new ScrollPane(side);
        scrolled.setFitToWidth(true);
        scrolled.setFitToHeight(true);
        scrolled.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scrolled.getStyleClass().add("explain-scroll");
        view.setLeft(scrolled);
        view.setCenter(preview.view());
    }

    @Override
    public AreaName name() {
        return AreaName.EXPLAIN;
    }

    @Override
    public Region view() {
        return view;
    }

    @Override
    public void show(Destination destination) {
        // there is one page, and it is always shown
    }

    private static Region contents(Explaining explaining) {
        Label heading = new Label("On the page");
        heading.getStyleClass().add("explain-heading");
        VBox all =
                new VBox(
                        heading,
                        note("Always: the comparison, drawings, every failure, stories."),
                        choice("Si_zes of wires and protectors", explaining.sizes()),
                        cost("takes seconds"),
                        choice("Which _guesses matter", explaining.guesses()),
                        cost("takes minutes"),
                        choice("_Failures together, run-up cards", explaining.together()),
                        cost("with causes and latent failures; takes minutes"));
        all.getStyleClass().add("explain-group");
        return all;
    }

    private static CheckBox choice(String words, Property<Boolean> chosen) {
        CheckBox box = new CheckBox(words);
        box.setMnemonicParsing(true);
        box.selectedProperty().bindBidirectional(chosen);
        return box;
    }

    private static Label cost(String words) {
        Label cost = note(words);
        cost.getStyleClass().add("explain-cost");
        return cost;
    }

    private static Label note(String words) {
        Label note = new Label(words);
        note.getStyleClass().add("explain-note");
        note.setWrapText(true);
        note.setMinHeight(Region.USE_PREF_SIZE);
        return note;
    }

    private static Optional<Path> choose(String name, AreaHost around) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Save the page");
        chooser.setInitialFileName(name);
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("Page (HTML)", "*.html"));
        return Optional.ofNullable(chooser.showSaveDialog(around.stage())).map(File::toPath);
    }
}
