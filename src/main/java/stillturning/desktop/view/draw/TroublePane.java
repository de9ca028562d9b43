package stillturning.desktop.view.draw;

import java.util.List;
import java.util.function.Consumer;
import javafx.beans.Observable;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.ItemCell;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.viewmodel.draw.Board;
import stillturning.desktop.viewmodel.offer.Trouble;

/** What is wrong with the candidate as it is drawn, each with a way to ask what would mend it. */
final class TroublePane extends VBox {

    TroublePane(Board board, Consumer<Trouble> mend) {
        getStyleClass().add("draw-findings");
        ListView<Trouble> list = new ListView<>(board.troubles());
        list.setId("troubles");
        list.setAccessibleText("What loses the engine or is missed; Enter asks what would mend it");
        list.getStyleClass().addAll("dense", "many-findings");
        list.setCellFactory(view -> new TroubleLine(mend));
        Controls.onEnter(list, mend);
        getChildren().addAll(Labels.title("Missed, or loses the engine"), Layout.high(list));
        board.troubles().addListener((Observable of) -> tell(board.troubles()));
        tell(board.troubles());
    }

    private void tell(List<Trouble> troubles) {
        Showing.set(this, !troubles.isEmpty());
    }

    private static final class TroubleLine extends ItemCell<Trouble> {
        private final Label words = Labels.wrapped("");
        private final Button ask;
        private final HBox line;

        TroubleLine(Consumer<Trouble> mend) {
            ask = Controls.button("Mend?", "", () -> mend.accept(getItem()));
            ask.getStyleClass().add("small");
            words.setMinWidth(0);
            line = Layout.inLine(Layout.wide(words), ask);
            words.setMaxWidth(Double.MAX_VALUE);
        }

        @Override
        protected void show(Trouble trouble) {
            words.setText(trouble.words());
            ask.setAccessibleText("What would mend this? " + trouble.words());
            setGraphic(line);
            setAccessibleText(trouble.words());
        }
    }
}
