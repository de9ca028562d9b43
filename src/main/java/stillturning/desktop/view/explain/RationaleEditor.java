package stillturning.desktop.view.explain;

import javafx.animation.PauseTransition;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.viewmodel.explain.Rationale;

/** The builder's own words; reach the study when the typing pauses or goes elsewhere. */
final class RationaleEditor {

    private static final Duration PAUSE = Duration.seconds(2);

    private final Rationale rationale;
    private final TextArea text = new TextArea();
    private final VBox view;

    RationaleEditor(Rationale rationale) {
        this.rationale = rationale;
        Label heading = Labels.of("Your _rationale", "explain-heading");
        heading.setMnemonicParsing(true);
        heading.setLabelFor(text);

        Label count = Labels.of("", "explain-note");
        count.setId("explain-count");
        count.textProperty().bind(rationale.count());
        Label error =
                Labels.wrapped(
                        rationale.error().map(e -> e.isEmpty() ? "" : "✗ " + e), "explain-error");
        error.setId("explain-error");
        Showing.whileTrue(error, rationale.error().isNotEmpty());
        prepare();
        view = Layout.high(new VBox(heading, Layout.high(text), error, count));
        view.getStyleClass().add("explain-group");
    }

    private void prepare() {
        text.setId("explain-rationale");
        text.setAccessibleText("Your rationale; a blank line begins a new paragraph");
        text.setPromptText(
                "Why this architecture? What do you accept, and what did you turn down?\n\n"
                        + "A blank line begins a new paragraph.");
        text.setWrapText(true);
        text.setPrefRowCount(6);
        text.textProperty().bindBidirectional(rationale.text());
        PauseTransition pause = new PauseTransition(PAUSE);
        pause.setOnFinished(over -> rationale.commit());
        text.textProperty().addListener((of, before, now) -> pause.playFromStart());
        Controls.onLeave(text, rationale::commit);
    }

    Region view() {
        return view;
    }
}
