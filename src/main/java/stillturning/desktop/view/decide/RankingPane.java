package stillturning.desktop.view.decide;

import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.viewmodel.decide.Deciding;
import stillturning.desktop.viewmodel.decide.RankRow;
import stillturning.report.answer.FirstAnswer;

/** The candidates in order, and why the chosen one stands where it does. */
final class RankingPane extends VBox {

    private final Deciding deciding;
    private final ListView<RankRow> list = new ListView<>();
    private final Label why = Labels.wrapped("");
    private final Label head = Labels.title("Ranking");
    private final VBox leftOut = new VBox();

    RankingPane(Deciding deciding) {
        this.deciding = deciding;
        getStyleClass().add("area-pane");
        head.setLabelFor(list);
        list.setId("ranking");
        list.setAccessibleText("Candidates, best first");
        list.getStyleClass().add("rank-list");
        list.setCellFactory(view -> new RankCell());
        list.getSelectionModel().selectedItemProperty().addListener((v, from, to) -> tell());
        why.setId("why");
        leftOut.setId("left-out");
        leftOut.getStyleClass().add("left-out");
        getChildren().addAll(notice(), head, Layout.high(list), leftOut, why);
        deciding.answering().answer().addListener((value, from, to) -> tellScope());
        tellScope();
        deciding.ranks()
                .addListener((ListChangeListener.Change<? extends RankRow> change) -> refill());
        // a list that gets another height keeps its end in place, not its beginning
        list.heightProperty().addListener((of, before, now) -> list.scrollTo(0));
        refill();
    }

    /** Within this pane, so that nothing else moves when it comes and goes. */
    private Label notice() {
        Label notice = Labels.notice("decide-notice", "warning");
        notice.textProperty().bind(deciding.notice());
        BooleanBinding ranked =
                Bindings.createBooleanBinding(
                        () -> deciding.now().get().isPresent(), deciding.now());
        Showing.whileTrue(notice, deciding.notice().isNotEmpty().and(ranked));
        return notice;
    }

    /** For whom the ranking holds, and why it does not hold for the others. */
    private void tellScope() {
        Optional<FirstAnswer> answer = deciding.answering().answer().get();
        head.setText(answer.map(a -> "Ranking of " + a.scope()).orElse("Ranking"));
        leftOut.getChildren()
                .setAll(
                        answer.stream()
                                .flatMap(a -> a.leftOut().stream())
                                .map(
                                        left ->
                                                Labels.wrapped(
                                                        "\u2013  "
                                                                + left.candidate()
                                                                + " is left out: "
                                                                + left.reason(),
                                                        "text-small"))
                                .toList());
        Showing.set(leftOut, !leftOut.getChildren().isEmpty());
    }

    /** Marks a candidate; the first of the ranking stays in sight. */
    void select(String id) {
        for (RankRow row : list.getItems()) {
            if (row.id().equals(id)) {
                list.getSelectionModel().select(row);
                list.scrollTo(0);
            }
        }
    }

    private void refill() {
        Optional<String> chosen =
                Optional.ofNullable(list.getSelectionModel().getSelectedItem()).map(RankRow::id);
        list.getItems().setAll(List.copyOf(deciding.ranks()));
        chosen.ifPresentOrElse(this::select, () -> list.getSelectionModel().selectFirst());
        list.scrollTo(0);
        tell();
    }

    private void tell() {
        RankRow row = list.getSelectionModel().getSelectedItem();
        why.setText(row == null ? "" : row.title() + ": " + row.why());
    }
}
