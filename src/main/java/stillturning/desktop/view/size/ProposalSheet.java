package stillturning.desktop.view.size;

import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stillturning.desktop.viewmodel.size.Proposing;
import stillturning.dossier.proposal.Resize;

/** Sizes that would be better: what would change, and taking it. */
final class ProposalSheet extends VBox {

    private final Proposing proposing;
    private final TableView<Resize> table = new TableView<>();
    private final Label refusal = new Label();

    ProposalSheet(Proposing proposing) {
        this.proposing = proposing;
        getStyleClass().add("sheet");
        Label words = new Label();
        words.setId("proposal-words");
        words.setWrapText(true);
        words.setMinHeight(Region.USE_PREF_SIZE);
        words.textProperty().bind(proposing.words());
        refusal.getStyleClass().addAll("danger", "text");
        refusal.setWrapText(true);
        refusal.managedProperty().bind(refusal.textProperty().isNotEmpty());
        table.setId("resizes");
        table.getStyleClass().add("dense");
        table.setAccessibleText("Sizes that would change");
        table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        table.getColumns().add(column("Part", Resize::part));
        table.getColumns().add(column("Is", r -> size(r, r.from())));
        table.getColumns().add(column("Becomes", r -> size(r, r.to())));
        Label none = new Label("Nothing is proposed.");
        none.getStyleClass().add("empty-words");
        table.setPlaceholder(none);
        VBox.setVgrow(table, Priority.ALWAYS);
        getChildren().addAll(buttons(), words, refusal, table);
        proposing.proposal().addListener((value, from, to) -> refill());
        refill();
    }

    private HBox buttons() {
        Button propose = new Button("Propose sizes");
        propose.setId("propose");
        propose.disableProperty().bind(proposing.working());
        propose.setOnAction(
                event -> {
                    refusal.setText("");
                    proposing.propose();
                });
        ProgressIndicator turning = new ProgressIndicator();
        turning.getStyleClass().add("turning");
        turning.visibleProperty().bind(proposing.working());
        Button cancel = new Button("Cancel");
        cancel.visibleProperty().bind(proposing.working());
        cancel.setOnAction(event -> proposing.cancel());
        Button take = new Button("Take these sizes");
        take.setId("take-sizes");
        take.getStyleClass().add("accent");
        take.disableProperty()
                .bind(
                        proposing
                                .proposal()
                                .map(p -> p.isEmpty() || !p.get().changes())
                                .orElse(true));
        take.setOnAction(event -> refusal.setText(proposing.apply().orElse("")));
        Region between = new Region();
        HBox.setHgrow(between, Priority.ALWAYS);
        HBox line = new HBox(propose, turning, cancel, between, take);
        line.getStyleClass().add("in-line");
        line.setAlignment(Pos.CENTER_LEFT);
        return line;
    }

    private void refill() {
        table.getItems().setAll(proposing.resizes());
    }

    private static String size(Resize resize, String size) {
        return resize.of() == Resize.ResizedThing.WIRE ? "AWG " + size : size;
    }

    private static TableColumn<Resize, String> column(String head, Function<Resize, String> words) {
        TableColumn<Resize, String> column = new TableColumn<>(head);
        column.setCellValueFactory(row -> new ReadOnlyStringWrapper(words.apply(row.getValue())));
        return column;
    }
}
