package stillturning.desktop.view.decide;

import java.util.List;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.viewmodel.decide.Deciding;
import stillturning.desktop.viewmodel.decide.RankRow;

/** The candidates in order, and why the chosen one stands where it does. */
final class RankingPane extends VBox {

    private final Deciding deciding;
    private final ListView<RankRow> list = new ListView<>();
    private final Label why = Labels.wrapped("");

    RankingPane(Deciding deciding) {
        this.deciding = deciding;
        getStyleClass().add("area-pane");
        Label head = Labels.title("Ranking");
        head.setLabelFor(list);
        list.setId("ranking");
        list.setAccessibleText("Candidates, best first");
        list.getStyleClass().add("rank-list");
        list.setCellFactory(view -> new RankCell());
        list.getSelectionModel().selectedItemProperty().addListener((v, from, to) -> tell());
        why.setId("why");
        getChildren().addAll(head, Layout.high(list), why);
        deciding.ranks()
                .addListener((ListChangeListener.Change<? extends RankRow> change) -> refill());
        refill();
    }

    /** Marks a candidate. */
    void select(String id) {
        for (RankRow row : list.getItems()) {
            if (row.id().equals(id)) {
                list.getSelectionModel().select(row);
                list.scrollTo(row);
            }
        }
    }

    private void refill() {
        Optional<String> chosen =
                Optional.ofNullable(list.getSelectionModel().getSelectedItem()).map(RankRow::id);
        list.getItems().setAll(List.copyOf(deciding.ranks()));
        chosen.ifPresentOrElse(this::select, () -> list.getSelectionModel().selectFirst());
        tell();
    }

    private void tell() {
        RankRow row = list.getSelectionModel().getSelectedItem();
        why.setText(row == null ? "" : row.title() + ": " + row.why());
    }
}
