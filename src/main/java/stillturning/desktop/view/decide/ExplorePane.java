package stillturning.desktop.view.decide;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Chooser;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.viewmodel.decide.Exploring;

/** Layouts that nothing outdoes, among the candidates; a point opens its drawing. */
final class ExplorePane extends VBox {

    private static final double PICTURE_SHARE = 0.62;
    private static final String LEGEND =
            "\u25B2 found, \u25C6 drawn by hand: nothing shown beats it in both.   \u25B3, \u25CB"
                    + " beaten in these two.   \u2716 misses a requirement.   Enter or a click opens"
                    + " the drawing.";

    ExplorePane(Exploring exploring) {
        getStyleClass().add("area-pane");
        setId("explore-pane");
        TradeOffPicture picture = new TradeOffPicture(exploring::open);
        picture.setId("explore-picture");
        Label words = Labels.wrapped(exploring.words());
        words.setId("explore-words");
        Showing.whileTrue(words, exploring.words().isNotEmpty());
        BlockPane said = new BlockPane("explore-said");
        exploring.blocks().addListener((value, from, to) -> said.show(to));
        said.show(exploring.blocks().get());
        ScrollPane text = new ScrollPane();
        Layout.scroll(text, said);
        FlowPane axes =
                new FlowPane(
                        TradeOffPane.chooser(
                                "\u2191", "Upwards", "explore-upwards", exploring.upwards()),
                        TradeOffPane.chooser(
                                "\u2192", "Across", "explore-across", exploring.across()));
        axes.getStyleClass().add("flow");
        VBox upper = new VBox(axes, Layout.high(picture), Labels.remark(LEGEND));
        SplitPane split = Layout.high(Layout.above(PICTURE_SHARE, upper, text));
        exploring.blocks().addListener((value, from, to) -> split(split, text, !to.isEmpty()));
        split(split, text, !exploring.blocks().get().isEmpty());
        getChildren().addAll(buttons(exploring), words, split);
        exploring.picture().addListener((value, from, to) -> picture.show(to));
        picture.show(exploring.picture().get());
        Showing.whileTrue(split, exploring.picture().map(Optional::isPresent).orElse(false));
    }

    /** The picture has all the room until there is something to read below it. */
    private static void split(SplitPane split, Node text, boolean told) {
        boolean there = split.getItems().contains(text);
        if (told && !there) {
            split.getItems().add(text);
            split.setDividerPositions(PICTURE_SHARE);
        } else if (!told && there) {
            split.getItems().remove(text);
        }
    }

    private static HBox buttons(Exploring exploring) {
        Button start =
                Controls.button("Look for simpler layouts", "explore-start", exploring::start);
        start.disableProperty().bind(exploring.working());
        Chooser<Integer> minutes =
                new Chooser<>("How long it may take", m -> m + " min", exploring.minutes()::set);
        minutes.setId("explore-minutes");
        minutes.offer(Exploring.MINUTES, exploring.minutes().get());
        minutes.disableProperty().bind(exploring.working());
        Button stop = Controls.button("Take what is found", "explore-stop", exploring::stop);
        Button cancel = Controls.button("Call off", "explore-cancel", exploring::cancel);
        HBox under = Layout.inLine(stop, cancel);
        Showing.whileTrue(under, exploring.working());
        return Layout.inLine(start, Layout.named("for", minutes), Layout.gap(), under);
    }
}
