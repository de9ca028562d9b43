package stillturning.desktop.view.decide;

import javafx.beans.property.StringProperty;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TabPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Chooser;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.viewmodel.decide.Deciding;
import stillturning.desktop.viewmodel.decide.DifferenceRow;
import stillturning.desktop.viewmodel.decide.RankRow;
import stillturning.desktop.viewmodel.decide.SideBySide;

/** Two candidates against each other. */
final class SideBySidePane extends VBox {

    private final Deciding deciding;
    private final SideBySide pair;
    private final DifferenceTree tree;

    SideBySidePane(Deciding deciding) {
        this.deciding = deciding;
        pair = deciding.sideBySide();
        tree = new DifferenceTree(deciding::open);
        tree.setId("differences");
        tree.setAccessibleText("In what the two differ; Enter opens the story of a failure");
        tree.setPlaceholder(
                Labels.empty("Nothing differs. Choose two different candidates above."));
        getStyleClass().add("area-pane");
        Button swap = Controls.button("\u21C4", "facing-swap", pair::swap);
        swap.setAccessibleText("Let them change sides");
        HBox choice =
                Layout.inLine(
                        chooser("Candidate", "facing-one", pair.one()),
                        swap,
                        chooser("Compared with", "facing-other", pair.other()));
        Label legend =
                Labels.remark(
                        "\u25B2 speaks for the first, \u25BC against it. Enter opens the story of a"
                                + " failure.");
        VBox differences = new VBox(Layout.high(tree), legend);
        differences.getStyleClass().add("area-pane");
        TabPane ways =
                new TabPane(
                        Layout.tab("Every difference", differences),
                        Layout.tab("Like for like", new FacingPane(deciding.facing())));
        ways.setId("facing-ways");
        ways.getStyleClass().add("least-high-pair");
        getChildren().addAll(choice, Labels.wrapped(pair.verdict()), Layout.high(ways));
        pair.rows().addListener((ListChangeListener.Change<? extends DifferenceRow> c) -> refill());
        refill();
    }

    private void refill() {
        tree.name(title(pair.one().get()), title(pair.other().get()));
        tree.show(pair.rows());
    }

    private String title(String id) {
        return deciding.ranks().stream()
                .filter(r -> r.id().equals(id))
                .map(RankRow::title)
                .findFirst()
                .orElse(id);
    }

    private Chooser<String> chooser(String words, String name, StringProperty id) {
        Chooser<String> box = new Chooser<>(words, this::title, id::set);
        box.setId(name);
        box.setMaxWidth(Double.MAX_VALUE);
        box.setMinWidth(0);
        box.setPrefWidth(1);
        ListChangeListener<RankRow> list = change -> fill(box, id);
        deciding.ranks().addListener(list);
        id.addListener((value, from, to) -> fill(box, id));
        fill(box, id);
        return Layout.wide(box);
    }

    /** In the study's order, so that names stay where they are while weights move. */
    private void fill(Chooser<String> box, StringProperty id) {
        box.offer(deciding.ranks().stream().map(RankRow::id).sorted().toList(), id.get());
    }
}
