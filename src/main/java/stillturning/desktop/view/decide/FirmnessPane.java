package stillturning.desktop.view.decide;

import java.util.Comparator;
import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import stillturning.assess.ranking.RankingResult;
import stillturning.desktop.viewmodel.decide.Deciding;
import stillturning.desktop.viewmodel.decide.RankRow;
import stillturning.quantity.Formats;
import stillturning.report.LeaderFirmness;

/** How firmly the order stands: rank shares over all weightings, and what unseats the leader. */
final class FirmnessPane extends ScrollPane {

    private final Deciding deciding;
    private final GridPane shares = new GridPane();
    private final Label method = new Label();
    private final VBox unseating = new VBox();
    private List<Shares> shown = List.of();

    /** What a row of the table shows. */
    private record Shares(String title, List<Double> byRank) {}

    FirmnessPane(Deciding deciding) {
        this.deciding = deciding;
        shares.getStyleClass().add("rank-shares");
        shares.setId("rank-shares");
        unseating.getStyleClass().add("sentences");
        method.setWrapText(true);
        method.getStyleClass().addAll("text-small", "text-muted");
        VBox all =
                new VBox(
                        head("Share of all weightings in which each takes a rank"),
                        shares,
                        method,
                        head("What unseats the first"),
                        unseating);
        all.getStyleClass().add("area-pane");
        setContent(all);
        setFitToWidth(true);
        getStyleClass().add("edge-to-edge");
        deciding.ranks().addListener((ListChangeListener.Change<? extends RankRow> c) -> refill());
        deciding.firmness()
                .addListener((ListChangeListener.Change<? extends String> c) -> sentences());
        refill();
        sentences();
    }

    private static Label head(String words) {
        Label head = new Label(words);
        head.getStyleClass().add("title-4");
        return head;
    }

    private void refill() {
        List<Shares> now =
                deciding.ranks().stream()
                        .sorted(
                                Comparator.comparingInt(RankRow::statedRank)
                                        .thenComparing(RankRow::id))
                        .map(r -> new Shares(r.title(), r.shares()))
                        .toList();
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        method.setText(
                deciding.now()
                        .get()
                        .flatMap(a -> a.ranking())
                        .map(RankingResult::robustness)
                        .map(LeaderFirmness::method)
                        .orElse(""));
        shares.getChildren().clear();
        shares.getColumnConstraints().setAll(title());
        int last = now.size();
        for (int rank = 1; rank <= last; rank++) {
            Label label = new Label(String.valueOf(rank));
            label.setAccessibleText("rank " + rank);
            label.getStyleClass().add("text-muted");
            GridPane.setHalignment(label, HPos.CENTER);
            shares.add(label, rank, 0);
        }
        for (int i = 0; i < last; i++) {
            row(i + 1, now.get(i));
        }
    }

    private void row(int at, Shares row) {
        Label title = new Label(row.title());
        title.setMinWidth(0);
        shares.add(title, 0, at);
        for (int rank = 0; rank < row.byRank().size(); rank++) {
            shares.add(cell(row, rank), rank + 1, at);
        }
    }

    private static StackPane cell(Shares row, int rank) {
        double share = row.byRank().get(rank);
        Region tint = new Region();
        tint.getStyleClass().add("share-tint");
        tint.setOpacity(share);
        Label words = new Label(Formats.percent(share));
        words.getStyleClass().add("share-words");
        words.setAccessibleText(
                row.title() + ", rank " + (rank + 1) + ": " + Formats.percent(share));
        StackPane cell = new StackPane(tint, words);
        cell.getStyleClass().add("share-cell");
        return cell;
    }

    private static ColumnConstraints title() {
        ColumnConstraints column = new ColumnConstraints();
        column.setHgrow(Priority.ALWAYS);
        column.setMinWidth(0);
        return column;
    }

    private void sentences() {
        unseating.getChildren().clear();
        for (String sentence : deciding.firmness()) {
            Label label = new Label(sentence);
            label.setWrapText(true);
            unseating.getChildren().add(label);
        }
    }
}
