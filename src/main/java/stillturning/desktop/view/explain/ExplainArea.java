package stillturning.desktop.view.explain;

import java.io.File;
import java.net.URI;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
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
import javafx.stage.Stage;
import stillturning.desktop.view.Area;
import stillturning.desktop.view.AreaHost;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.record.RecordPane;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.explain.Explaining;
import stillturning.desktop.viewmodel.record.Recording;

/** The page for the talk with a counsellor: its contents, the builder's words, its looks. */
public final class ExplainArea implements Area {

    private static final String NOTE = "explain-note";
    private static final String COST = "explain-cost";

    private final BorderPane view = new BorderPane();

    /**
     * @param host the window, and the way to the user's browser
     */
    public ExplainArea(Explaining explaining, AreaHost host) {
        this(explaining, host.browser(), name -> choose(name, host.stage()));
    }

    /**
     * @param browser opens an address outside this program
     * @param chosen asks for the file to save to, and proposes its name
     */
    ExplainArea(
            Explaining explaining, Consumer<URI> browser, Function<String, Optional<Path>> chosen) {
        PagePreview preview = new PagePreview(explaining);
        PageButtons buttons = new PageButtons(explaining, preview::engine, chosen, browser);
        RecordPane record =
                new RecordPane(
                        new Recording(explaining.desk(), ExplainArea::today),
                        () -> view.setCenter(preview.view()));
        VBox side =
                new VBox(
                        contents(explaining),
                        measured(() -> view.setCenter(record.view())),
                        buttons.view(),
                        new RationaleEditor(explaining.rationale()).view());
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
    public Region view() {
        return view;
    }

    @Override
    public void show(Destination destination) {
        // there is one page, and it is always shown
    }

    private static Region contents(Explaining explaining) {
        Label heading = Labels.of("On the page", "explain-heading");
        VBox all =
                new VBox(
                        heading,
                        Labels.wrapped(
                                "Always: the comparison, drawings, every failure, stories.", NOTE),
                        choice("Si_zes of wires and protectors", explaining.sizes()),
                        Labels.wrapped("takes seconds", NOTE, COST),
                        choice("Which _guesses matter", explaining.guesses()),
                        Labels.wrapped("takes minutes", NOTE, COST),
                        choice("_Failures together, run-up cards", explaining.together()),
                        Labels.wrapped("and what nobody sees; takes minutes", NOTE, COST),
                        choice("Ground _test of the first", explaining.groundTest()),
                        Labels.wrapped("a form to fill in; takes a minute", NOTE, COST),
                        choice("What would m_end what is wrong", explaining.mends()),
                        Labels.wrapped("lightest changes; minutes a candidate", NOTE, COST),
                        explored(explaining),
                        Labels.wrapped("what Decide found under Simpler", NOTE, COST));
        all.getStyleClass().addAll("explain-group", "explain-contents");
        return all;
    }

    /** Beside what plans the test, since that is where its results are looked for. */
    private static Region measured(Runnable show) {
        VBox all =
                new VBox(
                        Controls.button("Enter what was _measured", "explain-record", show),
                        Labels.wrapped("ground test, batteries, loads, wires", NOTE));
        all.getStyleClass().add("explain-group");
        return all;
    }

    private static String today() {
        return LocalDate.now(ZoneId.systemDefault()).toString();
    }

    private static CheckBox explored(Explaining explaining) {
        CheckBox box = choice("What else was _looked at", explaining.explored());
        box.setId("explain-explored");
        box.disableProperty().bind(explaining.searched().not());
        return box;
    }

    private static CheckBox choice(String words, Property<Boolean> chosen) {
        CheckBox box = new CheckBox(words);
        box.setMnemonicParsing(true);
        box.selectedProperty().bindBidirectional(chosen);
        return box;
    }

    private static Optional<Path> choose(String name, Stage stage) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Save the page");
        chooser.setInitialFileName(name);
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("Page (HTML)", "*.html"));
        return Optional.ofNullable(chooser.showSaveDialog(stage)).map(File::toPath);
    }
}
