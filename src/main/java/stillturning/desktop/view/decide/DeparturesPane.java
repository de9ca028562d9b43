package stillturning.desktop.view.decide;

import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.TreeItem;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stillturning.desktop.viewmodel.decide.Deciding;
import stillturning.desktop.viewmodel.decide.DepartureView;
import stillturning.desktop.viewmodel.decide.DepartureView.Departure;

/** How each candidate departs from the baseline. */
final class DeparturesPane extends VBox {

    private final DepartureView departing;
    private final DifferenceTree tree;

    DeparturesPane(Deciding deciding) {
        departing = deciding.departing();
        tree = new DifferenceTree(deciding::open);
        tree.setId("departures");
        tree.setAccessibleText("Departures from the baseline; Enter opens the story of a failure");
        tree.placeholder("Nothing to list.");
        tree.name("Candidate", "Baseline");
        getStyleClass().add("area-pane");
        Label baseline = new Label();
        baseline.setWrapText(true);
        baseline.setMinHeight(Region.USE_PREF_SIZE);
        baseline.textProperty().bind(departing.baseline());
        VBox.setVgrow(tree, Priority.ALWAYS);
        getChildren().addAll(baseline, tree, tree.inFull());
        departing.all().addListener((ListChangeListener.Change<? extends Departure> c) -> refill());
        refill();
    }

    private void refill() {
        TreeItem<DifferenceTree.Line> root = new TreeItem<>();
        for (Departure departure : departing.all()) {
            TreeItem<DifferenceTree.Line> head =
                    new TreeItem<>(
                            DifferenceTree.Line.head(
                                    departure.title(), departure.shifted(), departure.changed()));
            head.getChildren().setAll(DifferenceTree.grouped(departure.rows(), false));
            root.getChildren().add(head);
        }
        tree.setRoot(root);
    }
}
