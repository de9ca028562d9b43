package stillturning.desktop.view.decide;

import javafx.collections.ListChangeListener;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.viewmodel.decide.Deciding;

/** Warnings to add, because nobody sees what they would show until it is late. */
final class WarningsPane extends ScrollPane {

    private final Deciding deciding;
    private final VBox sentences = new VBox();

    WarningsPane(Deciding deciding) {
        this.deciding = deciding;
        sentences.setId("warnings-to-add");
        sentences.getStyleClass().addAll("area-pane", "sentences");
        Layout.scroll(this, sentences);
        deciding.warnings()
                .addListener((ListChangeListener.Change<? extends String> c) -> refill());
        refill();
    }

    private void refill() {
        sentences
                .getChildren()
                .setAll(
                        deciding.warnings().isEmpty()
                                ? Labels.wrapped("No candidate lacks a warning.")
                                : Labels.title("Nobody sees this in time"));
        deciding.warnings().forEach(s -> sentences.getChildren().add(Labels.wrapped(s)));
    }
}
