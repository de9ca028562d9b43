package stillturning.desktop.view.decide;

import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.TreeItem;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.viewmodel.decide.Deciding;
import stillturning.desktop.viewmodel.decide.DepartureView;
import stillturning.desktop.viewmodel.decide.DepartureView.CandidateDeparture;

/** How each candidate departs from the baseline. */
final class DeparturesPane extends VBox {

    private final DepartureView departures;
    private final DifferenceTree tree;

    DeparturesPane(Deciding deciding) {
        departures = deciding.departures();
        tree = new DifferenceTree(deciding::open);
        tree.setId("departures");
        tree.setAccessibleText("Departures from the baseline; Enter opens the story of a failure");
        tree.setPlaceholder(Labels.empty("Nothing to list."));
        tree.name("Candidate", "Baseline");
        getStyleClass().add("area-pane");
        Label baseline = Labels.wrapped(departures.baseline());
        getChildren().addAll(baseline, Layout.high(tree));
        departures
                .all()
                .addListener(
                        (ListChangeListener.Change<? extends CandidateDeparture> c) -> refill());
        refill();
    }

    private void refill() {
        TreeItem<DifferenceTree.TreeLine> root = new TreeItem<>();
        for (CandidateDeparture departure : departures.all()) {
            TreeItem<DifferenceTree.TreeLine> head =
                    new TreeItem<>(
                            DifferenceTree.TreeLine.head(
                                    departure.title(), departure.shifted(), departure.changed()));
            head.getChildren().setAll(DifferenceTree.grouped(departure.rows(), false));
            root.getChildren().add(head);
        }
        tree.setRoot(root);
    }
}
