package stillturning.desktop.view.window;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stillturning.desktop.draft.Conflict;
import stillturning.desktop.draft.Conflict.Dispute;
import stillturning.desktop.draft.Conflict.KeptText;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;

/** The two texts of a file that was changed here and outside, side by side in each place. */
final class ComparePane extends VBox {

    private final List<KeptText> choices = new ArrayList<>();

    /**
     * @param resolve takes a choice for each place
     * @param leave goes back to what was shown
     */
    ComparePane(Conflict conflict, Consumer<List<KeptText>> resolve, Runnable leave) {
        setId("compare");
        getStyleClass().add("area-pane");
        VBox places = new VBox();
        places.getStyleClass().add("compare-places");
        List<Dispute> disputes = conflict.disputes();
        for (int i = 0; i < disputes.size(); i++) {
            choices.add(KeptText.MINE);
            places.getChildren().add(place(i, disputes.get(i)));
        }
        ScrollPane scroll = new ScrollPane();
        Layout.scroll(scroll, places);
        Button use =
                Controls.button(
                        "Use these",
                        "compare-use",
                        () -> {
                            leave.run();
                            resolve.accept(List.copyOf(choices));
                        });
        use.getStyleClass().add("accent");
        Button later = Controls.button("Later", "compare-later", leave);
        getChildren()
                .addAll(
                        Labels.title(conflict.file() + ", changed here and outside"),
                        Labels.remark(
                                "What only one of the two changed is kept from both. Below is where"
                                        + " both changed the same lines: choose in each place."),
                        Layout.high(scroll),
                        Layout.inLine(use, Layout.gap(), later));
    }

    private Node place(int number, Dispute dispute) {
        ToggleGroup group = new ToggleGroup();
        HBox both =
                new HBox(
                        side(number, group, KeptText.MINE, dispute.mine()),
                        side(number, group, KeptText.THEIRS, dispute.theirs()));
        both.getStyleClass().add("compare-both");
        Label before =
                Labels.remark(
                        "Line "
                                + dispute.line()
                                + (dispute.before().isBlank()
                                        ? ": nothing stood there before"
                                        : ", before: " + dispute.before().strip()));
        return new VBox(before, both);
    }

    private Node side(int number, ToggleGroup group, KeptText choice, String text) {
        boolean mine = choice == KeptText.MINE;
        RadioButton button = new RadioButton(mine ? "Mine" : "From outside");
        button.setId((mine ? "mine-" : "theirs-") + number);
        button.setAccessibleText(button.getText() + ": " + text.strip());
        button.setToggleGroup(group);
        button.setSelected(mine);
        button.selectedProperty()
                .addListener(
                        (of, before, now) -> {
                            if (now) {
                                choices.set(number, choice);
                            }
                        });
        Label lines =
                Labels.wrapped(text.isBlank() ? "(deleted)" : text.stripTrailing(), "compare-text");
        lines.setMaxWidth(Double.MAX_VALUE);
        VBox side = new VBox(button, lines);
        side.setMinWidth(0);
        side.setPrefWidth(1);
        side.setMinHeight(Region.USE_PREF_SIZE);
        return Layout.wide(side);
    }
}
