package stillturning.desktop.view.decide;

import java.util.Comparator;
import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import stillturning.assess.ranking.RankingResult;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.viewmodel.decide.Deciding;
import stillturning.desktop.viewmodel.decide.RankRow;
import stillturning.quantity.Formats;
import stillturning.report.LeaderFirmness;

/** How firmly the order stands: rank shares over all weightings, and what unseats the leader. */
final class FirmnessPane extends VBox {

    /** Least width of the titles (em). */
    private static final double TITLE = 9;

    private final Deciding deciding;
    private final GridPane shares = new GridPane();
    private final Label method = Labels.remark("");
    private final VBox unseating = new VBox();
    private List<ShareRow> shown = List.of();

    /** What a row of the table shows. */
    private record ShareRow(String title, List<Double> byRank) {}

    FirmnessPane(Deciding deciding) {
        this.deciding = deciding;
        shares.getStyleClass().add("rank-shares");
        shares.setId("rank-shares");
        unseating.getStyleClass().add("sentences");

        getStyleClass().add("sentences");
        getChildren()
                .addAll(
                        Labels.title("Share of all weightings in which each takes a rank"),
                        Layout.sideways(shares),
                        method,
                        Labels.title("What unseats the first"),
                        unseating);
        deciding.ranks().addListener((ListChangeListener.Change<? extends RankRow> c) -> refill());
        deciding.firmness()
                .addListener((ListChangeListener.Change<? extends String> c) -> sentences());
        refill();
        sentences();
    }

    private void refill() {
        List<ShareRow> now =
                deciding.ranks().stream()
                        .sorted(
                                Comparator.comparingInt(RankRow::statedRank)
                                        .thenComparing(RankRow::id))
                        .map(r -> new ShareRow(r.title(), r.shares()))
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
            Label label = Labels.of(String.valueOf(rank), "text-muted");
            label.setAccessibleText("rank " + rank);
            GridPane.setHalignment(label, HPos.CENTER);
            shares.add(label, rank, 0);
        }
        for (int i = 0; i < last; i++) {
            row(i + 1, now.get(i));
        }
    }

    private void row(int at, ShareRow row) {
        Label title = Labels.wrapped(row.title());
        shares.add(title, 0, at);
        for (int rank = 0; rank < row.byRank().size(); rank++) {
            shares.add(cell(row, rank), rank + 1, at);
        }
    }

    private static StackPane cell(ShareRow row, int rank) {
        double share = row.byRank().get(rank);
        Region tint = new Region();
        tint.getStyleClass().add("share-tint");
        tint.setOpacity(share);
        Label words = Labels.of(Formats.percent(share), "share-words");
        words.setAccessibleText(
                row.title() + ", rank " + (rank + 1) + ": " + Formats.percent(share));
        StackPane cell = new StackPane(tint, words);
        cell.getStyleClass().add("share-cell");
        return cell;
    }

    private ColumnConstraints title() {
        ColumnConstraints column = Layout.growing();
        Layout.broad(column.minWidthProperty(), method, TITLE);
        return column;
    }

    private void sentences() {
        unseating
                .getChildren()
                .setAll(deciding.firmness().stream().map(s -> Labels.wrapped(s)).toList());
    }
}
