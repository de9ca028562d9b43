package stillturning.desktop.view.breaking;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.view.decide.BlockPane;
import stillturning.desktop.viewmodel.breaking.JointFailures;

/** What two failures do together, what hides, and what a run-up finds. */
final class JointFailuresPane extends VBox {

    JointFailuresPane(JointFailures together) {
        getStyleClass().add("area-pane");
        Button start = Controls.button("Play every pair", "together-start", together::start);
        start.disableProperty().bind(together.working());
        Button cancel = Controls.button("Call off", "together-cancel", together::cancel);
        Showing.whileTrue(cancel, together.working());
        Label words = Labels.wrapped(together.words());
        words.setId("together-words");
        BlockPane found = new BlockPane("together-found", together::spoken);
        together.blocks().addListener((of, before, now) -> found.show(now));
        found.show(together.blocks().get());
        ScrollPane scroll = new ScrollPane();
        Layout.scroll(scroll, found);
        getChildren()
                .addAll(Layout.inLine(start, Layout.gap(), cancel), words, Layout.high(scroll));
    }
}
