package stillturning.desktop.view.explain;

import javafx.animation.PauseTransition;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import stillturning.desktop.viewmodel.explain.Rationale;

/** The builder's own words; reach the study when the typing pauses or goes elsewhere. */
final class RationaleEditor {

    private static final Duration PAUSE = Duration.seconds(2);

    private final Rationale rationale;
    private final TextArea text = new TextArea();
    private final VBox view;

    RationaleEditor(Rationale rationale) {
        this.rationale = rationale;
        Label heading = new Label("Your _rationale");
        heading.setMnemonicParsing(true);
        heading.setLabelFor(text);
        heading.getStyleClass().add("explain-heading");
        Label count = new Label();
        count.setId("explain-count");
        count.getStyleClass().add("explain-note");
        count.textProperty().bind(rationale.count());
        Label error = new Label();
        error.setId("explain-error");
        error.getStyleClass().add("explain-error");
        error.setWrapText(true);
        error.setMinHeight(Region.USE_PREF_SIZE);
        error.textProperty().bind(rationale.error().map(e -> e.isEmpty() ? "" : "✗ " + e));
        error.visibleProperty().bind(rationale.error().isNotEmpty());
        error.managedProperty().bind(error.visibleProperty());
        prepare();
        view = new VBox(heading, text, error, count);
        view.getStyleClass().add("explain-group");
        VBox.setVgrow(text, Priority.ALWAYS);
        VBox.setVgrow(view, Priority.ALWAYS);
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
        text.focusedProperty()
                .addListener(
                        (of, before, now) -> {
                            if (!now) {
                                rationale.commit();
                            }
                        });
    }

    Region view() {
        return view;
    }
}
