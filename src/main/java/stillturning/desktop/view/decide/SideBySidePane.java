package stillturning.desktop.view.decide;

import java.util.Optional;
import javafx.beans.property.StringProperty;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import stillturning.desktop.viewmodel.decide.Deciding;
import stillturning.desktop.viewmodel.decide.DifferenceRow;
import stillturning.desktop.viewmodel.decide.RankRow;
import stillturning.desktop.viewmodel.decide.SideBySide;

/** Two candidates against each other. */
final class SideBySidePane extends VBox {

    private final Deciding deciding;
    private final SideBySide facing;
    private final DifferenceTree tree;

    SideBySidePane(Deciding deciding) {
        this.deciding = deciding;
        facing = deciding.facing();
        tree = new DifferenceTree(deciding::open);
        tree.setId("differences");
        tree.setAccessibleText("In what the two differ; Enter opens the story of a failure");
        tree.placeholder("Nothing differs. Choose two different candidates above.");
        getStyleClass().add("area-pane");
        VBox.setVgrow(tree, Priority.ALWAYS);
        Label verdict = new Label();
        verdict.setWrapText(true);
        verdict.setMinHeight(Region.USE_PREF_SIZE);
        verdict.textProperty().bind(facing.verdict());
        Button swap = new Button("\u21C4");
        swap.setAccessibleText("Let them change sides");
        swap.setMinWidth(Region.USE_PREF_SIZE);
        swap.setOnAction(event -> facing.swap());
        HBox choice =
                new HBox(
                        chooser("Candidate", "facing-one", facing.one()),
                        swap,
                        chooser("Compared with", "facing-other", facing.other()));
        choice.getStyleClass().add("in-line");
        choice.setAlignment(Pos.CENTER_LEFT);
        Label legend =
                new Label(
                        "\u25B2 speaks for the first, \u25BC against it. Enter opens the story of a"
                                + " failure.");
        legend.getStyleClass().addAll("text-small", "text-muted");
        getChildren().addAll(choice, verdict, tree, tree.inFull(), legend);
        facing.rows()
                .addListener((ListChangeListener.Change<? extends DifferenceRow> c) -> refill());
        refill();
    }

    private void refill() {
        tree.name(title(facing.one().get()), title(facing.other().get()));
        tree.show(facing.rows());
    }

    private String title(String id) {
        return deciding.ranks().stream()
                .filter(r -> r.id().equals(id))
                .map(RankRow::title)
                .findFirst()
                .orElse(id);
    }

    private ComboBox<String> chooser(String words, String name, StringProperty id) {
        ComboBox<String> box = new ComboBox<>();
        box.setId(name);
        box.setAccessibleText(words);
        box.setMaxWidth(Double.MAX_VALUE);
        box.setMinWidth(0);
        box.setPrefWidth(1);
        HBox.setHgrow(box, Priority.ALWAYS);
        box.setConverter(
                new StringConverter<>() {
                    @Override
                    public String toString(@Nullable String of) {
                        return of == null ? "" : title(of);
                    }

                    @Override
                    public String fromString(String words) {
                        return Optional.ofNullable(box.getValue()).orElse("");
                    }
                });
        ListChangeListener<RankRow> list = change -> fill(box, id);
        deciding.ranks().addListener(list);
        id.addListener((value, from, to) -> box.setValue(to));
        box.valueProperty()
                .addListener(
                        (value, from, to) -> {
                            if (to != null) {
                                id.set(to);
                            }
                        });
        fill(box, id);
        return box;
    }

    /** In the study's order, so that names stay where they are while weights move. */
    private void fill(ComboBox<String> box, StringProperty id) {
        var ids = deciding.ranks().stream().map(RankRow::id).sorted().toList();
        if (!box.getItems().equals(ids)) {
            box.getItems().setAll(ids);
        }
        box.setValue(id.get());
    }
}
