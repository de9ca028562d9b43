package stillturning.desktop.view.decide;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.viewmodel.decide.Facing;

/** The two that face each other, like for like. */
final class FacingPane extends VBox {

    FacingPane(Facing facing) {
        getStyleClass().add("area-pane");
        Button ask = Controls.button("Assess every mix", "facing-ask", facing::ask);
        ask.disableProperty().bind(facing.askable().not());
        Button cancel = Controls.button("Call off", "facing-cancel", facing::cancel);
        cancel.disableProperty().bind(facing.working().not());
        BlockPane said = new BlockPane("facing-said");
        ScrollPane scroll = new ScrollPane();
        Layout.scroll(scroll, said);
        facing.blocks()
                .addListener(
                        (value, from, to) -> {
                            said.show(to);
                            scroll.setVvalue(0);
                        });
        said.show(facing.blocks().get());
        Label words = Labels.wrapped(facing.words(), "text-small");
        Showing.whileTrue(words, facing.words().isNotEmpty());
        getChildren().addAll(Layout.inLine(ask, cancel), words, Layout.high(scroll));
    }
}
