package stillturning.desktop.view.decide;

import javafx.beans.value.ObservableValue;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.viewmodel.decide.Answering;
import stillturning.desktop.viewmodel.decide.Deciding;
import stillturning.desktop.viewmodel.decide.LongAnswers;

/** Who is first, how firmly, what it still breaks, what the next one buys, and what is missing. */
final class AnswerPane extends VBox {

    private final Deciding deciding;
    private final BlockPane said = new BlockPane("answer");
    private final VBox warnings = new VBox();

    AnswerPane(Deciding deciding) {
        this.deciding = deciding;
        Answering answering = deciding.answering();
        Label moved =
                Labels.wrapped(
                        "By the study's own weights. The sliders stand otherwise; they turn the"
                                + " ranking and the shares below.");
        moved.setId("answer-weights");
        Showing.whileTrue(moved, deciding.weights().moved());
        warnings.setId("warnings-to-add");
        warnings.getStyleClass().add("sentences");
        VBox all = new VBox(moved, said, new FirmnessPane(deciding), warnings);
        all.getStyleClass().addAll("area-pane", "answer-pane");
        ScrollPane text = new ScrollPane();
        Layout.scroll(text, all);
        getChildren().addAll(buttons(answering), Layout.high(text));
        answering.watched().bind(sceneProperty().isNotNull());
        answering.blocks().addListener((value, from, to) -> said.show(to));
        said.show(answering.blocks().get());
        deciding.warnings().addListener((ListChangeListener.Change<? extends String> c) -> warn());
        warn();
    }

    /** Above the text, which gets longer by what they ask for. */
    private static FlowPane buttons(Answering answering) {
        LongAnswers further = answering.further();
        FlowPane buttons =
                new FlowPane(
                        button(
                                "Try equal batteries and sizes",
                                "answer-ask",
                                answering::ask,
                                answering.missing()),
                        button(
                                "Count its run-up checks (minutes)",
                                "answer-run-up",
                                further::count,
                                further.uncounted()),
                        button(
                                "Try guesses (minutes)",
                                "answer-guesses",
                                further::tryGuesses,
                                further.untried()));
        buttons.getStyleClass().addAll("flow", "area-pane");
        return buttons;
    }

    /** Of use while something is not known. */
    private static Button button(
            String words, String id, Runnable act, ObservableValue<Boolean> unknown) {
        Button button = Controls.button(words, id, act);
        button.disableProperty().bind(unknown.map(open -> !open));
        return button;
    }

    private void warn() {
        warnings.getChildren()
                .setAll(
                        deciding.warnings().isEmpty()
                                ? Labels.remark("No candidate lacks a warning.")
                                : Labels.title("Warnings to add: nobody sees this in time"));
        deciding.warnings().forEach(s -> warnings.getChildren().add(Labels.wrapped(s)));
    }
}
