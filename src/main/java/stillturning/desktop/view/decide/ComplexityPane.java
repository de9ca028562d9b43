package stillturning.desktop.view.decide;

import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Layout;
import stillturning.desktop.viewmodel.decide.Deciding;
import stillturning.report.page.Block;

/** What complexity is made of, how the order hangs on it, and what the pilot has to do. */
final class ComplexityPane extends ScrollPane {

    ComplexityPane(Deciding deciding) {
        BlockPane said = new BlockPane("complexity");
        VBox all = new VBox(said);
        all.getStyleClass().add("area-pane");
        Layout.scroll(this, all);
        ObservableValue<List<Block>> blocks = deciding.complexity();
        blocks.addListener((value, from, to) -> said.show(to));
        said.show(blocks.getValue());
    }
}
