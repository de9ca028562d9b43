package stillturning.desktop.view.breaking;

import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import stillturning.assess.verdict.Outcome;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.viewmodel.breaking.Breaking;
import stillturning.desktop.viewmodel.breaking.PlayedFailure;
import stillturning.report.OutcomeMark;
import stillturning.report.StoryFacts;

/** What came of a failure, as labelled facts. */
final class EndingPane extends ScrollPane {

    private final Breaking breaking;
    private final VBox facts = new VBox();

    EndingPane(Breaking breaking) {
        this.breaking = breaking;
        facts.getStyleClass().add("facts");
        Layout.scroll(this, facts);
        setId("story-facts");
    }

    /** Shows the facts of another story. */
    void take() {
        facts.getChildren().clear();
        breaking.played()
                .get()
                .filter(p -> !breaking.picked().isEmpty())
                .ifPresent(
                        played ->
                                StoryFacts.of(played.verdict(), breaking.pilot().get())
                                        .forEach(this::add));
    }

    private void add(StoryFacts.StoryFact fact) {
        Label value = Labels.wrapped(breaking.spoken(fact.value()));
        facts.getChildren().add(new VBox(Labels.remark(fact.label()), value));
    }

    /** The outcome with its sign. */
    static String outcome(Breaking breaking, PlayedFailure played) {
        Outcome outcome = played.verdict().outcome(breaking.pilot().get());
        return OutcomeMark.of(outcome).sign() + "  " + outcome.words();
    }
}
