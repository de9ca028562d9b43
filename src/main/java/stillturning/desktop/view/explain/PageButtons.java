package stillturning.desktop.view.explain;

import java.net.URI;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.print.PrinterJob;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.web.WebEngine;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.viewmodel.explain.Explaining;
import stillturning.desktop.viewmodel.explain.Saved;

/** What can be done with the page: write it, keep it, print it, open it elsewhere. */
final class PageButtons {

    private final Explaining explaining;
    private final Supplier<Optional<WebEngine>> shown;
    private final Function<String, Optional<Path>> chosen;
    private final Consumer<URI> browser;
    private final BooleanBinding pageless;
    private final Label notice = new Label();
    private final Button replace = new Button("_Replace it");
    private final Button keep = new Button("_Keep it");
    private final VBox view = new VBox();

    /** Where the page would go if the file that stands there may be replaced. */
    private Optional<Path> asked = Optional.empty();

    /**
     * @param shown what shows the page, once there is one
     * @param chosen asks for a file, and proposes its name
     * @param browser opens an address elsewhere
     */
    PageButtons(
            Explaining explaining,
            Supplier<Optional<WebEngine>> shown,
            Function<String, Optional<Path>> chosen,
            Consumer<URI> browser) {
        this.explaining = explaining;
        this.shown = shown;
        this.chosen = chosen;
        this.browser = browser;
        this.pageless =
                Bindings.createBooleanBinding(
                        () -> explaining.page().get().isEmpty(), explaining.page());
        view.getStyleClass().add("explain-group");
        view.getChildren().addAll(writing(), elsewhere(), progress(), notice(), question());
        tell("", Optional.empty());
    }

    Region view() {
        return view;
    }

    private Button writing() {
        Button write = Controls.button("_Write the page", "explain-write", explaining::write);
        write.getStyleClass().add("accent");
        write.disableProperty().bind(explaining.writable().not().or(explaining.working()));
        return write;
    }

    /** Below the buttons, so that they stay where they are while a page is written. */
    private Region progress() {
        ProgressBar bar = new ProgressBar();
        bar.progressProperty().bind(explaining.share());
        bar.setAccessibleText("How far the page is");
        bar.setMaxWidth(Double.MAX_VALUE);

        Button cancel = Controls.button("Ca_ll off", "explain-call-off", explaining::cancel);
        HBox work = new HBox(Layout.wide(bar), cancel);
        work.getStyleClass().add("explain-row");
        Label at = Labels.wrapped(explaining.at(), "explain-note");
        VBox progress = new VBox(work, at);
        Showing.whileTrue(progress, explaining.working());
        return progress;
    }

    private Region elsewhere() {
        Button save = Controls.button("_Save as …", "explain-save", this::save);
        Button print = Controls.button("_Print …", "explain-print", this::print);
        Button open = Controls.button("_Open in browser", "explain-open", this::open);
        FlowPane row = new FlowPane(save, print, open);
        row.getStyleClass().add("explain-row");
        row.getChildren().forEach(b -> b.disableProperty().bind(pageless));
        return row;
    }

    private Region notice() {
        notice.setId("explain-notice");
        notice.setWrapText(true);
        notice.setMinHeight(Region.USE_PREF_SIZE);
        notice.managedProperty().bind(notice.visibleProperty());
        return notice;
    }

    private Region question() {
        replace.setId("explain-replace");
        replace.setOnAction(press -> asked.ifPresent(file -> save(file, true)));
        keep.setId("explain-keep");
        keep.setOnAction(press -> tell("", Optional.empty()));
        HBox answers = new HBox(replace, keep);
        answers.getStyleClass().add("explain-row");
        Showing.whileTrue(answers, replace.visibleProperty());
        return answers;
    }

    private void save() {
        chosen.apply(explaining.fileName()).ifPresent(file -> save(file, false));
    }

    private void save(Path file, boolean over) {
        Saved saved = explaining.save(file, over);
        tell(
                saved.words(),
                saved instanceof Saved.Asks asks ? Optional.of(asks.file()) : Optional.empty());
        if (saved instanceof Saved.Asks) {
            keep.requestFocus();
        }
    }

    private void print() {
        Optional<PrinterJob> job = Optional.ofNullable(PrinterJob.createPrinterJob());
        if (job.isEmpty()) {
            tell(
                    "No printer is set up on this computer. Set one up, or open the page in the"
                            + " browser and print it from there.",
                    Optional.empty());
            return;
        }
        if (job.get().showPrintDialog(view.getScene().getWindow())) {
            shown.get().ifPresent(engine -> engine.print(job.get()));
            boolean sent = job.get().endJob();
            tell(
                    sent
                            ? "Sent to " + job.get().getPrinter().getName() + "."
                            : "The printer took nothing; see whether it is on and has paper.",
                    Optional.empty());
        }
    }

    private void open() {
        explaining.page().get().ifPresent(page -> browser.accept(page.at()));
    }

    private void tell(String words, Optional<Path> question) {
        asked = question;
        notice.setText(words);
        notice.setVisible(!words.isEmpty());
        replace.setVisible(question.isPresent());
    }
}
